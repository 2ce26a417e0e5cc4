#pragma once

#include "timeline/timeline_painter.h"
#include "timeline_view/scene.h"

namespace rangeline {

/// Lights the selected placements: their blocks and echoes, what shares a vessel with the first of
/// them, what it waits for and what waits for it, what holds it, and its minutes to spare.
TimelineOverlay overlayOf(const LessonDocument& document, const TimelineScene& scene,
                          const std::vector<PlacementKey>& selection);

}  // namespace rangeline
