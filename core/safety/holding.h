#pragma once
// How cold, how hot and how long: the limits on keeping food of the profile that a lesson chose.

#include <optional>
#include <span>
#include <string_view>

#include "base/units.h"
#include "model/lesson.h"

namespace rangeline {

struct HoldingLimits {
    SafetyProfile profile;
    Temperature cold;  ///< cold food stays at or below
    Temperature hot;   ///< hot food stays at or above
    std::string_view temperatureSource;

    Duration out;  ///< the most time between cold and hot
    std::string_view timeSource;

    /// The shorter limit for a room warmer than hotRoom, where the profile has one.
    std::optional<Temperature> hotRoom;
    Duration outInHotRoom;

    bool isHot(const std::optional<Temperature>& room) const {
        return hotRoom && room && *hotRoom < *room;
    }
    /// The most time between cold and hot in this room; a room that is not known is not hot.
    Duration outIn(const std::optional<Temperature>& room) const {
        return isHot(room) ? outInHotRoom : out;
    }
};

const HoldingLimits& holdingLimits(SafetyProfile profile);

/// Cooling in stages: from one temperature to another within a time from the start.
struct CoolingStage {
    Temperature from;
    Temperature to;
    Duration within;
    std::string_view source;
};

/// The stages of the Food Code; the household profile has only the time out.
std::span<const CoolingStage> coolingStages();

/// Garlic in oil keeps at most this long in the cold.
struct GarlicInOil {
    Temperature cold;
    Duration keeps;
    std::string_view source;
};

const GarlicInOil& garlicInOil();

}  // namespace rangeline
