#include "print/plating_sheet.h"

#include <algorithm>

#include "analysis/at.h"
#include "analysis/use_index.h"
#include "print/print_text.h"
#include "print/text_sheet.h"
#include "text/names.h"
#include "text/plan_text.h"
#include "timeline/place_text.h"

namespace rangeline {
namespace {

using Rows = std::vector<std::vector<QString>>;

/// The steps of one serving that end on the plate, in order of start.
Rows platingRows(const TimelineInput& input, int serving) {
    Rows rows;
    int number = 0;
    for (const PlanRow& row : planRows(input.index, input.text)) {
        const int node = input.index.nodeOf(row.key);
        if (!input.index.isTask(node) || !input.index.step(node).plates ||
            at(input.index.expanded().tasks, node).serving != serving) {
            continue;
        }
        const QString what =
            row.cue.isEmpty() ? row.step : Printed::tr("%1: %2").arg(row.step, row.cue);
        rows.push_back({QString::number(++number), row.clock, what, row.who, row.length});
    }
    return rows;
}

/// What the lesson does not know, to be settled and written down.
void addToSettle(TextFlow& flow) {
    flow.heading(Printed::tr("To settle"), 3);
    Rows rows;
    for (const char* question : {QT_TRANSLATE_NOOP("Print", "Plates warmed or cold"),
                                 QT_TRANSLATE_NOOP("Print", "Where the plates stand"),
                                 QT_TRANSLATE_NOOP("Print", "Who carries"),
                                 QT_TRANSLATE_NOOP("Print", "Who calls the plates away")}) {
        rows.push_back({Printed::tr(question), {}});
    }
    flow.table({{{}, 30}, {{}, 70, FontRole::Body, CellKind::Blank}}, rows);
}

/// An empty plate to draw the order into, with the hours of a clock as plates are described.
void addSketch(const TextMeasure& measure, TextFlow& flow) {
    constexpr double diameter = 170;
    constexpr double rim = 22;
    flow.heading(Printed::tr("Sketch of the plate"), 3);
    const double label = measure.lineHeight(FontRole::Small);
    flow.figure(diameter + 2 * label, [&](Picture& page, const QRectF& room) {
        const QRectF plate(room.left() + label + measure.width(FontRole::Small, Printed::tr("9")),
                           room.top() + label, diameter, diameter);
        for (const double inset : {0.0, rim}) {
            page.push_back({RoundShape{plate.adjusted(inset, inset, -inset, -inset), Colour::Paper,
                                       Colour::Outline, inset == 0 ? 1.2 : 0.6, Stroke::Solid},
                            Part::Page});
        }
        const auto hour = [&](const QString& text, const QPointF& centre) {
            addText(measure, page, Part::Page, -1,
                    {text, {}, FontRole::Small, Colour::InkSoft, Align::Centre},
                    QRectF(centre.x() - label, centre.y() - label / 2, 2 * label, label));
        };
        const QPointF middle = plate.center();
        hour(Printed::tr("12"), {middle.x(), plate.top() - label / 2});
        hour(Printed::tr("3"), {plate.right() + label * 0.6, middle.y()});
        hour(Printed::tr("6"), {middle.x(), plate.bottom() + label / 2});
        hour(Printed::tr("9"), {plate.left() - label * 0.6, middle.y()});
    });
}

void addSimplerForms(const Dish& dish, TextFlow& flow) {
    Rows rows;
    for (const Component& component : dish.components) {
        if (!component.simpler) {
            continue;
        }
        QStringList without;
        for (const Step& step : component.steps) {
            if (std::ranges::count(component.simpler->without, step.id) > 0) {
                without << q(step.name);
            }
        }
        rows.push_back({q(component.name), q(component.simpler->how), listText(without)});
    }
    if (!rows.empty()) {
        flow.heading(Printed::tr("If time runs short"), 3);
        flow.table({{{}, 26, FontRole::BodyStrong},
                    {Printed::tr("Simpler"), 38},
                    {Printed::tr("Without"), 36}},
                   rows);
    }
}

void addServing(const TimelineInput& input, int number, const TextMeasure& measure,
                TextFlow& flow) {
    const Lesson& lesson = input.text.lesson;
    const Serving& serving = at(lesson.servings, number);
    const QLocale& locale = input.text.locale;
    const Clock clock(input.text);
    flow.paragraph(
        Printed::tr("%1: %2 plates, on the table at %3")
            .arg(q(serving.dish.name), locale.toString(serving.covers * lesson.head.groups.count),
                 clock.at(Instant::serving() + serving.offset)),
        FontRole::BodyStrong);
    if (!serving.dish.perCover.empty()) {
        flow.paragraph(Printed::tr("Each cover gets %1.").arg(q(serving.dish.perCover)));
    }
    flow.paragraph(Printed::tr("A finished plate may wait %1.")
                       .arg(durationText(serving.dish.platesHold, locale)));
    const Rows rows = platingRows(input, number);
    if (!rows.empty()) {
        flow.heading(Printed::tr("Order on the plate"), 3);
        flow.table({{{}, 4, FontRole::BodyStrong},
                    {Printed::tr("Start by"), 14},
                    {Printed::tr("What"), 48},
                    {Printed::tr("Who"), 20},
                    {Printed::tr("Takes"), 14}},
                   rows);
    }
    addSimplerForms(serving.dish, flow);
    addSketch(measure, flow);
    addToSettle(flow);
}

}  // namespace

QString platingTitle() {
    return Printed::tr("Plating");
}

SheetPages makePlating(const TimelineInput& input, const SheetSetup& setup) {
    TextSheet sheet(input, setup.layout, platingTitle());
    for (int serving = 0; serving < static_cast<int>(input.text.lesson.servings.size());
         ++serving) {
        sheet.section(platingTitle(),
                      [&](TextFlow& flow) { addServing(input, serving, sheet.measure(), flow); });
    }
    return sheet.finish();
}

}  // namespace rangeline
