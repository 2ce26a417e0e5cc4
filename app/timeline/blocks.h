#pragma once
// The blocks of a lesson: for every placement its main block and its echoes.

#include "timeline/lanes.h"

namespace rangeline {

/// Blocks whose `item` is still the node of the UseIndex. Stretches from before the lesson begin at
/// `earliest`.
std::vector<TimelineBlock> makeBlocks(const UseIndex& index, const Lanes& lanes, Instant earliest);

/// Turning on and warming up, together.
Interval turnOnInterval(const UseIndex& index, int ovenUnit);

}  // namespace rangeline
