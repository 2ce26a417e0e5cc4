#include "timeline/time_scale.h"

#include <array>
#include <cassert>
#include <cmath>

namespace rangeline {
namespace {

constexpr std::array stepMinutes = {1, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1440};

std::int64_t floorTo(std::int64_t value, std::int64_t step) {
    const std::int64_t rest = value % step;
    return value - (rest < 0 ? rest + step : rest);
}

/// The smallest clock step of at least `leastGap` units that is a multiple of `lines`, so that
/// every label stands on a line.
Duration labelStep(const TimeScale& scale, double leastGap, Duration lines) {
    for (const int minutes : stepMinutes) {
        const Duration step = Duration::minutes(minutes);
        const bool onLines = step.inSeconds() % lines.inSeconds() == 0;
        if (onLines && scale.widthOf(step) >= leastGap) {
            return step;
        }
    }
    return Duration::minutes(stepMinutes.back());
}

}  // namespace

TimeScale::TimeScale(Instant left, double leftX, double unitsPerMinute, double deviceScale)
    : left_(left), leftX_(leftX), unitsPerMinute_(unitsPerMinute), deviceScale_(deviceScale) {
    assert(unitsPerMinute > 0 && deviceScale > 0);
}

double TimeScale::xOf(Instant t) const {
    return leftX_ + widthOf(t - left_);
}

Instant TimeScale::timeAt(double x) const {
    return left_ + Duration::seconds(std::llround((x - leftX_) / unitsPerMinute_ * 60.0));
}

double TimeScale::widthOf(Duration d) const {
    return d.inMinutes() * unitsPerMinute_;
}

double TimeScale::snapped(double x) const {
    return std::round(x * deviceScale_) / deviceScale_;
}

Extent TimeScale::snapped(const Interval& interval) const {
    const double begin = snapped(xOf(interval.begin));
    if (interval.empty()) {
        return {begin, begin};
    }
    return {begin, std::max(snapped(xOf(interval.end)), begin + 1.0 / deviceScale_)};
}

TimeScale TimeScale::zoomed(double factor, double anchorX) const {
    return {left_, anchorX - (anchorX - leftX_) * factor, unitsPerMinute_ * factor, deviceScale_};
}

Duration tickStep(const TimeScale& scale, double leastGap) {
    return labelStep(scale, leastGap, Duration::minutes(1));
}

std::vector<Tick> ticksIn(const TimeScale& scale, const Interval& window, Duration servingClock,
                          double lineGap, double labelGap) {
    const Duration lines = tickStep(scale, lineGap);
    const std::int64_t step = lines.inSeconds();
    const std::int64_t labels = labelStep(scale, labelGap, lines).inSeconds();
    const std::int64_t clock = servingClock.inSeconds();
    std::vector<Tick> ticks;
    const std::int64_t last = window.end.inSeconds() + clock;
    std::int64_t at = floorTo(window.begin.inSeconds() + clock + step - 1, step);
    for (; at <= last; at += step) {
        ticks.push_back({Instant::atSeconds(at - clock), floorTo(at, labels) == at});
    }
    return ticks;
}

}  // namespace rangeline
