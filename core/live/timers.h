#pragma once
// The timers of a service: deadlines, never remainders.

#include <vector>

#include "live/service.h"

namespace rangeline::live {

struct Timer {
    PlacementKey key;
    int generation = 0;
    Instant deadline;
    Bell bell = Bell::None;

    friend bool operator==(const Timer&, const Timer&) = default;
};

/// One for each step that runs, the soonest first.
std::vector<Timer> timers(const Service& service);
/// Those that are to ring now, in the order in which they were due.
std::vector<Timer> dueTimers(const Service& service, Instant now);
/// Those that ring, the smallest number first.
std::vector<Timer> ringingTimers(const Service& service);

/// An alarm that rings later than this after its cue is marked late.
inline constexpr Duration rangLateFrom = Duration::seconds(5);

}  // namespace rangeline::live
