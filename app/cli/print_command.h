#pragma once

#include "cli/command.h"

namespace rangeline {

Exit runPrint(const Invocation& invocation);

}  // namespace rangeline
