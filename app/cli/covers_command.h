#pragma once

#include "cli/command.h"

namespace rangeline {

/// What changes where every dish of the lesson is served to so many.
Exit runCovers(const Invocation& invocation);

}  // namespace rangeline
