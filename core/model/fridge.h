#pragma once

#include "model/dish.h"
#include "model/kitchen.h"

namespace rangeline {

/// The step goes on in the fridge and its food stays there until it is used, as long as needed; or
/// neither. It takes one shelf of the pool that every starting kitchen has. What has been stated
/// otherwise (another place, how long it keeps) stays.
void keepInFridge(Step& step, bool cold);

/// The dish as it stands in that kitchen: what keepInFridge() put on a shelf that the kitchen calls
/// otherwise stands on its own fridge shelf, and where it has none nowhere in particular.
Dish inFridgeOf(const Kitchen& kitchen, Dish dish);

}  // namespace rangeline
