#pragma once
// Who does what when: a list for all, then one for each cook with only his own hands and watching.

#include "print/sheets.h"

namespace rangeline {

QString orderOfWorkTitle();
SheetPages makeOrderOfWork(const TimelineInput& input, const PageLayout& layout);

QString orderToFillTitle();
/// With columns to write in when each step began and ended, and a note.
SheetPages makeOrderToFill(const TimelineInput& input, const PageLayout& layout);

}  // namespace rangeline
