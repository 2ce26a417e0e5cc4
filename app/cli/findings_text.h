#pragma once

#include <QString>

#include "cli/opened_lesson.h"

namespace rangeline {

/// All findings under headings by severity, each with what to do about it, and the food-safety
/// note. Steps not placed are counted, not listed, where there are many.
QString findingsText(const OpenedLesson& opened, int width);

}  // namespace rangeline
