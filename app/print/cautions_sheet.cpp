#include "print/cautions_sheet.h"

#include <algorithm>
#include <map>

#include "check/out_clock.h"
#include "print/notes.h"
#include "print/print_text.h"
#include "print/text_sheet.h"
#include "safety/holding.h"
#include "safety/techniques.h"
#include "text/quantities.h"
#include "text/words.h"

namespace rangeline {
namespace {

using Rows = std::vector<std::vector<QString>>;

/// Keys of the safety tables, or the cook's own words, with the names of what they apply to.
struct Hazardous {
    std::map<std::string, QStringList> techniques;
    std::map<std::string, QStringList> dangers;
    std::map<std::string, QStringList> allergens;
};

void addOnce(std::map<std::string, QStringList>& to, const std::string& key,
             const std::string& name) {
    QStringList& names = to[key];
    if (!names.contains(q(name))) {
        names << q(name);
    }
}

void addStep(const Step& step, Hazardous& all) {
    if (!step.technique.empty()) {
        addOnce(all.techniques, step.technique, step.name);
        const Technique* technique = findTechnique(step.technique);
        if (technique != nullptr && !technique->danger.empty()) {
            addOnce(all.dangers, std::string(technique->danger), step.name);
        }
    }
    for (const std::string& danger : step.hazards.dangers) {
        addOnce(all.dangers, danger, step.name);
    }
}

Hazardous hazardsOf(const Lesson& lesson) {
    Hazardous all;
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            for (const Ingredient& it : component.ingredients) {
                for (const std::string& allergen : it.allergens) {
                    addOnce(
                        all.allergens, allergen,
                        Printed::tr("%1 (%2)").arg(q(it.name), q(component.name)).toStdString());
                }
            }
            for (const Step& step : component.steps) {
                addStep(step, all);
                for (const std::string& allergen : step.hazards.allergens) {
                    addOnce(all.allergens, allergen, step.name);
                }
            }
        }
    }
    return all;
}

void addTable(const QString& heading, const QString& left, const QString& right, const Rows& rows,
              TextFlow& flow) {
    if (!rows.empty()) {
        flow.heading(heading, 3);
        flow.table({{left, 40, FontRole::BodyStrong}, {right, 60}}, rows);
    }
}

QString usualRange(const std::string& key, const QLocale& locale) {
    const Technique* technique = findTechnique(key);
    return technique == nullptr ? QString()
                                : Printed::tr(", usually %1 to %2")
                                      .arg(durationText(technique->least, locale),
                                           durationText(technique->most, locale));
}

void addHazards(const TimelineInput& input, TextFlow& flow) {
    const Hazardous all = hazardsOf(input.text.lesson);
    Rows allergens;
    const auto& avoided = input.text.lesson.head.guestAllergens;
    for (const auto& [key, where] : all.allergens) {
        const bool asked = std::ranges::find(avoided, key) != avoided.end();
        const QString name = sentenceCase(allergenText(key));
        allergens.push_back(
            {asked ? Printed::tr("%1: a guest must not eat it").arg(name) : name, listText(where)});
    }
    addTable(Printed::tr("Allergens"), Printed::tr("Allergen"), Printed::tr("In"), allergens, flow);
    flow.paragraph(
        Printed::tr("Only what the lesson names is listed: read the labels of what you buy."));
    Rows dangers;
    for (const auto& [key, steps] : all.dangers) {
        dangers.push_back({sentenceCase(dangerText(key)), listText(steps)});
    }
    addTable(Printed::tr("Mind"), Printed::tr("What"), Printed::tr("At"), dangers, flow);
    Rows techniques;
    for (const auto& [key, steps] : all.techniques) {
        techniques.push_back(
            {sentenceCase(q(key)) + usualRange(key, input.text.locale), listText(steps)});
    }
    addTable(Printed::tr("Techniques"), Printed::tr("Technique"), Printed::tr("Steps"), techniques,
             flow);
}

/// How long each food that needs control is neither cold nor hot, in the order of time.
void addClocks(const TimelineInput& input, TextFlow& flow) {
    const Lesson& lesson = input.text.lesson;
    const Duration most = holdingLimits(lesson.head.profile).outIn(lesson.kitchen.room);
    std::vector<OutClock> clocks;
    for (int wait = 0; wait < input.index.count(Subject::Wait); ++wait) {
        if (const auto clock = outClock(input.index, wait)) {
            clocks.push_back(*clock);
        }
    }
    std::ranges::stable_sort(clocks, {}, [](const OutClock& clock) { return clock.out.begin; });
    const Clock times(input.text.lesson.head, input.text.locale);
    Rows rows;
    for (const OutClock& clock : clocks) {
        const bool within = clock.out.length() <= most;
        rows.push_back(
            {q(input.index.step(clock.made).name), times.span(clock.out),
             clock.toCold ? Printed::tr("put in the cold") : q(input.index.step(clock.until).name),
             durationText(clock.out.length(), input.text.locale),
             within ? Printed::tr("within the limit chosen")
                    : Printed::tr("past the limit chosen")});
    }
    if (rows.empty()) {
        return;
    }
    flow.heading(Printed::tr("Between the cold and the heat"), 3);
    flow.table({{Printed::tr("The food of"), 28, FontRole::BodyStrong},
                {Printed::tr("When"), 22},
                {Printed::tr("Until"), 22},
                {Printed::tr("How long"), 12},
                {Printed::tr("At most %1").arg(durationText(most, input.text.locale)), 16}},
               rows);
}

}  // namespace

QString cautionsTitle() {
    return Printed::tr("Techniques and cautions");
}

SheetPages makeCautions(const TimelineInput& input, const SheetSetup& setup) {
    TextSheet sheet(input, setup.layout, cautionsTitle());
    sheet.section(cautionsTitle(), [&](TextFlow& flow) {
        addHazards(input, flow);
        addClocks(input, flow);
        addCautions(input, flow);
    });
    return sheet.finish();
}

}  // namespace rangeline
