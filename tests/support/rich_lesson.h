#pragma once
// A valid lesson in which every field of the model has a value other than its default.

#include "model/lesson.h"

namespace rangeline::test {

Lesson richLesson();

}  // namespace rangeline::test
