#pragma once

#include "cli/command.h"

namespace rangeline {

Exit runExplain(const Invocation& invocation);

}  // namespace rangeline
