#pragma once

#include "model/expand.h"
#include "model/placement.h"

namespace rangeline {

/// When the first of what is placed starts; serving where nothing is. Placements left over from
/// what the lesson has no more do not count.
Instant earliestStart(const Placements& placements, const Expanded& expanded);

}  // namespace rangeline
