#pragma once
// Turning an oven on in time for its first load.

#include <set>

#include "document/changes.h"
#include "model/kitchen.h"

namespace rangeline {

/// The latest time on the grain at which turning that oven on still has it at the setting in time.
Instant latestTurnOn(const UseIndex& index, int oven, Temperature setTo, Instant warmBy);

/// Turning on to what that load needs.
Placement turningOn(const UseIndex& index, int oven, const OvenSpot& load, Instant start,
                    const CookId& cook);

/// If the task, whose placement is among the changes, goes into an oven that is cold and that
/// nothing else uses: turns it on, by the cook who has least to do then.
void turnOnFor(const UseIndex& index, int task, Changes& changes);

/// Where the first load of an oven moves with all of these by that much: has its turning on move
/// along, so that the oven is neither cold nor warm for nothing. What is pinned or begun stays.
void turnOnAlong(const UseIndex& index, const std::set<PlacementKey>& moved, Duration by,
                 Changes& changes);

/// If no load but the task's is in an oven: takes its turning on away, unless that is pinned.
void leaveColdWithout(const UseIndex& index, int task, Changes& changes);

}  // namespace rangeline
