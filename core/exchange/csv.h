#pragma once
// Tables as spreadsheets read them: comma-separated values (RFC 4180).

#include <string>
#include <vector>

namespace rangeline {

using CsvRow = std::vector<std::string>;

/// UTF-8 with a byte order mark, which spreadsheets need to read it as such; rows end in CR LF.
/// A cell that a spreadsheet would take for a formula (it begins with = + - @, a tab or a carriage
/// return and is no plain number) gets an apostrophe before it, so that it stays text.
std::string writeCsv(const std::vector<CsvRow>& rows);

}  // namespace rangeline
