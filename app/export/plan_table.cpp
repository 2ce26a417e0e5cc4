#include "export/export_text.h"
#include "export/table_cells.h"
#include "export/table_export.h"
#include "export/works_at.h"
#include "text/plan_text.h"

namespace rangeline {
namespace {

std::vector<CsvRow> planTable(const TimelineInput& input, const ExportSetup& setup) {
    const UseIndex& index = input.index;
    const Clock clock(input.text);
    const auto text = [](const QString& from) { return from.toStdString(); };
    std::vector<CsvRow> rows{headings(
        {QT_TRANSLATE_NOOP("Export", "Start"), QT_TRANSLATE_NOOP("Export", "End"),
         QT_TRANSLATE_NOOP("Export", "Minutes"), QT_TRANSLATE_NOOP("Export", "Minutes to plating"),
         QT_TRANSLATE_NOOP("Export", "What"), QT_TRANSLATE_NOOP("Export", "Where"),
         QT_TRANSLATE_NOOP("Export", "Who"), QT_TRANSLATE_NOOP("Export", "Until"),
         QT_TRANSLATE_NOOP("Export", "Pinned")})};
    for (const PlanRow& row : planRows(index, input.text)) {
        const int node = index.nodeOf(row.key);
        if (setup.cook && !worksAt(index, node, *setup.cook)) {
            continue;
        }
        const bool pinned = index.placed(node).placement->pinned;
        rows.push_back({timeCell(clock, row.interval.begin), timeCell(clock, row.interval.end),
                        minutesCell(row.interval.length()),
                        minutesCell(Instant::serving() - row.interval.begin), text(row.step),
                        text(row.where), text(row.who), text(row.cue),
                        pinned ? text(Exported::tr("pinned")) : std::string()});
    }
    return rows;
}

}  // namespace

QString planTableTitle() {
    return Exported::tr("The plan as a table");
}

Result<std::string, Fault> makePlanTable(const TimelineInput& input, const ExportSetup& setup) {
    return writeCsv(planTable(input, setup));
}

}  // namespace rangeline
