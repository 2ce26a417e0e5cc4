#pragma once

#include "print/text_flow.h"
#include "timeline/build_timeline.h"

namespace rangeline {

/// The running order as a table.
void addRunningOrder(const TimelineInput& input, const TimelineModel& model, TextFlow& flow);
/// What decides plating, then collisions, lateness and cautions in words.
void addNotes(const TimelineInput& input, const TimelineModel& model, TextFlow& flow);

/// "Home guidance. ..."
QString guidanceNote();

}  // namespace rangeline
