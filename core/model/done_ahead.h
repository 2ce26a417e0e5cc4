#pragma once
// Doing a step ahead of the lesson.

#include <optional>

#include "model/expand.h"

namespace rangeline {

/// The lesson's choices with the step done ahead, and with it all whose food goes into it: as long
/// before as the food keeps, at most half a day, in the cold where it keeps there. Nothing where
/// one of them may not be.
std::optional<Choices> doneAheadWith(const Lesson& lesson, const Expanded& expanded,
                                     const StepId& step);

}  // namespace rangeline
