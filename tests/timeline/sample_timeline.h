#pragma once
// A timeline put together by hand: one oven, a burner, a pan and a cook.

#include "timeline/timeline_model.h"

namespace rangeline::test {

enum SampleLane { heatLane, rackLane, burnerLane, panLane, cookLane };

/// Roast (item 0, in the oven from -60 to -20), sear (1, on the burner from -30 to -20, collides),
/// glaze (2, on the burner from -25 to -15, collides, pinned), plate (3, by the cook, -5 to 0,
/// decides plating), call (4, takes no time, at -5).
TimelineModel sampleTimeline();

/// Many blocks in many lanes; every tenth one collides.
TimelineModel largeTimeline(int blocks);

}  // namespace rangeline::test
