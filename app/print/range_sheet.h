#pragma once

#include "print/sheets.h"

namespace rangeline {

QString rangeTitle();
/// The range from above and the ovens from the front, at the moments when most changes there.
SheetPages makeRange(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
