#pragma once

#include <vector>

#include "model/fault.h"
#include "model/lesson.h"

namespace rangeline {

/// Everything about a lesson's values that makes it unusable: ranges, references, cycles. Empty for
/// a lesson that expand() accepts. Places are paths like those of the lesson file. At most `limit`
/// faults are returned, in file order.
std::vector<Fault> validate(const Lesson& lesson, std::size_t limit = 20);

}  // namespace rangeline
