#pragma once
// How the plan goes on if nobody arranges anything: its order kept, what runs lasting until now at
// least, what waits beginning no sooner than now and than what it follows allows.

#include <map>
#include <vector>

#include "live/service.h"
#include "rehearse/network.h"

namespace rangeline::live {

/// An activity of the plan as it goes: when it begins, and how much longer it takes.
struct Going {
    Instant begin;
    Duration longer;
    bool waits = false;
    Instant due;  ///< of what waits: when it can begin; over if that was before now
};

struct Course {
    Network network;
    std::vector<Going> goings;  ///< by activity of the network
    std::vector<PlacementKey> keys;

    /// Where the instant `offset` of that activity's plan lies now.
    Instant at(std::size_t activity, Duration offset) const;
    /// When what waits is due.
    std::map<PlacementKey, Instant> dues() const;
};

Course courseOf(const Service& service, Instant now);

}  // namespace rangeline::live
