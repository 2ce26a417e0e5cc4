#pragma once
// Where something can go without a collision.

#include <optional>
#include <span>

#include "document/lesson_state.h"
#include "document/placing.h"

namespace rangeline {

/// The place nearest to `wanted` at which no collision names the placement: on what it has, or, for
/// a task that is not placed, on what is free then. Nothing within four hours either way.
std::optional<SetPlacements> firstFreePlace(LessonState& state, const PlacementKey& key,
                                            Instant wanted);

/// When the task would usually start, judged by what it waits for and what waits for it.
Instant usualStart(const UseIndex& index, int task);

/// Places the tasks one after another, the first at `start`, each as soon as what it waits for is
/// done and the cook's hands are free; those that accept the target go there.
SetPlacements placeInTurn(LessonState& state, std::span<const int> tasks, Instant start,
                          const DropTarget& target);

}  // namespace rangeline
