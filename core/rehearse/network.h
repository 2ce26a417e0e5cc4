#pragma once
// A plan as it is rehearsed: what is done, what waits for what, and what must be on time.

#include <vector>

#include "analysis/use_index.h"
#include "model/dish.h"

namespace rangeline {

/// One placement. Its length is drawn; what lies in it moves with the part that stretches.
struct Activity {
    Instant planned;        ///< never begins before it
    Duration length;        ///< as planned
    DurationRange range;    ///< what is drawn, less `range.likely`, is added to the length
    Duration stretchBegin;  ///< of the part that takes the difference, from the start
    Duration stretchEnd;
    int node = -1;  ///< of the index
};

/// The instant `toOffset` of one activity comes no sooner than `gap` after `fromOffset` of another.
struct Following {
    int from = 0;  ///< activities, the earlier one first
    int to = 0;
    Duration fromOffset;
    Duration toOffset;
    Duration gap;
};

struct Deadline {
    int activity = 0;
    Duration offset;
    Instant latest;
};

struct Network {
    std::vector<Activity> activities;   ///< in an order in which every `from` comes before its `to`
    std::vector<Following> followings;  ///< by `to`, ascending
    std::vector<Deadline> plating;      ///< of what must be plated by its serving
};

/// The placed part of a lesson, in the plan's order. "At most so long after" does not hold anything
/// back: it is food that waits.
Network networkOf(const UseIndex& index);

}  // namespace rangeline
