#pragma once

#include "cli/command.h"

namespace rangeline {

/// Writes the lesson for another program; the ending of the file's name chooses the format.
Exit runExport(const Invocation& invocation);

}  // namespace rangeline
