#pragma once
// A plan as it is rehearsed: what is done, what waits for what, and what must be on time.

#include <cstdint>
#include <vector>

#include "analysis/critical_path.h"
#include "analysis/use_index.h"
#include "model/dish.h"

namespace rangeline {

/// One placement. Its length is drawn; what lies in it moves with the part that stretches.
struct Activity {
    Instant planned;        ///< never begins before it
    Duration length;        ///< as planned
    DurationRange range;    ///< of the length, at the pace of who does it; likely: as planned
    Duration stretchBegin;  ///< of the part that takes the difference, from the start
    Duration stretchEnd;
    int node = -1;  ///< of the index
    std::uint64_t stream =
        0;  ///< of random numbers: each its own, the same whatever lies around it
};

/// The instant `toOffset` of one activity comes no sooner than `gap` after `fromOffset` of another.
struct Following {
    int from = 0;  ///< activities, the earlier one first
    int to = 0;
    Duration fromOffset;
    Duration toOffset;
    Duration gap;
    HeldBy by = HeldBy::Wait;
    EquipmentRef equipment;
    int turn = -1;  ///< see OrderArc
    /// What is waited for may be got from this place of Network::spares instead; -1: not.
    int spare = -1;
};

struct Deadline {
    int activity = 0;
    Duration offset;
    Instant latest;
};

/// An instant that moves with an activity.
struct Moment {
    int activity = 0;
    Duration offset;
};

/// Food, or whatever a link speaks of, waits at most so long. It holds nothing back.
struct WaitLimit {
    std::vector<Moment> from;  ///< empty: `fixed`
    std::vector<Moment> to;
    bool fromFirst = false;  ///< the first of `from` counts, else the last
    bool toFirst = true;
    Instant fixed;
    Duration most;
    int wait = 0;  ///< of Expanded::waits
};

struct Network {
    std::vector<Activity> activities;  ///< in an order in which every `from` comes before its `to`
    /// By `to`, ascending. What began first follows nothing that began later: an end that has to
    /// come after another end is left out where the plan has its step begin first.
    std::vector<Following> followings;
    std::vector<Deadline> plating;  ///< of what must be plated by its serving
    std::vector<WaitLimit> limits;
    /// How many things there are more than the plan uses; each goes from hand to hand like the
    /// others of its sort, to who waits for one of them.
    int spares = 0;
};

/// The placed part of a lesson, in the plan's order.
Network networkOf(const UseIndex& index);

}  // namespace rangeline
