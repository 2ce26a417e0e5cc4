#pragma once
// The station timeline: the lesson's lanes along time, then the numbered running order, what
// decides plating, collisions and cautions. It hangs on the kitchen wall, in grey, readable across
// a table.

#include "print/sheets.h"

namespace rangeline {

QString stationTimelineTitle();
SheetPages makeStationTimeline(const TimelineInput& input, const PageLayout& layout);

}  // namespace rangeline
