#pragma once

#include "timeline/lanes.h"

namespace rangeline {

/// The lane of a placement's main block: of a step the first of oven slot, burner, vessel, cook,
/// counter that it takes; of a wash its ware; of turning on its oven. Requires a placed node.
int mainLaneOf(const UseIndex& index, const Lanes& lanes, int node);

}  // namespace rangeline
