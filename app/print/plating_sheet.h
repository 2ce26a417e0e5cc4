#pragma once

#include "print/sheets.h"

namespace rangeline {

QString platingTitle();
/// Dish by dish: what one cover gets, in which order and when; what is left to settle.
SheetPages makePlating(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
