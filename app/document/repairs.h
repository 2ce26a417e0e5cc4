#pragma once
// Changes that each take one finding away, or a part of it. For a collision a repair is offered
// only if the lesson has fewer of them with it.

#include <cstdint>
#include <optional>
#include <vector>

#include "document/lesson_state.h"

namespace rangeline {

enum class RepairCode : std::uint8_t {
    AddWash,         ///< put in the wash between two uses
    OtherEquipment,  ///< use another pan, burner, slot or cook (`equipment`)
    MoveToFree,      ///< move to the first free place (`at`)
    PinOff,          ///< let arranging move it
    TurnOnOven,      ///< turn the oven on in time, to the first load's setting
    TimeAllByPiece,  ///< handwork takes longer for more covers: all that the finding names
    TimeByPiece,     ///< one of it
    PlaceIt          ///< place it where everything it needs is free (`at`)
};

struct Repair {
    RepairCode code{};
    PlacementKey key;        ///< what it changes
    EquipmentRef equipment;  ///< what it uses instead, if any
    std::optional<Instant> at;
    Edit edit;
};

/// What could be done about the finding, best first.
std::vector<Repair> repairsFor(LessonState& state, const Finding& finding);

}  // namespace rangeline
