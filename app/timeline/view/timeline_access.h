#pragma once
// The timeline for screen readers: a child for each block, named by its placement, so that it stays
// the same child while it moves. A child can be pressed (picked up, put down), moved by a grain
// (increase, decrease), and its value is its start in minutes from serving.

namespace rangeline {

class TimelineView;

/// Tells Qt how timelines are read. May be called again.
void installTimelineAccess();
/// The blocks are others, or in another order.
void blocksChanged(TimelineView& view);
/// The focus is on this item of the scene.
void focusChanged(TimelineView& view, int item);

}  // namespace rangeline
