#pragma once
// What to weigh and measure for the covers of a lesson.

#include "model/dish.h"
#include "model/kitchen_amount.h"
#include "model/lesson.h"

namespace rangeline {

/// The amount for the covers served, told as it is measured in a kitchen (never nothing); exactly
/// as written where the covers are those that the dish is written for, or the ingredient does not
/// scale. `times` counts how often it is needed (groups); >= 1. Requires an amount.
KitchenAmount measuredAmount(const Ingredient& ingredient, const Serving& serving, int times = 1);
/// The same without how near it is.
Amount scaledAmount(const Ingredient& ingredient, const Serving& serving, int times = 1);

/// What has to be bought for it: more where only a part can be used, rounded up to what can be
/// measured.
Amount amountToBuy(const Ingredient& ingredient, const Serving& serving, int times = 1);

}  // namespace rangeline
