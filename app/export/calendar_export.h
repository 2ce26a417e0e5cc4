#pragma once

#include "export/exports.h"

namespace rangeline {

QString calendarTitle();
/// An event for each placement. It reminds when the step begins and, where the cook is free to
/// leave it, again when it ends; once for each dish's serving too.
Result<std::string, Fault> makeCalendar(const TimelineInput& input, const ExportSetup& setup);

}  // namespace rangeline
