#include "timeline/main_lane.h"

#include <algorithm>
#include <optional>

#include "analysis/at.h"
#include "model/equipment_kinds.h"

namespace rangeline {
namespace {

bool holdsFood(const Chain& chain) {
    const EquipmentKind* kind = findEquipmentKind(chain.kind);
    return kind == nullptr || !kind->isCuttingSurface;
}

/// A slot that the oven really has, also for a load that is placed outside.
int nearestSlot(const UseIndex& index, const OvenUse& use, int unit) {
    return std::clamp(use.firstSlot, 0, index.ovenOf(unit).slots - 1);
}

std::optional<int> ovenLane(const UseIndex& index, const Lanes& lanes, int task) {
    for (const int load : index.touches().of(task).ovenLoads) {
        const OvenLoad& it = at(index.expanded().ovenLoads, load);
        const int unit = index.ovenUnit(load);
        if (it.owner == task && !it.kept && unit >= 0) {
            return lanes.slotOf(unit, nearestSlot(index, index.ovenUse(load), unit));
        }
    }
    return std::nullopt;
}

std::optional<int> burnerLane(const UseIndex& index, const Lanes& lanes, int task) {
    for (const int hold : index.touches().of(task).burnerHolds) {
        const auto& tasks = at(index.expanded().burnerHolds, hold).tasks;
        if (index.burnerUnit(hold) >= 0 && std::ranges::count(tasks, task) > 0) {
            return lanes.laneOf({EquipmentSort::Burner, index.burnerUnit(hold)});
        }
    }
    return std::nullopt;
}

std::optional<int> wareLane(const UseIndex& index, const Lanes& lanes, int task) {
    for (const int chain : index.touches().of(task).chains) {
        const Chain& it = at(index.expanded().chains, chain);
        if (index.wareUnit(chain) >= 0 && holdsFood(it) && std::ranges::count(it.tasks, task) > 0) {
            return lanes.laneOf({EquipmentSort::Ware, index.wareUnit(chain)});
        }
    }
    return std::nullopt;
}

std::optional<int> cookLane(const UseIndex& index, const Lanes& lanes, int task) {
    const Placement& placement = *index.placed(task).placement;
    const int group = index.groupOf(task);
    const auto laneOf = [&](const CookId& cook) -> std::optional<int> {
        const int unit = index.cookUnit(cook, group);
        return unit < 0 ? std::nullopt : std::optional(lanes.laneOf({EquipmentSort::Cook, unit}));
    };
    for (const Share& share : placement.hands) {
        if (const auto lane = laneOf(share.cook)) {
            return lane;
        }
    }
    return placement.watchers.empty() ? std::nullopt : laneOf(placement.watchers.front());
}

int poolLane(const UseIndex& index, const Lanes& lanes, int task) {
    for (const int hold : index.touches().of(task).poolHolds) {
        const PoolHold& it = at(index.expanded().poolHolds, hold);
        if (it.owner == task && it.span.begin == SpanBegin::TaskStart) {
            return lanes.laneOf({EquipmentSort::Pool, it.unit});
        }
    }
    return lanes.counterOf(index.groupOf(task));
}

}  // namespace

int mainLaneOf(const UseIndex& index, const Lanes& lanes, int node) {
    if (index.isTurnOn(node)) {
        return lanes.heatOf(index.ovenOfTurnOn(node));
    }
    if (index.isWash(node)) {
        const int unit = index.wareUnit(index.chainOfWash(node));
        return unit < 0 ? lanes.counterOf(index.groupOf(node))
                        : lanes.laneOf({EquipmentSort::Ware, unit});
    }
    if (const auto lane = ovenLane(index, lanes, node)) {
        return *lane;
    }
    if (const auto lane = burnerLane(index, lanes, node)) {
        return *lane;
    }
    if (const auto lane = wareLane(index, lanes, node)) {
        return *lane;
    }
    if (const auto lane = cookLane(index, lanes, node)) {
        return *lane;
    }
    return poolLane(index, lanes, node);
}

}  // namespace rangeline
