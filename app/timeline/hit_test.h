#pragma once

#include <QPointF>

#include "timeline/timeline_layout.h"

namespace rangeline {

struct Hit {
    int block = -1;  ///< index into TimelineModel::blocks, or -1
    int lane = -1;   ///< index into TimelineModel::lanes, or -1
    Instant at;      ///< the time under the point
};

/// What lies under a point. Blocks narrower than `leastTarget` units are met up to that width
/// around their middle; where several are met, the one whose middle is nearest wins.
Hit hitTest(const TimelineLayout& layout, QPointF point, double leastTarget);

}  // namespace rangeline
