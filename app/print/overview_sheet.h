#pragma once

#include "print/sheets.h"

namespace rangeline {

QString overviewTitle();
/// The lesson on one page: the day's times, the components from first step to plate, the crew, the
/// ovens, what decides plating. What has no room is left out, the last first.
SheetPages makeOverview(const TimelineInput& input, const SheetSetup& setup);

}  // namespace rangeline
