#pragma once
// Time along the page or window. Lengths are in units: pixels on screen, points on paper.

#include <vector>

#include "base/units.h"

namespace rangeline {

/// Half-open stretch of x, in units.
struct Extent {
    double begin = 0;
    double end = 0;

    double width() const { return end - begin; }
    friend bool operator==(const Extent&, const Extent&) = default;
};

/// Linear between time and x. A value; zooming and scrolling make another one.
class TimeScale {
  public:
    TimeScale() = default;
    /// `left` lies at x = `leftX`. Requires unitsPerMinute > 0. `deviceScale` > 0 is the number of
    /// device pixels in one unit.
    TimeScale(Instant left, double leftX, double unitsPerMinute, double deviceScale = 1.0);

    double xOf(Instant t) const;
    /// The nearest whole second.
    Instant timeAt(double x) const;
    double widthOf(Duration d) const;
    double unitsPerMinute() const { return unitsPerMinute_; }

    /// Where a bar lies. Both edges are on device pixels, so that bars that touch in time touch on
    /// the page without a seam; a bar that is not empty is at least one device pixel wide.
    Extent snapped(const Interval& interval) const;
    /// The nearest device pixel's edge.
    double snapped(double x) const;
    /// Times the factor (> 0), with the time at `anchorX` staying where it is.
    TimeScale zoomed(double factor, double anchorX) const;

  private:
    Instant left_;
    double leftX_ = 0;
    double unitsPerMinute_ = 1;
    double deviceScale_ = 1;
};

struct Tick {
    Instant at;
    bool labelled = false;

    friend bool operator==(const Tick&, const Tick&) = default;
};

/// Steps a kitchen clock is read in: 1, 5, 10, 15, 30 minutes, whole hours. The smallest one that
/// is at least `leastGap` units wide; the largest one if none is.
Duration tickStep(const TimeScale& scale, double leastGap);

/// Ticks in [window.begin, window.end], both ends included, on round clock times: serving is
/// `servingClock` after local midnight. Lines are at least `lineGap` apart, labels `labelGap`.
std::vector<Tick> ticksIn(const TimeScale& scale, const Interval& window, Duration servingClock,
                          double lineGap, double labelGap);

}  // namespace rangeline
