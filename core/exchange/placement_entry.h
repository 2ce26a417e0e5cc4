#pragma once
// A placement as files have it, and its key.

#include <optional>

#include "model/placement.h"

namespace rangeline {

class Node;

/// A placement as a file has it: the key beside the values. Exactly one of the three ids is there.
struct PlacementEntry : Placement {
    std::optional<StepId> step;
    std::optional<StepId> washAfter;
    std::optional<OvenId> turnOn;
    int batch = 0;
    int spot = 0;
    int group = 0;

    friend bool operator==(const PlacementEntry&, const PlacementEntry&) = default;
};

PlacementEntry entryOf(const PlacementKey& key, const Placement& placement);
/// The key of an entry that names exactly one thing; otherwise reports so at the node.
std::optional<PlacementKey> keyOf(const PlacementEntry& entry, const Node& node);

}  // namespace rangeline
