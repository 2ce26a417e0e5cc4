#pragma once
// Dishes and kitchens that belong to no lesson.

#include <vector>

#include "model/fault.h"
#include "model/lesson.h"

namespace rangeline {

/// A lesson of that dish alone, in a kitchen that has the places the dish names and no ovens or
/// burners, so that validate() speaks of the dish only: "servings[0].dish.components[2]".
Lesson lessonOf(const Dish& dish);
/// A lesson without dishes in that kitchen: "kitchen.ovens[0]". One without cooks gets one.
Lesson lessonIn(Kitchen kitchen);

/// As validate() gives them, at most that many.
std::vector<Fault> validateDish(const Dish& dish, std::size_t limit = 20);
std::vector<Fault> validateKitchenAlone(const Kitchen& kitchen, std::size_t limit = 20);

}  // namespace rangeline
