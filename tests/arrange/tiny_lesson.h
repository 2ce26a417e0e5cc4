#pragma once
// Kitchens so small that every possible placement can be tried.

#include "base/random.h"
#include "model/lesson.h"

namespace rangeline::test {

/// So many times the grain of tiny lessons.
Duration tinyGrains(std::int64_t n);

/// Three steps, or two with an oven, the last of which plates; one pan or two. validate() may
/// refuse it: a pan carried on from a step without one.
Lesson tinyLesson(Random& random);

}  // namespace rangeline::test
