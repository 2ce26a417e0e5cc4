#pragma once

#include "print/sheets.h"

namespace rangeline {

QString cautionsTitle();
/// Techniques, what to mind at which step, allergens.
SheetPages makeCautions(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
