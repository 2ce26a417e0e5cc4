#include "model/kitchen.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rangeline {
namespace {

/// Whole seconds, rounded up, that a change of temperature takes at a rate per minute.
Duration timeToChange(std::int64_t units, TemperatureDelta perMinute) {
    assert(perMinute.units() > 0);
    return Duration::seconds((units * 60 + perMinute.units() - 1) / perMinute.units());
}

/// a + (b - a) * part / whole, rounded up to a whole second.
Duration interpolate(Duration a, Duration b, std::int64_t part, std::int64_t whole) {
    const double slope = static_cast<double>((b - a).inSeconds()) / static_cast<double>(whole);
    const double at = static_cast<double>(a.inSeconds()) + slope * static_cast<double>(part);
    return Duration::seconds(static_cast<std::int64_t>(std::ceil(std::max(at, 0.0) - 1e-9)));
}

}  // namespace

double Power::watts() const {
    constexpr double wattsPerBtuPerHour = 0.29307107;  // international table Btu, NIST SP 811
    const double value = static_cast<double>(amount);
    return unit == Unit::Watt ? value : value * wattsPerBtuPerHour;
}

Duration Oven::warmUpTo(Temperature t) const {
    assert(!warmUp.empty());
    if (warmUp.size() == 1) {
        return warmUp.front().takes;
    }
    auto upper = std::ranges::find_if(warmUp, [&](const WarmUpPoint& p) { return p.to >= t; });
    if (upper == warmUp.begin()) {
        ++upper;
    } else if (upper == warmUp.end()) {
        --upper;
    }
    const auto lower = upper - 1;
    return interpolate(lower->takes, upper->takes, (t - lower->to).units(),
                       (upper->to - lower->to).units());
}

Duration Oven::changeOver(Temperature from, OvenMode fromMode, Temperature to,
                          OvenMode toMode) const {
    Duration needed;
    if (to > from) {
        needed = timeToChange((to - from).units(), heatsPerMinute);
    } else if (to < from) {
        needed = timeToChange((from - to).units(), coolsPerMinute);
    }
    return fromMode == toMode ? needed : needed + modeChange;
}

std::vector<Temperature> Oven::settingsWithin(Temperature low, Temperature high) const {
    assert(dialStep.units() > 0);
    const bool celsius = dialStep.units() % TemperatureDelta::celsius(1).units() == 0;
    const Temperature zero = celsius ? Temperature::celsius(0) : Temperature::fahrenheit(0);
    const Temperature from = std::max(low, lowest);
    const Temperature to = std::min(high, highest);
    std::vector<Temperature> settings;
    const std::int64_t step = dialStep.units();
    const std::int64_t above = (from - zero).units();
    for (std::int64_t n = above <= 0 ? 0 : (above + step - 1) / step;; ++n) {
        const Temperature setting = zero + TemperatureDelta::ofUnits(n * step);
        if (setting > to) {
            return settings;
        }
        settings.push_back(setting);
    }
}

}  // namespace rangeline
