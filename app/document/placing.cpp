#include "document/placing.h"

#include <algorithm>
#include <set>

#include "analysis/at.h"
#include "document/complete.h"
#include "document/retarget.h"
#include "document/turn_on.h"

namespace rangeline {
namespace {

/// The washes after chains in which that task is the last one placed.
void followingWashes(const UseIndex& index, int task, std::set<PlacementKey>& keys) {
    for (const int chain : index.touches().of(task).chains) {
        const auto& tasks = at(index.expanded().chains, chain).tasks;
        if (!tasks.empty() && tasks.back() == task && index.placed(index.washNode(chain))) {
            keys.insert(index.keyOf(index.washNode(chain)));
        }
    }
}

}  // namespace

Placement completePlacement(const UseIndex& index, int task, Instant start,
                            const DropTarget& target) {
    const SetPlacements edit = placeTask(index, task, start, target);
    const auto mine =
        std::ranges::find(edit.changes, PlacementKey(index.keyOf(task)), &PlacementChange::key);
    return *mine->placement;
}

SetPlacements placeTask(const UseIndex& index, int task, Instant start, const DropTarget& target) {
    Changes changes(index);
    changes.put(index.keyOf(task), filledIn(index, task, start));
    if (accepts(index, task, target)) {
        retarget(index, task, target, changes);
    }
    turnOnFor(index, task, changes);
    return changes.edit();
}

std::vector<int> tasksOfComponent(const UseIndex& index, int serving, int component, int group) {
    std::vector<int> tasks;
    for (int task = 0; task < index.tasks(); ++task) {
        const Task& it = at(index.expanded().tasks, task);
        if (it.serving == serving && it.component == component && it.key.group == group) {
            tasks.push_back(task);
        }
    }
    return tasks;
}

SetPlacements moveBy(const UseIndex& index, std::span<const PlacementKey> keys, Duration by) {
    std::set<PlacementKey> all(keys.begin(), keys.end());
    for (const PlacementKey& key : keys) {
        const int node = index.nodeOf(key);
        if (node >= 0 && index.isTask(node)) {
            followingWashes(index, node, all);
        }
    }
    Changes changes(index);
    for (const PlacementKey& key : all) {
        if (Placement* placement = hasStarted(index, key) ? nullptr : changes.of(key)) {
            placement->start = placement->start + by;
        }
    }
    turnOnAlong(index, all, by, changes);
    return changes.edit();
}

SetPlacements moveTo(const UseIndex& index, std::span<const PlacementKey> keys, Instant start,
                     const DropTarget& target) {
    const auto lead = index.lesson().placements.find(keys.front());
    if (lead == index.lesson().placements.end() || lead->second.started) {
        return {};
    }
    SetPlacements edit = moveBy(index, keys, start - lead->second.start);
    const int node = index.nodeOf(keys.front());
    if (node < 0 || !index.isTask(node) || !accepts(index, node, target)) {
        return edit;
    }
    for (PlacementChange& change : placeTask(index, node, start, target).changes) {
        const auto same = std::ranges::find(edit.changes, change.key, &PlacementChange::key);
        if (same == edit.changes.end()) {
            edit.changes.push_back(std::move(change));
        } else {
            change.placement->start = same->placement->start;
            *same = std::move(change);
        }
    }
    return edit;
}

SetPlacements takeAway(const UseIndex& index, std::span<const PlacementKey> keys) {
    Changes changes(index);
    for (const PlacementKey& key : keys) {
        if (hasStarted(index, key)) {
            continue;
        }
        changes.remove(key);
        const int node = index.nodeOf(key);
        if (node < 0 || !index.isTask(node)) {
            continue;
        }
        for (const int chain : index.touches().of(node).chains) {
            if (at(index.expanded().chains, chain).owner == node) {
                changes.remove(index.keyOf(index.washNode(chain)));
            }
        }
        leaveColdWithout(index, node, changes);
    }
    return changes.edit();
}

SetPlacements setPinned(const UseIndex& index, std::span<const PlacementKey> keys, bool pinned) {
    Changes changes(index);
    for (const PlacementKey& key : keys) {
        if (Placement* placement = hasStarted(index, key) ? nullptr : changes.of(key)) {
            placement->pinned = pinned;
        }
    }
    return changes.edit();
}

SetPlacements endAt(const UseIndex& index, const PlacementKey& key, Instant end) {
    Changes changes(index);
    if (Placement* placement = hasStarted(index, key) ? changes.of(key) : nullptr) {
        placement->lasts = std::max(end - placement->start, index.lesson().head.grain);
    }
    return changes.edit();
}

bool hasStarted(const UseIndex& index, const PlacementKey& key) {
    const auto found = index.lesson().placements.find(key);
    return found != index.lesson().placements.end() && found->second.started;
}

Instant onGrain(const Lesson& lesson, Instant at) {
    const std::int64_t grain = lesson.head.grain.inSeconds();
    const std::int64_t seconds = at.inSeconds() + grain / 2;
    const std::int64_t rest = ((seconds % grain) + grain) % grain;
    return Instant::atSeconds(seconds - rest);
}

}  // namespace rangeline
