#pragma once

#include <initializer_list>
#include <string>

#include "base/units.h"
#include "exchange/csv.h"
#include "text/quantities.h"

namespace rangeline {

/// The heads of a table's columns, each marked for translation in the context "Export".
CsvRow headings(std::initializer_list<const char*> titles);

/// A day and a time of the clock as spreadsheets read it: 2025-04-05 18:30:00.
std::string timeCell(const Clock& clock, Instant instant);

std::string minutesCell(Duration length);

}  // namespace rangeline
