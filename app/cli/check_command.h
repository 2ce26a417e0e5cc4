#pragma once

#include "cli/command.h"

namespace rangeline {

Exit runCheck(const Invocation& invocation);

}  // namespace rangeline
