#pragma once

#include "print/sheets.h"

namespace rangeline {

QString equipmentTitle();
/// How many of each thing are in use at once, what is used again and when it must be clean.
SheetPages makeEquipment(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
