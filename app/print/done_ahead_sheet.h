#pragma once

#include "print/sheets.h"

namespace rangeline {

QString doneAheadTitle();
/// What is made before the lesson: when at the latest and earliest, how it is stored and where,
/// what it needs when it is taken out; then the twins that are swapped in, with what goes into
/// them.
SheetPages makeDoneAhead(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
