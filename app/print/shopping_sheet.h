#pragma once

#include "print/sheets.h"

namespace rangeline {

QString shoppingTitle();
/// What to buy: every ingredient once, its amounts added up over dishes and groups.
SheetPages makeShopping(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
