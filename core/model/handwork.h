#pragma once
// Handwork: what takes longer the more there is of it.

#include "model/dish.h"

namespace rangeline {

/// Whether the step is one spell of hands without heat, such as slicing or plating, whose time is
/// stated for all covers at once. Whisking, kneading and what else has a technique take about as
/// long for more (common practice, no source).
bool isHandworkOfAllCovers(const Step& step);

/// Times it by the piece, in proportion; by the cover where it is not counted in pieces. Requires
/// handwork of all covers, as written for so many.
void timeByPiece(Step& step, int writtenFor);

}  // namespace rangeline
