#include "document/turn_on.h"

#include <algorithm>

#include "analysis/at.h"
#include "document/placing.h"
#include "document/suitable.h"

namespace rangeline {
namespace {

/// -1 if the task's group has no such oven.
int unitOf(const UseIndex& index, const OvenId& oven, int group) {
    const UnitTable& units = index.stations().ovens;
    for (int unit = 0; unit < units.size(); ++unit) {
        if (index.ovenOf(unit).id == oven && belongsTo(units, unit, group)) {
            return unit;
        }
    }
    return -1;
}

bool isUsedByOthers(const UseIndex& index, int oven, int task) {
    return std::ranges::any_of(index.ovenUses(oven), [&](const OvenUse& use) {
        return at(index.expanded().ovenLoads, use.load).owner != task;
    });
}

}  // namespace

Instant latestTurnOn(const UseIndex& index, int oven, Temperature setTo, Instant warmBy) {
    const Instant latest = warmBy - index.ovenOf(oven).warmUpTo(setTo) - turnOnTakes;
    const Instant near = onGrain(index.lesson(), latest);
    return latest < near ? near - index.lesson().head.grain : near;
}

Placement turningOn(const UseIndex& index, int oven, const OvenSpot& load, Instant start,
                    const CookId& cook) {
    Placement turnOn;
    turnOn.start = start;
    turnOn.oven = OvenSpot{index.ovenOf(oven).id, 0, load.setTo, load.mode};
    turnOn.hands = {{cook, 0}};
    return turnOn;
}

void turnOnFor(const UseIndex& index, int task, Changes& changes) {
    const Placement* mine = changes.of(index.keyOf(task));
    if (mine == nullptr || !mine->oven) {
        return;
    }
    const int oven = unitOf(index, mine->oven->oven, index.groupOf(task));
    if (oven < 0 || isUsedByOthers(index, oven, task)) {
        return;
    }
    const PlacementKey key = index.keyOf(index.turnOnNode(oven));
    if (index.lesson().placements.contains(key)) {
        return;
    }
    const Instant start = latestTurnOn(index, oven, mine->oven->setTo, mine->start);
    const int group = index.groupOf(index.turnOnNode(oven));
    const auto cooks = cooksOfGroup(index, group, {start, start + turnOnTakes});
    if (!cooks.empty()) {
        changes.put(key, turningOn(index, oven, *mine->oven, start, cooks.front()));
    }
}

void turnOnAlong(const UseIndex& index, const std::set<PlacementKey>& moved, Duration by,
                 Changes& changes) {
    for (int oven = 0; oven < index.stations().ovens.size(); ++oven) {
        const PlacementKey key = index.keyOf(index.turnOnNode(oven));
        const auto turnOn = index.lesson().placements.find(key);
        if (index.ovenUses(oven).empty() || turnOn == index.lesson().placements.end() ||
            turnOn->second.pinned || turnOn->second.started || moved.contains(key)) {
            continue;
        }
        Instant before = index.ovenUses(oven).front().interval.begin;
        std::optional<Instant> after;
        for (const OvenUse& use : index.ovenUses(oven)) {
            const int owner = at(index.expanded().ovenLoads, use.load).owner;
            const Instant begin = use.interval.begin;
            const Instant then = moved.contains(index.keyOf(owner)) ? begin + by : begin;
            before = std::min(before, begin);
            after = after ? std::min(*after, then) : then;
        }
        if (*after != before) {
            Placement* placement = changes.of(key);
            placement->start = placement->start + (*after - before);
        }
    }
}

void leaveColdWithout(const UseIndex& index, int task, Changes& changes) {
    const auto placed = index.lesson().placements.find(index.keyOf(task));
    if (placed == index.lesson().placements.end() || !placed->second.oven) {
        return;
    }
    const int oven = unitOf(index, placed->second.oven->oven, index.groupOf(task));
    if (oven < 0 || isUsedByOthers(index, oven, task)) {
        return;
    }
    const PlacementKey key = index.keyOf(index.turnOnNode(oven));
    const auto turnOn = index.lesson().placements.find(key);
    if (turnOn != index.lesson().placements.end() && !turnOn->second.pinned &&
        !turnOn->second.started) {
        changes.remove(key);
    }
}

}  // namespace rangeline
