#pragma once
// Tables for spreadsheets: the plan, each cook's work, each thing's uses. Times are local to the
// lesson ("2027-10-09 17:10:00"), lengths are minutes; both are written alike in every language.

#include "export/exports.h"

namespace rangeline {

QString planTableTitle();
Result<std::string, Fault> makePlanTable(const TimelineInput& input, const ExportSetup& setup);

QString cooksTableTitle();
Result<std::string, Fault> makeCooksTable(const TimelineInput& input, const ExportSetup& setup);

QString equipmentTableTitle();
Result<std::string, Fault> makeEquipmentTable(const TimelineInput& input, const ExportSetup& setup);

}  // namespace rangeline
