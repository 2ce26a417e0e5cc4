#pragma once
// Something wrong, or worth knowing, about a lesson: a code, the steps, the equipment, the time and
// the figures. No words: app/text makes the sentence.

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "analysis/equipment_ref.h"
#include "base/units.h"
#include "model/placement.h"

namespace rangeline {

/// Open: not wrong, but not done either, as a step that is not placed yet.
enum class Severity : std::uint8_t { Collision, Late, Open, Caution };

/// Figures are listed per code in the order given; `keys` are the placements concerned.
enum class FindingCode : std::uint8_t {
    // ---- collisions ----
    NotPlaced,             ///< a step has no placement yet
    MissingAssignment,     ///< 0: text: "burner" | "oven" | "ware" | "cook" | "watcher"
    UnknownEquipment,      ///< 0: the id a placement names that the kitchen lacks
    OffGrain,              ///< 0: the grain
    BurnerTwice,           ///< keys: the two; equipment: the burner
    WareTwice,             ///< keys: the two; equipment: the ware
    OvenSlotTwice,         ///< keys: the two; 0: slot (from 1)
    OvenTwoTemperatures,   ///< keys: the two; 0: first's temperature, 1: second's
    OvenTwoModes,          ///< keys: the two; 0, 1: mode as text key
    OvenChangedTooFast,    ///< keys: before, after; 0: needed, 1: given, 2, 3: temperatures
    OvenNotWarm,           ///< keys: load; 0: needed from the room, 1: given
    OvenNotTurnedOn,       ///< keys: load
    OvenOutsideRange,      ///< keys: load; 0: set, 1: lowest, 2: highest accepted
    OvenOffDial,           ///< keys: load; 0: set, 1: the dial's step (as a count of degrees text)
    OvenWrongMode,         ///< keys: load; 0: set mode, 1: wanted mode
    OvenTooFewSlots,       ///< keys: load; 0: slots needed, 1: slots of the oven from there on
    DoorOpened,            ///< keys: shut-door load, the one that opens
    HandsBehindShutDoor,   ///< keys: load whose own hands fall inside its shut time
    WareTooSmall,          ///< keys: step; 0: width or ml, 1: needed
    WareWrongKind,         ///< keys: step; 0: kind, 1: wanted kind
    WareTooWide,           ///< keys: step; equipment: burner; 0: width, 1: widest
    BurnerTooWeak,         ///< keys: step; equipment: burner; 0: watts, 1: needed
    NotYetWashed,          ///< keys: before, after, the wash to add; equipment: ware; 0: it takes
    WashTooShort,          ///< keys: wash; 0: needed, 1: given
    PoolOver,              ///< keys: all then; equipment: pool; 0: wanted, 1: capacity
    HandsTwice,            ///< keys: the two; equipment: the cook
    TooFewHands,           ///< keys: step; 0: cooks placed, 1: needed
    CannotDo,              ///< keys: step; equipment: cook; 0: the ability
    PiecesDoNotAdd,        ///< keys: step; 0: shared out, 1: pieces
    WatchesTooMuch,        ///< keys: all then; equipment: cook; 0: watched, 1: limit
    WorksDuringTalk,       ///< keys: the talk, the other; equipment: the other's cook
    TooEarlyAfter,         ///< keys: from, to; 0: wait given, 1: least
    TooLateAfter,          ///< keys: from, to; 0: wait given, 1: most
    KeptTooLong,           ///< keys: made, used; 0: kept, 1: limit; 2: storage text key
    StoredTooLong,         ///< keys: used; 0: kept since done ahead, 1: limit, 2: step name
    AheadWithoutStorage,   ///< 0: step name
    AheadBeforeParts,      ///< 0: step name
    BeforeOpening,         ///< keys: step; 0: opens
    BeforeCooking,         ///< keys: step; 0: cooking may start
    PlatedTooEarly,        ///< keys: step; 0: waits, 1: the plate's limit
    AfterServingTooEarly,  ///< keys: step; 0: its serving
    NotFinished,           ///< keys: step; 0: everyone out
    // ---- late ----
    PlatingLate,  ///< keys: step; 0: by how much
    // ---- cautions ----
    OutOfTemperatureTooLong,  ///< keys: made, used; 0: how long, 1: limit; 2: source text key
    CoreBelowLimit,           ///< keys: step; 0: target, 1: limit, 2: food text key, 3: source key
    CoreNotStated,            ///< keys: step; 0: limit, 1: food text key, 2: source key
    Danger,                   ///< keys: step; 0: danger text key
    CrossContact,             ///< keys: raw, ready; equipment: the board
    AllergenContact,          ///< keys: with, without; equipment: the ware; 0: allergen key
    GuestAllergen,      ///< keys: step (or none); 0: allergen, 1: ingredient or step, 2: component
    DepthChanged,       ///< keys: step; 0: how deep the food lies, per cent of as written
    HandworkUnchanged,  ///< keys: steps; 0: covers as written, 1: covers served
    UnusualDuration,    ///< keys: step; 0: likely, 1: usual least, 2: usual most, 3: technique
    AtItsLimit          ///< keys: step; equipment; 0: value, 1: limit
};

using Figure = std::variant<Duration, Instant, Temperature, Length, std::int64_t, std::string>;

struct Finding {
    FindingCode code{};
    Severity severity = Severity::Collision;
    std::vector<PlacementKey> keys;
    EquipmentRef equipment;
    Interval interval;  ///< when; empty where time plays no part
    std::vector<Figure> figures;

    friend auto operator<=>(const Finding&, const Finding&) = default;
};

}  // namespace rangeline
