#pragma once
// What a book takes: everything in it is such that the model accepts it.

#include <optional>

#include "model/fault.h"
#include "model/lesson.h"

namespace rangeline {

/// A dish or a kitchen on its own is judged in a lesson around it that has all else it asks for.
/// The first thing wrong; its place begins with "servings[0].dish" or "kitchen".
std::optional<Fault> judgeDish(const Dish& dish);
std::optional<Fault> judgeKitchen(const Kitchen& kitchen);
std::optional<Fault> judgeLesson(const Lesson& lesson);

}  // namespace rangeline
