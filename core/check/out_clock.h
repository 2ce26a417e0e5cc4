#pragma once
// How long food that needs time or temperature control is neither cold nor hot on the placed
// lesson: worked on without heat, and waiting at room temperature, one step after the other.

#include <optional>

#include "analysis/use_index.h"

namespace rangeline {

struct OutClock {
    int made = 0;   ///< task whose food is out first; the clock begins with it or, heated, after it
    int until = 0;  ///< task that takes the food up, or after which it is put in the cold
    Interval out;
    bool fromHeat = false;
    bool toCold = false;
};

/// The clock that ends with that wait of a using step for a making one: where the food goes to the
/// heat or the cold or is served from. Nothing where the clock goes on in the using step, where the
/// food is kept hot or cold or needs no control, and where a step concerned is not placed. Of
/// several waits for food that goes to the cold, the first one has the clock.
std::optional<OutClock> outClock(const UseIndex& index, int wait);

}  // namespace rangeline
