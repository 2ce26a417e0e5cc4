#pragma once
// Kinds of food and what the two profiles ask of them. A new kind is one row in foods.cpp.

#include <optional>
#include <span>
#include <string_view>

#include "base/units.h"
#include "model/lesson.h"

namespace rangeline {

/// A core temperature to reach, and how long it has to stay there or rest (zero: at once).
struct CoreLimit {
    Temperature least;
    Duration held;
    std::string_view source;
    /// Asked for only where the food is then kept hot.
    bool onlyForHotHolding = false;
};

struct Food {
    std::string_view key;  ///< as written in lesson files
    /// Needs time or temperature control: its time at room temperature is limited.
    bool controlled = false;
    std::string_view controlledSource;
    std::optional<CoreLimit> household;
    std::optional<CoreLimit> foodCode;
    std::string_view danger;  ///< row of the danger table that goes with the food, or empty

    const std::optional<CoreLimit>& core(SafetyProfile profile) const {
        return profile == SafetyProfile::Household ? household : foodCode;
    }
};

std::span<const Food> foods();
/// Null if there is no such kind.
const Food* findFood(std::string_view key);

}  // namespace rangeline
