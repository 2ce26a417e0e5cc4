#pragma once
// Findings that say the same thing many times, gathered so that it is read once: one caution naming
// all its steps, one collision for all that want the same hands in one stretch of time, one line
// for all steps that are not placed yet.

#include <vector>

#include "check/finding.h"

namespace rangeline {

struct GatheredFinding {
    /// What to show: `keys` of all parts, each once, in their order; the interval around them.
    Finding shown;
    std::vector<Finding> parts;  ///< what was gathered, in the order given; at least one
};

/// In the order in which the first part of each was given; nothing is left out.
std::vector<GatheredFinding> gathered(const std::vector<Finding>& findings);

}  // namespace rangeline
