#pragma once
// How the plan goes on if nobody arranges anything: its order kept, what runs lasting until now at
// least, what waits beginning no sooner than now and than what it follows allows.

#include <vector>

#include "live/service.h"
#include "rehearse/network.h"

namespace rangeline::live {

/// An activity of the plan as it goes: when it begins, and how much longer it takes.
struct Going {
    Instant begin;
    Duration longer;
    bool waits = false;
};

struct Course {
    Network network;
    std::vector<Going> goings;  ///< by activity of the network
    std::vector<PlacementKey> keys;

    /// Where the instant `offset` of that activity's plan lies now.
    Instant at(std::size_t activity, Duration offset) const;
};

Course courseOf(const Service& service, Instant now);

}  // namespace rangeline::live
