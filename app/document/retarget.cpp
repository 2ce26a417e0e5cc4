#include "document/retarget.h"

#include <algorithm>

#include "analysis/at.h"
#include "document/suitable.h"

namespace rangeline {
namespace {

template <class T>
void setAt(std::vector<T>& list, int spot, T value) {
    if (static_cast<std::size_t>(spot) >= list.size()) {
        list.resize(static_cast<std::size_t>(spot) + 1);
    }
    at(list, spot) = std::move(value);
}

/// Chooses the target's equipment, in the placement that names it: that of the task, or of the
/// step whose vessel or burner it goes on with. Choices that the target makes impossible are
/// dropped, so that they are filled in anew.
class Retarget {
  public:
    Retarget(const UseIndex& index, int task, const DropTarget& target, Changes& changes)
        : index_(index), task_(task), target_(target), changes_(changes) {}

    void run() {
        switch (target_.equipment.sort) {
            case EquipmentSort::Burner:
                return toBurner();
            case EquipmentSort::Oven:
                return toOven();
            case EquipmentSort::Ware:
                return toWare();
            case EquipmentSort::Cook:
                return toCook();
            case EquipmentSort::Pool:
            case EquipmentSort::None:
                return;
        }
    }

  private:
    Duration length() const {
        return index_.placed(task_) ? index_.placed(task_).interval.length()
                                    : timingOf(at(index_.expanded().tasks, task_), {}).length;
    }

    Placement* placementOf(int task) { return changes_.of(index_.keyOf(task)); }

    void toBurner() {
        const BurnerId id = index_.burnerOf(target_.equipment.unit).id;
        for (const int hold : index_.touches().of(task_).burnerHolds) {
            const BurnerHold& it = at(index_.expanded().burnerHolds, hold);
            Placement* named = placementOf(it.owner);
            if (it.kept || named == nullptr || std::ranges::count(it.tasks, task_) == 0) {
                continue;
            }
            const auto same = std::ranges::find(named->burners, id);
            if (same != named->burners.end()) {
                std::iter_swap(same, named->burners.begin());
            } else {
                setAt(named->burners, it.spot, id);
            }
            return;
        }
    }

    void toOven() {
        const Oven& oven = index_.ovenOf(target_.equipment.unit);
        Placement& mine = *placementOf(task_);
        for (const int load : index_.touches().of(task_).ovenLoads) {
            const OvenLoad& it = at(index_.expanded().ovenLoads, load);
            if (it.owner != task_ || it.kept || !mine.oven) {
                continue;
            }
            const bool here = mine.oven->oven == oven.id;
            mine.oven->oven = oven.id;
            if (target_.slot >= 0) {
                const int slots =
                    index_.ovenUnit(load) < 0 ? 1 : std::max(1, index_.ovenUse(load).slots);
                mine.oven->firstSlot = std::clamp(target_.slot, 0, std::max(0, oven.slots - slots));
            } else if (!here) {
                mine.oven->firstSlot = 0;
            }
            if (!here) {
                mine.oven->setTo =
                    settingFor(index_, target_.equipment.unit, load,
                               {mine.start, mine.start + length()}, mine.oven->setTo);
            }
        }
    }

    void toWare() {
        const Ware& ware = index_.wareOfUnit(target_.equipment.unit);
        const int number = index_.stations().wares[target_.equipment.unit].number;
        for (const int chain : index_.touches().of(task_).chains) {
            const Chain& it = at(index_.expanded().chains, chain);
            Placement* named = it.owner < 0 ? nullptr : placementOf(it.owner);
            if (it.kind == ware.kind && named != nullptr &&
                std::ranges::count(it.tasks, task_) > 0) {
                setAt(named->wares, it.key.spot, WareSpot{ware.id, number});
                return;
            }
        }
    }

    void toCook() {
        const CookId id = index_.cookOf(target_.equipment.unit).id;
        Placement& mine = *placementOf(task_);
        if (mine.hands.empty()) {
            std::ranges::fill(mine.watchers, id);
            return;
        }
        if (std::ranges::find(mine.hands, id, &Share::cook) != mine.hands.end()) {
            return;
        }
        const CookId before = mine.hands.front().cook;
        mine.hands.front().cook = id;
        std::ranges::replace(mine.watchers, before, id);
    }

    const UseIndex& index_;
    int task_;
    const DropTarget& target_;
    Changes& changes_;
};

bool takesPartIn(const UseIndex& index, int task, const DropTarget& target) {
    const Touches::OfTask& needs = index.touches().of(task);
    const Expanded& all = index.expanded();
    const auto holds = [&](int hold) {
        const BurnerHold& it = at(all.burnerHolds, hold);
        return !it.kept && std::ranges::count(it.tasks, task) > 0;
    };
    const auto loads = [&](int load) {
        return at(all.ovenLoads, load).owner == task && !at(all.ovenLoads, load).kept;
    };
    const auto stands = [&](int chain) {
        const Chain& it = at(all.chains, chain);
        return it.owner >= 0 && it.kind == index.wareOfUnit(target.equipment.unit).kind &&
               std::ranges::count(it.tasks, task) > 0;
    };
    switch (target.equipment.sort) {
        case EquipmentSort::Burner:
            return std::ranges::any_of(needs.burnerHolds, holds);
        case EquipmentSort::Oven:
            return std::ranges::any_of(needs.ovenLoads, loads);
        case EquipmentSort::Ware:
            return std::ranges::any_of(needs.chains, stands);
        case EquipmentSort::Cook:
            return std::ranges::any_of(at(all.tasks, task).segments, [](const Segment& segment) {
                return segment.attention != Attention::Away;
            });
        case EquipmentSort::Pool:
        case EquipmentSort::None:
            break;
    }
    return false;
}

bool isOfGroup(const UseIndex& index, const EquipmentRef& ref, int group) {
    const Stations& stations = index.stations();
    switch (ref.sort) {
        case EquipmentSort::Burner:
            return belongsTo(stations.burners, ref.unit, group);
        case EquipmentSort::Oven:
            return belongsTo(stations.ovens, ref.unit, group);
        case EquipmentSort::Ware:
            return belongsTo(stations.wares, ref.unit, group);
        case EquipmentSort::Cook:
            return belongsTo(stations.cooks, ref.unit, group);
        case EquipmentSort::Pool:
        case EquipmentSort::None:
            break;
    }
    return true;
}

}  // namespace

void retarget(const UseIndex& index, int task, const DropTarget& target, Changes& changes) {
    Retarget(index, task, target, changes).run();
}

bool accepts(const UseIndex& index, int task, const DropTarget& target) {
    return isOfGroup(index, target.equipment, index.groupOf(task)) &&
           takesPartIn(index, task, target);
}

}  // namespace rangeline
