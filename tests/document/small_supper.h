#pragma once
// A pan of leeks and a tray of roots on two burners and an oven of two slots, for two cooks.

#include "support/lesson_builder.h"

namespace rangeline::test {

/// Steps: "trim" (hands 5), "char" (hands 2, watch 8, burner, fresh pan), "simmer" (away 10, same
/// pan, burner), "roast" (hands 1, away 29, oven 400 to 450 °F, fresh sheet), "plate" (hands 3).
/// Wares: "pan" x2 (wash 2 min at the sink), "sheet" x1 (no wash). Burners "left", "right"; oven
/// "oven". Cooks "ann" and "bob". Nothing is placed.
LessonBuilder smallSupper();

/// The same, placed without a collision: trim -60, char -50 on left in pan 0, simmer -40 on left,
/// roast -40 in slot 0 at 425 °F after turning on at -51, plate -3.
LessonBuilder placedSupper();

}  // namespace rangeline::test
