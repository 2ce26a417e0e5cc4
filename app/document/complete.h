#pragma once

#include "analysis/use_index.h"

namespace rangeline {

/// The task's placement, or a new one, at `start`, with what is missing filled in.
Placement filledIn(const UseIndex& index, int task, Instant start);

}  // namespace rangeline
