#include "print/notes.h"

#include <algorithm>
#include <map>

#include "analysis/at.h"
#include "analysis/use_index.h"
#include "print/print_text.h"
#include "print/step_cells.h"
#include "text/finding_text.h"
#include "text/plan_text.h"
#include "text/plating_text.h"
#include "text/words.h"

namespace rangeline {
namespace {

constexpr double indent = 12;

const TimelineItem* itemOf(const TimelineModel& model, const PlacementKey& key) {
    const auto item = std::ranges::find(model.items, key, &TimelineItem::key);
    return item == model.items.end() ? nullptr : &*item;
}

QString numberText(const TimelineModel& model, const PlacementKey& key) {
    const TimelineItem* item = itemOf(model, key);
    return item == nullptr ? QString() : QString::number(item->number);
}

/// The numbers of the steps that a danger is in.
using Dangers = std::map<std::string, std::vector<int>>;

Dangers dangersOf(const TimelineInput& input, const TimelineModel& model) {
    Dangers dangers;
    for (const Finding& finding : input.findings) {
        if (finding.code != FindingCode::Danger || finding.keys.empty()) {
            continue;
        }
        if (const TimelineItem* item = itemOf(model, finding.keys.front())) {
            dangers[std::get<std::string>(at(finding.figures, 0))].push_back(item->number);
        }
    }
    return dangers;
}

QString numbersText(std::vector<int> numbers) {
    std::ranges::sort(numbers);
    QStringList texts;
    for (const int number : numbers) {
        texts << QString::number(number);
    }
    return listText(texts);
}

void addFindings(const TimelineInput& input, Severity severity, const QString& heading,
                 TextFlow& flow) {
    bool headed = false;
    for (const Finding& finding : input.findings) {
        if (finding.severity != severity || finding.code == FindingCode::Danger) {
            continue;
        }
        if (!headed) {
            flow.heading(heading);
            headed = true;
        }
        flow.paragraph(sentence(finding, input.text), FontRole::Body, indent);
    }
}

void addDangers(const TimelineInput& input, const TimelineModel& model, TextFlow& flow) {
    const Dangers dangers = dangersOf(input, model);
    if (dangers.empty()) {
        return;
    }
    flow.heading(Printed::tr("Mind"));
    for (const auto& [key, numbers] : dangers) {
        flow.paragraph(Printed::tr("%1 (%2)").arg(dangerText(key), numbersText(numbers)),
                       FontRole::Body, indent);
    }
}

void addDeciding(const TimelineInput& input, const TimelineModel& model, TextFlow& flow) {
    flow.heading(Printed::tr("What decides plating"));
    for (const int spare : input.analysis.path) {
        const Spare& it = at(input.analysis.spares, spare);
        flow.paragraph(Printed::tr("%1  %2").arg(numberText(model, it.key),
                                                 platingLine(it, input.analysis, input.text)),
                       FontRole::Body, indent);
    }
    if (input.analysis.path.empty()) {
        flow.paragraph(Printed::tr("Nothing does: every step has minutes to spare."),
                       FontRole::Body, indent);
    }
}

QString spareCell(const TimelineItem& item, const QLocale& locale) {
    if (item.decides) {
        return Printed::tr("decides plating");
    }
    return item.pinned ? Printed::tr("pinned") : durationText(item.spare, locale);
}

std::vector<QString> cells(const TimelineInput& input, const TimelineItem& item,
                           const PlanRow& row) {
    return {QString::number(item.number),
            row.clock,
            row.toPlating,
            whatCell(row, item.collides),
            row.length,
            whereCell(input.index, row),
            row.who,
            spareCell(item, input.text.locale)};
}

}  // namespace

void addRunningOrder(const TimelineInput& input, const TimelineModel& model, TextFlow& flow) {
    const std::vector<TableColumn> columns = {{Printed::tr("No."), 4, FontRole::BodyStrong},
                                              {Printed::tr("Start"), 8.5},
                                              {Printed::tr("To plating"), 10.5},
                                              {Printed::tr("What"), 33},
                                              {Printed::tr("Takes"), 9},
                                              {Printed::tr("Where"), 25},
                                              {Printed::tr("Who"), 13},
                                              {Printed::tr("To spare"), 11.5}};
    const std::vector<PlanRow> plan = planRows(input.index, input.text);
    std::vector<std::vector<QString>> rows;
    for (const NumberedRow& each : numberedRows(model, plan)) {
        rows.push_back(cells(input, each.item, each.row));
    }
    flow.table(columns, rows);
}

void addKey(const TimelineInput& input, const TimelineModel& model, TextFlow& flow) {
    const std::vector<TableColumn> columns = {{Printed::tr("No."), 8, FontRole::BlockStrong},
                                              {Printed::tr("Start"), 16, FontRole::Block},
                                              {Printed::tr("What"), 76, FontRole::Block}};
    const std::vector<PlanRow> plan = planRows(input.index, input.text);
    std::vector<std::vector<QString>> rows;
    for (const NumberedRow& each : numberedRows(model, plan)) {
        rows.push_back({QString::number(each.item.number), each.row.clock, each.row.step});
    }
    flow.table(columns, rows);
}

void addNotes(const TimelineInput& input, const TimelineModel& model, TextFlow& flow) {
    addDeciding(input, model, flow);
    addFindings(input, Severity::Collision, Printed::tr("Collisions"), flow);
    addFindings(input, Severity::Late, Printed::tr("Late"), flow);
    addDangers(input, model, flow);
    addCautions(input, flow);
}

void addCautions(const TimelineInput& input, TextFlow& flow) {
    addFindings(input, Severity::Caution, Printed::tr("Cautions"), flow);
    const std::vector<Finding> all(input.findings.begin(), input.findings.end());
    if (needsSafetyNote(all)) {
        const Head& head = input.text.lesson.head;
        flow.space(indent / 2);
        flow.paragraph(safetyNote(head.profile, input.text.lesson.kitchen.room, input.text.units,
                                  input.text.locale));
    }
}

QString guidanceNote(SafetyProfile profile) {
    return profile == SafetyProfile::Household
               ? Printed::tr(
                     "Home guidance. If you serve the public, follow your local food code and "
                     "health department.")
               : Printed::tr("Follow your local food code and health department.");
}

}  // namespace rangeline
