#pragma once
// The station timeline: the lesson's lanes along time, then the numbered running order, what
// decides plating, collisions and cautions. It hangs on the kitchen wall, in grey, readable across
// a table.

#include "print/sheets.h"

namespace rangeline {

QString stationTimelineTitle();
SheetPages makeStationTimeline(const TimelineInput& input, const SheetSetup& setup);

QString wallTimelineTitle();
/// Only the lanes, twice as large, over as many pages as they need: each says which page joins it
/// and where to cut.
SheetPages makeWallTimeline(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
