#pragma once
// A dish that comes into a lesson from elsewhere, or a second time.

#include <vector>

#include "model/lesson.h"

namespace rangeline {

/// The dish with ids that none of the servings has, so that it can be served beside them. Where its
/// ids are free already it stays as it is; else the same ending ("-2", "-3", ...) is added to all
/// of them, references within the dish included.
Dish besideOthers(Dish dish, const std::vector<Serving>& servings);

/// The choices without those about steps that none of the servings has.
Choices choicesFor(Choices choices, const std::vector<Serving>& servings);

}  // namespace rangeline
