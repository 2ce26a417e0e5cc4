#pragma once
// What to weigh and measure for the covers of a lesson.

#include "model/dish.h"
#include "model/lesson.h"

namespace rangeline {

/// The amount for the covers served, rounded to what can be measured in a kitchen (never to
/// nothing); exactly as written where the covers are those that the dish is written for, or the
/// ingredient does not scale. `times` counts how often it is needed (groups); >= 1. Requires an
/// amount.
Amount scaledAmount(const Ingredient& ingredient, const Serving& serving, int times = 1);

/// What has to be bought for it: more where only a part can be used, rounded up to what can be
/// measured.
Amount amountToBuy(const Ingredient& ingredient, const Serving& serving, int times = 1);

}  // namespace rangeline
