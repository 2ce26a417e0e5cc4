#pragma once
// A cook's work as it is told: step after step, hands and watching of one step that follow each
// other taken together.

#include <vector>

#include "analysis/use_index.h"

namespace rangeline {

/// One stretch of a cook's time for one placement.
struct CookStretch {
    int node = 0;
    Interval interval;  ///< from its first use to its last one
    Duration hands;
    Duration watching;
    bool goesOn = false;  ///< the cook has been at this before
};

/// In order of time. `cook` is a unit of Stations::cooks.
std::vector<CookStretch> cookStretches(const UseIndex& index, int cook);

}  // namespace rangeline
