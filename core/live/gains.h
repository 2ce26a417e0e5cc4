#pragma once
// What would make up for lost time: small parts of the plan that can be left out, each with what
// plating gains by it as the plan goes. Steps on the heat, steps that cook to a temperature and the
// plating itself are never among them.

#include <stop_token>
#include <vector>

#include "live/outlook.h"

namespace rangeline::live {

struct Gain {
    PlacementKey key;  ///< to be left out
    Duration by;       ///< > 0

    friend bool operator==(const Gain&, const Gain&) = default;
};

/// What gains most first. Stopped, what was found so far.
std::vector<Gain> gains(const Service& service, Instant now, std::stop_token stop = {});

}  // namespace rangeline::live
