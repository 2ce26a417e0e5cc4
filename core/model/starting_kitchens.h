#pragma once
// Kitchens to begin with. Sizes, powers and times are common practice, no source; measure your own.

#include <span>
#include <string_view>

#include "model/kitchen.h"

namespace rangeline {

struct StartingKitchen {
    std::string_view key;  ///< "gas-range"
    Kitchen (*make)();
};

/// A 30-inch gas range, a 30-inch smooth top, a small flat with two burners and a tabletop oven, a
/// teaching kitchen with two ranges. Each has a cook and is accepted by validate().
std::span<const StartingKitchen> startingKitchens();

}  // namespace rangeline
