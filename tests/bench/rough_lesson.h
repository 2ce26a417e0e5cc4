#pragma once

#include "model/lesson.h"

namespace rangeline::test {

/// Everything placed by a rough plan: who and where is filled in, times follow each other, so that
/// there is plenty to find. The same lesson for the same number of steps.
Lesson roughlyPlaced(int steps);

}  // namespace rangeline::test
