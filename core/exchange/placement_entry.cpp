#include "exchange/placement_entry.h"

#include "exchange/node.h"

namespace rangeline {

PlacementEntry entryOf(const PlacementKey& key, const Placement& placement) {
    PlacementEntry entry;
    static_cast<Placement&>(entry) = placement;
    if (const auto* step = std::get_if<StepKey>(&key)) {
        entry.step = step->step;
        entry.batch = step->batch;
        entry.group = step->group;
    } else if (const auto* wash = std::get_if<WashKey>(&key)) {
        entry.washAfter = wash->after.step;
        entry.batch = wash->after.batch;
        entry.group = wash->after.group;
        entry.spot = wash->spot;
    } else {
        entry.turnOn = std::get<TurnOnKey>(key).oven;
        entry.group = std::get<TurnOnKey>(key).group;
    }
    return entry;
}

std::optional<PlacementKey> keyOf(const PlacementEntry& entry, const Node& node) {
    const int named = (entry.step ? 1 : 0) + (entry.washAfter ? 1 : 0) + (entry.turnOn ? 1 : 0);
    if (named != 1) {
        node.report(named == 0 ? Fault{FaultCode::MissingKey, {}, {"step"}}
                               : Fault{FaultCode::Contradiction, {}, {"step", "washAfter"}});
        return std::nullopt;
    }
    if (entry.step) {
        return StepKey{*entry.step, entry.batch, entry.group};
    }
    if (entry.washAfter) {
        return WashKey{{*entry.washAfter, entry.batch, entry.group}, entry.spot};
    }
    return TurnOnKey{*entry.turnOn, entry.group};
}

}  // namespace rangeline
