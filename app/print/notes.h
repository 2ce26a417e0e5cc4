#pragma once

#include "print/text_flow.h"
#include "timeline/build_timeline.h"

namespace rangeline {

/// The running order as a table.
void addRunningOrder(const TimelineInput& input, const TimelineModel& model, TextFlow& flow);
/// What the numbers mean, in the letters of the blocks: for reading from where they are read.
void addKey(const TimelineInput& input, const TimelineModel& model, TextFlow& flow);
/// What decides plating, then collisions, lateness and cautions in words.
void addNotes(const TimelineInput& input, const TimelineModel& model, TextFlow& flow);
/// Cautions in words, and whose limits they are.
void addCautions(const TimelineInput& input, TextFlow& flow);

/// For the foot of every page: to follow the local food code.
QString guidanceNote(SafetyProfile profile);

}  // namespace rangeline
