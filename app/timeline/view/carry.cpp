#include "timeline_view/carry.h"

#include <algorithm>

#include "analysis/at.h"
#include "document/free_place.h"

namespace rangeline {

Carry Carry::ofPlaced(const ToolAdapter& adapter, std::vector<PlacementKey> keys) {
    const UseIndex& index = adapter.index();
    Carry carry;
    carry.lead_ = keys.front();
    const int node = index.nodeOf(carry.lead_);
    if (node >= 0 && index.placed(node)) {
        carry.start_ = index.placed(node).interval.begin;
        carry.length_ = index.placed(node).interval.length();
        carry.leadTask_ = index.isTask(node) ? node : -1;
    }
    carry.begun_ = hasStarted(index, carry.lead_);
    carry.keys_ = std::move(keys);
    return carry;
}

Carry Carry::ofSteps(const ToolAdapter& adapter, const std::vector<StepKey>& steps) {
    const UseIndex& index = adapter.index();
    Carry carry;
    for (const StepKey& step : steps) {
        const int task = index.expanded().taskOf(step);
        if (task >= 0) {
            carry.tasks_.push_back(task);
        }
    }
    carry.leadTask_ = carry.tasks_.front();
    carry.lead_ = index.keyOf(carry.leadTask_);
    carry.start_ = onGrain(index.lesson(), usualStart(index, carry.leadTask_));
    carry.length_ = timingOf(at(index.expanded().tasks, carry.leadTask_), {}).length;
    return carry;
}

bool Carry::acceptedBy(const ToolAdapter& adapter, int lane) const {
    const auto takes = [&](int task) {
        return accepts(adapter.index(), task, adapter.targetOf(lane));
    };
    return tasks_.empty() ? leadTask_ >= 0 && takes(leadTask_) : std::ranges::any_of(tasks_, takes);
}

void Carry::moveTo(const ToolAdapter& adapter, Instant start, int lane) {
    if (begun_) {
        endsLater_ = onGrain(adapter.index().lesson(), start + length_) - (start_ + length_);
        return;
    }
    lane_ = lane;
    refused_ = lane >= 0 && adapter.targetOf(lane) != DropTarget() && !acceptedBy(adapter, lane);
    start_ = adapter.snapped({lead_, start, length_, lane});
}

void Carry::step(const ToolAdapter& adapter, int grains, int lanes, bool sameSort) {
    if (begun_) {
        endsLater_ = endsLater_ + adapter.index().lesson().head.grain * grains;
        return;
    }
    start_ =
        onGrain(adapter.index().lesson(), start_ + adapter.index().lesson().head.grain * grains);
    if (lanes == 0) {
        return;
    }
    int lane = lane_ >= 0 ? lane_ : adapter.mainLaneOf(lead_);
    const EquipmentSort sort = adapter.targetOf(lane).equipment.sort;
    for (lane += lanes; lane >= 0 && lane < adapter.laneCount(); lane += lanes) {
        const DropTarget target = adapter.targetOf(lane);
        const bool heat = target.equipment.sort == EquipmentSort::Oven && target.slot < 0;
        const bool other = sameSort && target.equipment.sort != sort;
        if (!heat && !other && acceptedBy(adapter, lane)) {
            lane_ = lane;
            refused_ = false;
            return;
        }
    }
}

Proposal Carry::proposal(const ToolAdapter& adapter) const {
    Proposal proposal;
    proposal.lead = lead_;
    proposal.refused = refused_;
    proposal.begun = begun_;
    proposal.removes = onShelf_ && !begun_;
    const DropTarget target = refused_ ? DropTarget() : adapter.targetOf(lane_);
    const UseIndex& index = adapter.index();
    if (begun_) {
        if (endsLater_ != Duration()) {
            proposal.edit = endAt(index, lead_, start_ + length_ + endsLater_);
        }
        return proposal;
    }
    if (onShelf_) {
        proposal.edit = tasks_.empty() ? takeAway(index, keys_) : SetPlacements();
    } else if (tasks_.empty()) {
        proposal.edit = rangeline::moveTo(index, keys_, start_, target);
    } else if (tasks_.size() == 1) {
        proposal.edit = placeTask(index, leadTask_, start_, target);
    } else {
        proposal.edit = adapter.placeInTurn(tasks_, start_, target);
    }
    return proposal;
}

}  // namespace rangeline
