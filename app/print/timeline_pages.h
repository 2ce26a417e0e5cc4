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

/// Of the used lanes the ovens', the burners', those of what stands in or on them, and the cooks'.
std::vector<int> lanesOfHeatAndCooks(const TimelineModel& model);

/// Splits these lanes of a lesson over pages whose timeline has room in `body`: by time, on quarter
/// hours, where otherwise five minutes would be too narrow for a number; by lanes where they are
/// too many. Every page of a stretch of time has the same scale, and every stretch the same lanes.
std::vector<TimelinePage> splitTimeline(const TimelineModel& model, const TimelineStyle& style,
                                        const QSizeF& body, const std::vector<int>& lanes);

}  // namespace rangeline
