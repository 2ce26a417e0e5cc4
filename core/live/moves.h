#pragma once
// What an event made of the rest: what begins at another time now, and what food waits for it.

#include <map>
#include <vector>

#include "live/service.h"

namespace rangeline::live {

struct MovedStep {
    PlacementKey key;
    Instant from;
    Instant to;
};

/// Food that is done, or will be, and waits longer than before for the step that uses it.
struct HeldFood {
    StepKey made;
    PlacementKey until;  ///< the step that uses it
    Instant at;          ///< when that begins now
};

struct Moves {
    std::vector<MovedStep> moved;  ///< in the order of their starts
    std::vector<HeldFood> held;    ///< likewise
};

/// Steps that move by less are not worth a word.
inline constexpr Duration movesFrom = Duration::minutes(1);

/// Between the times at which steps were due before an event and those after it.
Moves moves(const Service& service, const std::map<PlacementKey, Instant>& before,
            const std::map<PlacementKey, Instant>& after);

}  // namespace rangeline::live
