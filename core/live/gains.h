#pragma once
// What would make up for lost time, each with what plating gains by it as the plan goes: the
// simpler form that a component names, a step or a whole component left out, a twin from before
// class swapped in, and at last guests who wait. Unless a simpler form names them, steps on the
// heat, steps that cook to a temperature and steps that work on the food of another one are not
// left out by themselves, and neither is a component with such a step, nor any plating.

#include <cstdint>
#include <stop_token>
#include <vector>

#include "live/outlook.h"

namespace rangeline::live {

enum class GainBy : std::uint8_t {
    SimplerForm,
    LeavingOutStep,
    LeavingOutComponent,
    SwappingIn,
    ServingLater
};

struct Gain {
    GainBy how = GainBy::LeavingOutStep;
    /// To be skipped, the step that gives it its name first; none where guests wait.
    std::vector<PlacementKey> keys;
    Duration by;  ///< at least a minute

    friend bool operator==(const Gain&, const Gain&) = default;
};

/// What gains most first, serving later last. Stopped, what was found so far.
std::vector<Gain> gains(const Service& service, Instant now, std::stop_token stop = {});

}  // namespace rangeline::live
