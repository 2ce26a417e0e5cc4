#pragma once

#include "timeline_view/scene.h"

namespace rangeline {

enum class Direction : std::uint8_t { Earlier, Later, Up, Down, First, Last };

/// The block that the focus goes to: the neighbour in the same lane, or the one nearest in time in
/// the next lane that has any. Stays where there is none. From -1 it goes to the first in time.
/// Returns an item, or -1 if nothing is placed.
int nextFocus(const TimelineScene& scene, int item, Direction direction);

}  // namespace rangeline
