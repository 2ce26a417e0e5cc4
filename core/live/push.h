#pragma once
// The plan moved later as far as reality asks for, its order and everything else kept: what can be
// said at once, whatever a longer search finds afterwards.

#include <vector>

#include "live/course.h"

namespace rangeline::live {

struct MovedStep {
    PlacementKey key;
    Instant from;
    Instant to;
};

/// Food that is done, or will be, and waits longer than planned for the step that uses it.
struct HeldFood {
    StepKey made;
    PlacementKey until;  ///< the first step that uses it
    Instant at;          ///< when that begins now
};

struct Push {
    SetPlacements change;          ///< on the lesson's grain; no changes: all goes as planned
    std::vector<MovedStep> moved;  ///< in the order of their starts
    std::vector<HeldFood> held;
};

Push push(const Service& service, const Course& course);

}  // namespace rangeline::live
