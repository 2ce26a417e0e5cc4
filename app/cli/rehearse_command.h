#pragma once

#include "cli/command.h"

namespace rangeline {

/// Runs a placed lesson many times with lengths as they may turn out.
Exit runRehearse(const Invocation& invocation);

}  // namespace rangeline
