#pragma once
// Why input was refused: a code, the place inside the file and the figures. app/text makes the
// sentence.

#include <cstdint>
#include <string>
#include <vector>

namespace rangeline {

enum class FaultCode : std::uint8_t {
    // reading
    CannotOpen,   ///< 0: the system's reason
    CannotWrite,  ///< 0: the system's reason
    EmptyFile,
    TooLarge,  ///< 0: size in bytes, 1: limit in bytes
    NotJson,   ///< 0: line, 1: column, 2: the parser's reason
    TooDeep,   ///< 0: limit
    NotALesson,
    WrongVersion,  ///< 0: found, 1: known
    UnknownKey,    ///< 0: key, 1: nearest known key or empty
    DuplicateKey,  ///< 0: key
    MissingKey,    ///< 0: key
    WrongType,     ///< 0: what was expected
    BadText,       ///< 0: what is wrong with the text
    BadNumber,     ///< 0: found, 1: what was expected
    BadUnit,       ///< 0: found, 1: units that are known here
    BadChoice,     ///< 0: found, 1: the choices
    TooMany,       ///< 0: count, 1: limit
    // meaning
    DuplicateId,       ///< 0: id
    UnknownReference,  ///< 0: id, 1: what it should name
    OutOfRange,        ///< 0: found, 1: lowest, 2: highest
    AboveOven,         ///< 0: found, 1: the oven's highest
    BelowOven,         ///< 0: found, 1: the oven's lowest
    DurationOrder,     ///< shortest, likely, longest do not rise; 0..2 the three
    SegmentsTooLong,   ///< 0: sum of fixed segments, 1: shortest duration
    LinkOrder,         ///< least above most; 0, 1 the two
    CycleInSteps,      ///< 0: the steps, joined by " > "
    CarriesOnUnlike,   ///< 0: the step carried on from, 1: what is unlike
    NeedsVessel,       ///< a burner step without any vessel that goes on a burner
    Contradiction      ///< 0: one field, 1: the other
};

struct Fault {
    FaultCode code{};
    std::string place;  ///< "servings[0].dish.components[2].steps[0].oven"; empty: the whole file
    std::vector<std::string> figures;

    friend bool operator==(const Fault&, const Fault&) = default;
};

}  // namespace rangeline
