#pragma once

#include "cli/command.h"

namespace rangeline {

/// Makes a lesson of the recipes in a file, and says what to look at in it.
Exit runImport(const Invocation& invocation);

}  // namespace rangeline
