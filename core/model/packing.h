#pragma once
// How many pieces lie beside each other in one layer.

#include "base/units.h"
#include "model/kitchen.h"

namespace rangeline {

/// Round pieces on a round floor. The least floors for 1 to 20 pieces are the known best packings
/// of circles in a circle (a standard table; its figures from memory); more pieces are never said
/// to fit. Requires a piece that is wider than nothing.
int piecesOnRoundFloor(Length floor, Length piece, Length gap);

/// Round or square pieces in rows on a floor with corners, as cooks lay them.
int piecesOnSheet(Length width, Length depth, Length piece, Length gap);

/// What lies flat in the ware: its floor is narrower than its rim by 2 inches where it is round and
/// by 1 1/2 where it has corners (common practice, no source).
int piecesIn(const Ware& ware, Length piece, Length gap);

/// A ware so wide holds one piece, round or not.
Length widthForOne(Length piece);

}  // namespace rangeline
