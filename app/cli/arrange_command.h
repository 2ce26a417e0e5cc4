#pragma once

#include "cli/command.h"

namespace rangeline {

Exit runArrange(const Invocation& invocation);

}  // namespace rangeline
