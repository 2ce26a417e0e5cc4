#pragma once
// Which segment of a step stretches when none says so: what "rest" in a lesson file may leave out.

#include <vector>

#include "model/dish.h"

namespace rangeline {

/// Requires at least one segment. Whether they say that they stretch is not looked at.
inline std::size_t usualStretching(const std::vector<Segment>& segments) {
    Step step;
    step.segments = segments;
    for (Segment& segment : step.segments) {
        segment.stretches = false;
    }
    return step.stretchingSegment();
}

}  // namespace rangeline
