#pragma once
// An exact amount as a cook measures it out: in a measure that suits it, rounded to a part that the
// measures of a kitchen have, and said honestly where rounding is more than the eye forgives.

#include <cstdint>

#include "model/dish.h"

namespace rangeline {

/// How the exact amount lies to the one that is told. A spoon or cup filled by eye is off by about
/// a twentieth (common practice, no source), so less than that is not said.
enum class Nearness : std::uint8_t {
    Close,     ///< within a twentieth; or weighed, counted or a range, where no word is used
    Scant,     ///< below by more than a twentieth, at most by three
    Generous,  ///< above by more than a twentieth, at most by three
    LessThan   ///< below by more than three twentieths: the kitchen has no smaller measure
};

struct KitchenAmount {
    Amount amount;
    Nearness nearness = Nearness::Close;

    friend bool operator==(const KitchenAmount&, const KitchenAmount&) = default;
};

/// Spoons that make up a part of a cup, or of a larger spoon, exactly are told as that. Else in the
/// measure it is written in where that is within a twentieth and not more than eight of a
/// measure of which a larger one is at hand; else in the largest measure of its family that is;
/// else in the one that is nearest. Never nothing. Amounts in other units keep theirs.
KitchenAmount toldAsMeasured(const Amount& exact);

}  // namespace rangeline
