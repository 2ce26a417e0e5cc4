#pragma once
// Shared by the painter's files.

#include "timeline/place_text.h"
#include "timeline/timeline_painter.h"

namespace rangeline {

/// The colour of a lane's main blocks.
Colour fillOf(LaneKind kind);

void paintBlock(const PaintJob& job, const BlockBox& box, Picture& out);
/// Along the foot of the main block from the early to the late end, the middle marked; along its
/// head, dashed, the same of the begin.
void paintSpread(const PaintJob& job, const BlockBox& box, const SpreadMark& spread, Picture& out);
void paintHeat(const PaintJob& job, const LaneBox& lane, Picture& out);

}  // namespace rangeline
