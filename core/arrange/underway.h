#pragma once
// A lesson that is being cooked, for arranging what is left of it.

#include <map>
#include <set>

#include "model/lesson.h"

namespace rangeline {

/// Placements that have started stay where they are, for as long as they last. Rules that they
/// break already, or that cannot be kept any more because of them, are left out: the checker tells
/// of those. Food that is made and keeps only so long is used as soon after as can be.
struct Underway {
    Instant now;  ///< nothing that has not started begins before, but for the rest of its grain
    /// Skipped: takes no time and no equipment, and is not placed.
    std::set<PlacementKey> leftOut;
    std::map<PlacementKey, Instant> notBefore;  ///< put off by the cook
    /// What is pinned and has not started keeps its time, where that is not past. Its equipment and
    /// its cook it keeps in any case.
    bool pinsHold = true;
};

}  // namespace rangeline
