#pragma once
// Placements at random, right and wrong ones, for property tests of what reads them.

#include "base/random.h"
#include "model/expand.h"
#include "model/lesson.h"

namespace rangeline::test {

/// The keys of every placement that the lesson may have: tasks, washes, turning ovens on.
std::vector<PlacementKey> possibleKeys(const Lesson& lesson, const Expanded& expanded);

/// A placement for that key within two hours before serving. Most name what they need, some leave
/// something out, and some name what the kitchen lacks.
Placement randomPlacement(Random& random, const Lesson& lesson);

/// Places about that share of all possible keys.
void placeAtRandom(Random& random, Lesson& lesson, const Expanded& expanded, double share);

}  // namespace rangeline::test
