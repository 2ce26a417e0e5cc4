#pragma once
// A lesson to begin with from dishes that come from elsewhere.

#include <span>
#include <string>

#include "model/lesson.h"

namespace rangeline {

/// The dishes in this kitchen, each for the covers it is written for, with nothing placed.
/// `servingTime` and `zone` are as in Head. Requires at least one dish.
Lesson lessonOf(std::span<const Dish> dishes, Kitchen kitchen, std::string servingTime,
                std::string zone, Units units);

}  // namespace rangeline
