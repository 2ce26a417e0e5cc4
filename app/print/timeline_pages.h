#pragma once

#include <vector>

#include "timeline/timeline_layout.h"

namespace rangeline {

/// What one page of a timeline shows.
struct TimelinePage {
    Interval window;
    std::vector<int> lanes;
    double unitsPerMinute = 1;
};

/// Splits a lesson over pages whose timeline has room in `body`: by time, on quarter hours, where
/// otherwise five minutes would be too narrow for a number; by lanes where they are too many. Every
/// page of a stretch of time has the same scale, and every stretch the same lanes.
std::vector<TimelinePage> splitTimeline(const TimelineModel& model, const TimelineStyle& style,
                                        const QSizeF& body);

}  // namespace rangeline
