#pragma once

#include <optional>

#include "cli/command.h"
#include "model/lesson.h"

namespace rangeline {

/// The cook of the crew named by --cook, by name or id; says so on stderr and returns false if
/// there is none. Leaves `cook` alone if the option is not given.
bool readCook(const Invocation& invocation, const Lesson& lesson, std::optional<CookId>& cook);

}  // namespace rangeline
