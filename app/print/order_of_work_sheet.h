#pragma once
// Who does what when: a list for all and for each group, then one for each cook with only his own
// hands and watching; or only one cook's.

#include "print/sheets.h"

namespace rangeline {

QString orderOfWorkTitle();
SheetPages makeOrderOfWork(const TimelineInput& input, const SheetSetup& setup);

QString orderToFillTitle();
/// With columns to write in when each step began and ended, and a note.
SheetPages makeOrderToFill(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
