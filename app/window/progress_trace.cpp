#include "window/progress_trace.h"

#include <algorithm>

namespace rangeline {

void ProgressTrace::add(const ArrangeProgress& progress) {
    if (!progress.aimBest) {
        return;
    }
    const Point point{progress.seconds, *progress.aimBest, progress.aimBound};
    if (!points_.empty() && points_.back().best == point.best &&
        points_.back().bound == point.bound) {
        return;
    }
    points_.push_back(point);
}

/// From the first plan up to the bound as it is now: an early bound, which may be far beyond
/// anything, runs along the upper edge.
QPolygonF ProgressTrace::stairs(const QRectF& area, double now, std::int64_t Point::*value) const {
    const double begin = points_.front().seconds;
    const double width = std::max(now - begin, 0.001);
    const auto worst = static_cast<double>(points_.front().best);
    const double height = std::max(worst - static_cast<double>(bound()), 1.0);
    const auto x = [&](double seconds) {
        return area.left() + area.width() * std::clamp((seconds - begin) / width, 0.0, 1.0);
    };
    const auto y = [&](std::int64_t v) {
        const double up = (worst - static_cast<double>(v)) / height;
        return area.bottom() - area.height() * std::clamp(up, 0.0, 1.0);
    };
    QPolygonF line;
    for (const Point& point : points_) {
        if (!line.isEmpty()) {
            line << QPointF(x(point.seconds), line.last().y());
        }
        line << QPointF(x(point.seconds), y(point.*value));
    }
    return line << QPointF(area.right(), line.last().y());
}

QPolygonF ProgressTrace::bestIn(const QRectF& area, double seconds) const {
    return stairs(area, seconds, &Point::best);
}

QPolygonF ProgressTrace::boundIn(const QRectF& area, double seconds) const {
    return stairs(area, seconds, &Point::bound);
}

}  // namespace rangeline
