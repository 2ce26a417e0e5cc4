#pragma once
// What a cook does with placements by hand, as edits: pure functions of the lesson as it is. An
// edit may lead to collisions; what collides is said, not prevented. What has started at the stove
// stays where it is.

#include <optional>
#include <span>
#include <vector>

#include "analysis/equipment_ref.h"
#include "analysis/use_index.h"
#include "model/edit.h"

namespace rangeline {

/// A lane that something is dropped on. None: wherever it fits.
struct DropTarget {
    EquipmentRef equipment;
    int slot = -1;  ///< of an oven, from 0 at the top; -1: any

    friend bool operator==(const DropTarget&, const DropTarget&) = default;
};

/// Whether the task could use that equipment at all: its sort, its group. Width and power are
/// judged by the checks.
bool accepts(const UseIndex& index, int task, const DropTarget& target);

/// A placement of the task at `start` with everything it needs: on the target where that fits, on
/// what the task has already, or else on the first thing that is free then and suits; at an oven
/// setting that its neighbours have, or the first accepted one. What is not at hand stays empty.
Placement completePlacement(const UseIndex& index, int task, Instant start,
                            const DropTarget& target = {});

/// Places one task that may have a placement already; its pin stays. A cold oven that nothing else
/// uses is turned on in time.
SetPlacements placeTask(const UseIndex& index, int task, Instant start, const DropTarget& target);

/// All batches of all steps of that component, in lesson order.
std::vector<int> tasksOfComponent(const UseIndex& index, int serving, int component, int group);

/// Moves placements by the same time, with the washes that follow them. Pinned ones move too: the
/// cook moves them.
SetPlacements moveBy(const UseIndex& index, std::span<const PlacementKey> keys, Duration by);

/// Moves the first of the placements to `start`, and to the target if it accepts that; the others
/// by the same time. The turning on of an oven goes along with its first load.
SetPlacements moveTo(const UseIndex& index, std::span<const PlacementKey> keys, Instant start,
                     const DropTarget& target);

/// Takes the placements away, and the washes and the turning on of what is no longer used.
SetPlacements takeAway(const UseIndex& index, std::span<const PlacementKey> keys);

SetPlacements setPinned(const UseIndex& index, std::span<const PlacementKey> keys, bool pinned);

/// Has what has begun end then, or as soon after its start as the grain allows; nothing else has an
/// end of its own.
SetPlacements endAt(const UseIndex& index, const PlacementKey& key, Instant end);

bool hasStarted(const UseIndex& index, const PlacementKey& key);

/// The nearest multiple of the lesson's grain.
Instant onGrain(const Lesson& lesson, Instant at);

}  // namespace rangeline
