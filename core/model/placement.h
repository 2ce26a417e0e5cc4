#pragma once
// Where and when things happen in a lesson. Everything that the checker, the timeline and the paper
// show is stored here: set temperatures, washes, turning ovens on, who works and who watches.

#include <compare>
#include <cstdint>
#include <map>
#include <optional>
#include <variant>
#include <vector>

#include "base/id.h"
#include "base/units.h"
#include "model/kitchen.h"

namespace rangeline {

/// One batch of one step for one group.
struct StepKey {
    StepId step;
    int batch = 0;
    int group = 0;

    friend auto operator<=>(const StepKey&, const StepKey&) = default;
};

/// One ware out of a pool of alike ones, counted from 0.
struct WareSpot {
    WareId ware;
    int number = 0;

    friend auto operator<=>(const WareSpot&, const WareSpot&) = default;
};

/// Cleaning of a ware after the chain that begins with this step batch. Where that step takes
/// several fresh wares, `spot` counts them in the order of Placement::wares.
struct WashKey {
    StepKey after;
    int spot = 0;

    friend auto operator<=>(const WashKey&, const WashKey&) = default;
};

struct TurnOnKey {
    OvenId oven;
    int group = 0;

    friend auto operator<=>(const TurnOnKey&, const TurnOnKey&) = default;
};

using PlacementKey = std::variant<StepKey, WashKey, TurnOnKey>;

/// Where a load stands in an oven and what the oven is set to for it.
struct OvenSpot {
    OvenId oven;
    int firstSlot = 0;  ///< the load takes this and the following slots
    Temperature setTo;
    OvenMode mode = OvenMode::Bake;

    friend bool operator==(const OvenSpot&, const OvenSpot&) = default;
};

/// A cook's share of a step's hands segments.
struct Share {
    CookId cook;
    int pieces = 0;  ///< 0: the whole step; else this many of the step's pieces

    friend bool operator==(const Share&, const Share&) = default;
};

/// Only the fields that the step needs are filled; the checker says what is missing.
/// A step that carries on in a ware, or stays on the heat, takes both from the step before.
struct Placement {
    Instant start;
    std::vector<BurnerId> burners;
    std::optional<OvenSpot> oven;    ///< for steps in the oven; for turning on: the first setting
    std::vector<WareSpot> wares;     ///< the fresh ones, in the order of the step's needs
    std::vector<Share> hands;        ///< for a wash and for turning on: the one cook
    std::vector<CookId> watchers;    ///< one per watch segment
    std::vector<BurnerId> keptOn;    ///< burner for food that keeps hot on one afterwards
    std::optional<OvenSpot> keptIn;  ///< oven for food that keeps hot in one afterwards
    bool pinned = false;
    bool started = false;           ///< begun at the stove: only its end may still move
    std::optional<Duration> lasts;  ///< whole length where it differs from the plan's

    friend bool operator==(const Placement&, const Placement&) = default;
};

using Placements = std::map<PlacementKey, Placement>;

}  // namespace rangeline
