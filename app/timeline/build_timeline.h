#pragma once

#include <span>

#include "analysis/critical_path.h"
#include "check/finding.h"
#include "text/names.h"
#include "timeline/timeline_model.h"

namespace rangeline {

/// Everything a timeline is made of. All of it belongs to the same lesson and outlives the call.
struct TimelineInput {
    const UseIndex& index;
    const TextContext& text;
    std::span<const Finding> findings;
    const PlatingAnalysis& analysis;
};

TimelineModel buildTimeline(const TimelineInput& input);

}  // namespace rangeline
