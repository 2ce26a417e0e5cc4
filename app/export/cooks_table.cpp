#include <map>

#include "analysis/cook_stretches.h"
#include "export/export_text.h"
#include "export/table_cells.h"
#include "export/table_export.h"
#include "text/plan_text.h"

namespace rangeline {
namespace {

std::map<PlacementKey, PlanRow> planByKey(const TimelineInput& input) {
    std::map<PlacementKey, PlanRow> plan;
    for (PlanRow& row : planRows(input.index, input.text)) {
        const PlacementKey key = row.key;
        plan.emplace(key, std::move(row));
    }
    return plan;
}

std::vector<CsvRow> cooksTable(const TimelineInput& input, const ExportSetup& setup) {
    const UseIndex& index = input.index;
    const Clock clock(input.text);
    const Names names(input.text);
    const auto text = [](const QString& from) { return from.toStdString(); };
    std::vector<CsvRow> rows{headings(
        {QT_TRANSLATE_NOOP("Export", "Cook"), QT_TRANSLATE_NOOP("Export", "Start"),
         QT_TRANSLATE_NOOP("Export", "End"), QT_TRANSLATE_NOOP("Export", "Minutes of hands"),
         QT_TRANSLATE_NOOP("Export", "Minutes of watching"), QT_TRANSLATE_NOOP("Export", "What"),
         QT_TRANSLATE_NOOP("Export", "Where"), QT_TRANSLATE_NOOP("Export", "Until")})};
    const std::map<PlacementKey, PlanRow> plan = planByKey(input);
    for (int cook = 0; cook < index.stations().cooks.size(); ++cook) {
        if (setup.cook && index.cookOf(cook).id != *setup.cook) {
            continue;
        }
        for (const CookStretch& it : cookStretches(index, cook)) {
            const PlanRow& row = plan.at(index.keyOf(it.node));
            rows.push_back({text(names.equipment({EquipmentSort::Cook, cook})),
                            timeCell(clock, it.interval.begin), timeCell(clock, it.interval.end),
                            minutesCell(it.hands), minutesCell(it.watching), text(row.step),
                            text(row.where), text(row.cue)});
        }
    }
    return rows;
}

}  // namespace

QString cooksTableTitle() {
    return Exported::tr("Each cook's work as a table");
}

Result<std::string, Fault> makeCooksTable(const TimelineInput& input, const ExportSetup& setup) {
    return writeCsv(cooksTable(input, setup));
}

}  // namespace rangeline
