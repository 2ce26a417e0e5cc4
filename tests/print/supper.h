#pragma once

#include "model/lesson.h"

namespace rangeline::test {

/// A supper of three steps for each of its parts, and plating, placed greedily for two cooks on
/// four burners and an oven. Names are 3 to 80 letters long.
Lesson supper(int parts);

}  // namespace rangeline::test
