#include "document/suitable.h"

#include <algorithm>
#include <map>

#include "analysis/at.h"

namespace rangeline {
namespace {

/// Units with their ranks, best first; equal ranks keep their order.
std::vector<int> inOrder(std::vector<std::pair<int, int>> ranked) {
    std::ranges::stable_sort(ranked, {}, &std::pair<int, int>::first);
    std::vector<int> units;
    for (const auto& [rank, unit] : ranked) {
        units.push_back(unit);
    }
    return units;
}

/// From the task's start until the last known step that needs the ware has let go of it.
Interval takenBy(const UseIndex& index, const Chain& chain, const Proposed& proposed) {
    Interval taken = proposed.interval;
    for (const int task : chain.tasks) {
        if (task != proposed.task && index.placed(task)) {
            taken.end = std::max(taken.end, index.placed(task).interval.end);
        }
    }
    for (const int user : chain.span.untilStartOf) {
        if (index.placed(user)) {
            taken.end = std::max(taken.end, index.placed(user).interval.begin);
        }
    }
    return taken;
}

/// 0: free and clean; 1: free, but left unwashed by the use before; 2: taken.
int rankOfWare(const UseIndex& index, int unit, int chain, const Interval& taken) {
    int rank = 0;
    for (const WareUse& use : index.wareUses(unit)) {
        const int family = at(index.expanded().chains, use.chain).family;
        const bool together = family >= 0 && family == at(index.expanded().chains, chain).family;
        if (use.chain == chain) {
            continue;
        }
        if (use.interval.overlaps(taken)) {
            return 2;
        }
        if (use.interval.end <= taken.begin) {
            const bool needsWash = index.wareOfUnit(unit).cleaning.takes > Duration();
            rank = use.wash || together || !needsWash ? 0 : 1;
        }
    }
    return rank;
}

bool isLargeEnough(const Ware& ware, const Chain& chain) {
    return ware.width >= chain.leastWidth &&
           (!chain.leastMillilitres || ware.millilitres.value_or(0) >= *chain.leastMillilitres);
}

bool fits(const Burner& burner, const std::vector<const Ware*>& wares, const BurnerHeat* heat) {
    const bool wide = std::ranges::all_of(
        wares, [&](const Ware* ware) { return ware->width <= burner.widestVessel; });
    const bool strong = heat == nullptr || !heat->leastPower ||
                        (burner.power && burner.power->watts() >= heat->leastPower->watts());
    return wide && strong;
}

/// Settings that the load accepts, those first that the oven has anyway around that time, then
/// `now`.
std::vector<Temperature> settingsFor(const UseIndex& index, int unit, int load,
                                     const Interval& interval,
                                     const std::optional<Temperature>& now = std::nullopt) {
    const OvenHeat& heat = at(index.expanded().ovenLoads, load).heat;
    std::vector<Temperature> settings =
        index.ovenOf(unit).settingsWithin(heat.lowest, heat.highest);
    if (settings.empty()) {
        settings = {heat.lowest};
    }
    if (const auto kept = std::ranges::find(settings, now); kept != settings.end()) {
        std::rotate(settings.begin(), kept, kept + 1);
    }
    const auto distance = [&](const OvenUse& use) {
        return use.interval.overlaps(interval)
                   ? Duration()
                   : std::max(use.interval.begin - interval.end, interval.begin - use.interval.end);
    };
    std::vector<OvenUse> neighbours(index.ovenUses(unit).begin(), index.ovenUses(unit).end());
    std::ranges::stable_sort(neighbours, {}, distance);
    std::ranges::reverse(neighbours);
    for (const OvenUse& use : neighbours) {
        const auto same = std::ranges::find(settings, use.setTo);
        if (use.load != load && use.mode == heat.mode && same != settings.end()) {
            std::rotate(settings.begin(), same, same + 1);
        }
    }
    return settings;
}

bool slotsFree(const UseIndex& index, int unit, int load, const Interval& interval, int first,
               int slots) {
    return std::ranges::none_of(index.ovenUses(unit), [&](const OvenUse& use) {
        return use.load != load && use.interval.overlaps(interval) &&
               use.firstSlot < first + slots && first < use.firstSlot + use.slots;
    });
}

Duration handsTaken(const UseIndex& index, int unit, int task, const Interval& interval) {
    Duration taken;
    for (const CookUse& use : index.handsUses(unit)) {
        if (use.node != task) {
            taken += intersection(use.interval, interval).length();
        }
    }
    return taken;
}

std::vector<CookId> byHandsTaken(const UseIndex& index, int group, int task,
                                 const Interval& interval, const std::string& ability) {
    std::vector<std::pair<Duration, CookId>> ranked;
    for (const CookId& id : index.lesson().head.crew) {
        const int unit = index.cookUnit(id, group);
        if (unit < 0) {
            continue;
        }
        const auto& can = index.cookOf(unit).can;
        if (ability.empty() || std::ranges::find(can, ability) != can.end()) {
            ranked.emplace_back(handsTaken(index, unit, task, interval), id);
        }
    }
    std::ranges::stable_sort(ranked, {}, &std::pair<Duration, CookId>::first);
    std::vector<CookId> cooks;
    for (auto& [taken, id] : ranked) {
        cooks.push_back(std::move(id));
    }
    return cooks;
}

}  // namespace

bool belongsTo(const UnitTable& table, int unit, int group) {
    return table.unitOf(table[unit].item, group, table[unit].number) == unit;
}

std::vector<int> wareUnitsFor(const UseIndex& index, int chain, const Proposed& proposed) {
    const Chain& wanted = at(index.expanded().chains, chain);
    const Interval taken = takenBy(index, wanted, proposed);
    const UnitTable& units = index.stations().wares;
    std::vector<std::pair<int, int>> ranked;
    for (int unit = 0; unit < units.size(); ++unit) {
        const Ware& ware = index.wareOfUnit(unit);
        if (ware.kind == wanted.kind && belongsTo(units, unit, wanted.group)) {
            const int size = isLargeEnough(ware, wanted) ? 0 : 4;
            ranked.emplace_back(size + rankOfWare(index, unit, chain, taken), unit);
        }
    }
    return inOrder(std::move(ranked));
}

std::vector<int> burnerUnitsFor(const UseIndex& index, int hold, const Proposed& proposed,
                                const std::vector<const Ware*>& wares) {
    const BurnerHold& wanted = at(index.expanded().burnerHolds, hold);
    const auto* heat =
        wanted.kept ? nullptr : std::get_if<BurnerHeat>(&index.step(wanted.owner).heat);
    const UnitTable& units = index.stations().burners;
    std::vector<std::pair<int, int>> ranked;
    for (int unit = 0; unit < units.size(); ++unit) {
        if (belongsTo(units, unit, wanted.group)) {
            const bool taken =
                std::ranges::any_of(index.burnerUses(unit), [&](const BurnerUse& use) {
                    return use.hold != hold && use.interval.overlaps(proposed.interval);
                });
            const int unfit = fits(index.burnerOf(unit), wares, heat) ? 0 : 2;
            ranked.emplace_back(unfit + (taken ? 1 : 0), unit);
        }
    }
    return inOrder(std::move(ranked));
}

std::vector<OvenSpot> ovenSpotsFor(const UseIndex& index, int load, const Proposed& proposed,
                                   const std::vector<const Ware*>& wares) {
    const OvenLoad& wanted = at(index.expanded().ovenLoads, load);
    const int slots = std::max(1, slotsOf(wanted, wares));
    const UnitTable& units = index.stations().ovens;
    std::vector<std::pair<int, OvenSpot>> ranked;
    for (int unit = 0; unit < units.size(); ++unit) {
        const Oven& oven = index.ovenOf(unit);
        if (!belongsTo(units, unit, wanted.group)) {
            continue;
        }
        const bool hasMode = std::ranges::find(oven.modes, wanted.heat.mode) != oven.modes.end();
        const Temperature setting = settingsFor(index, unit, load, proposed.interval).front();
        for (int first = 0; first == 0 || first + slots <= oven.slots; ++first) {
            const bool free = slotsFree(index, unit, load, proposed.interval, first, slots);
            ranked.emplace_back((hasMode ? 0 : 2) + (free ? 0 : 1),
                                OvenSpot{oven.id, first, setting, wanted.heat.mode});
        }
    }
    std::ranges::stable_sort(ranked, {}, &std::pair<int, OvenSpot>::first);
    std::vector<OvenSpot> spots;
    for (auto& [rank, spot] : ranked) {
        spots.push_back(std::move(spot));
    }
    return spots;
}

Temperature settingFor(const UseIndex& index, int oven, int load, const Interval& interval,
                       Temperature now) {
    return settingsFor(index, oven, load, interval, now).front();
}

std::vector<CookId> cooksFor(const UseIndex& index, int task, const Interval& interval) {
    return byHandsTaken(index, index.groupOf(task), task, interval, index.step(task).needsAbility);
}

std::vector<CookId> cooksOfGroup(const UseIndex& index, int group, const Interval& interval) {
    return byHandsTaken(index, group, -1, interval, {});
}

}  // namespace rangeline
