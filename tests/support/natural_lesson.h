#pragma once
// Lessons like those that are taught, of any size, for measuring: dishes of components that are
// seared, roasted, simmered or dressed, on a range of the usual size with a crew of two.

#include "base/random.h"
#include "model/lesson.h"

namespace rangeline::test {

/// About that many steps (one component more or less). The same seed gives the same lesson.
Lesson naturalLesson(Random& random, int steps);

}  // namespace rangeline::test
