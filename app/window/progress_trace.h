#pragma once
// Bound and best plan over time, and where they lie in a picture. Up is better: the plans rise
// towards the bound, which comes down to meet them.

#include <QPolygonF>
#include <QRectF>
#include <cstdint>
#include <vector>

#include "arrange/arrange.h"

namespace rangeline {

class ProgressTrace {
  public:
    /// Before there is a plan that the aim says something of, nothing is drawn.
    void add(const ArrangeProgress& progress);
    void clear() { points_.clear(); }
    bool empty() const { return points_.empty(); }

    std::int64_t best() const { return points_.back().best; }
    std::int64_t bound() const { return points_.back().bound; }

    /// As stairs from left to right, within the rectangle. Requires that it is not empty;
    /// `seconds` is now.
    QPolygonF bestIn(const QRectF& area, double seconds) const;
    QPolygonF boundIn(const QRectF& area, double seconds) const;

  private:
    struct Point {
        double seconds = 0;
        std::int64_t best = 0;
        std::int64_t bound = 0;
    };

    QPolygonF stairs(const QRectF& area, double now, std::int64_t Point::*value) const;

    std::vector<Point> points_;
};

}  // namespace rangeline
