#pragma once
// An oven's set temperature over time, as its loads and turning it on state it.

#include "text/names.h"
#include "timeline/lanes.h"

namespace rangeline {

struct OvenHeatLine {
    std::vector<HeatPiece> pieces;
    std::vector<TimelineBlock> changeOvers;  ///< item: node of the load that follows
};

OvenHeatLine makeHeatLine(const UseIndex& index, const Lanes& lanes, const TextContext& text,
                          int ovenUnit);

}  // namespace rangeline
