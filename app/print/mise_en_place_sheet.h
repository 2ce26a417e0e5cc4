#pragma once

#include "print/sheets.h"

namespace rangeline {

QString miseEnPlaceTitle();
/// What to lay out for each component: amounts for the covers served, cuts, a box to tick.
SheetPages makeMiseEnPlace(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
