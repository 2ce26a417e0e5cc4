#pragma once
// The same answers as JSON, for programs. Keys are stable, units stand in the key names, times are
// seconds from the main serving instant and ISO 8601; sentences are for showing to people.

#include <QJsonArray>
#include <QJsonObject>
#include <vector>

#include "analysis/critical_path.h"
#include "arrange/arrange.h"
#include "check/finding.h"
#include "model/fault.h"
#include "text/names.h"
#include "text/plan_text.h"

namespace rangeline {

QJsonObject toMachine(const Fault& fault);
QJsonObject toMachine(const PlacementKey& key);
QJsonObject toMachine(const Finding& finding, const TextContext& context);
QJsonArray toMachine(const std::vector<Finding>& findings, const TextContext& context);
/// The plan, in order of start.
QJsonArray toMachine(const std::vector<PlanRow>& rows, const TextContext& context);
/// What decides plating, and the minutes to spare of everything.
QJsonObject toMachine(const PlatingAnalysis& analysis, const TextContext& context);
/// Status, bound and statistics, without the placements.
QJsonObject toMachine(const ArrangeResult& result, const Head& head, const QLocale& locale);

}  // namespace rangeline
