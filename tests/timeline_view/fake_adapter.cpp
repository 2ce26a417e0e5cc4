#include "timeline_view/fake_adapter.h"

namespace rangeline::test {

int FakeAdapter::mainLaneOf(const PlacementKey& key) const {
    const auto found = state_.lesson().placements.find(key);
    if (found == state_.lesson().placements.end()) {
        return -1;
    }
    const Placement& placement = found->second;
    for (int lane = 0; lane < laneCount(); ++lane) {
        const DropTarget target = targetOf(lane);
        const bool burner = target.equipment.sort == EquipmentSort::Burner &&
                            !placement.burners.empty() &&
                            index().burnerOf(target.equipment.unit).id == placement.burners.front();
        const bool slot = target.equipment.sort == EquipmentSort::Oven && placement.oven &&
                          placement.oven->firstSlot == target.slot;
        if (burner || slot) {
            return lane;
        }
    }
    return -1;
}

void FakeAdapter::commit(const Proposal& proposal, ActionKind kind) {
    Edit edit = proposal.edit;
    state_.exchange(edit);
    commits.push_back(kind);
}

}  // namespace rangeline::test
