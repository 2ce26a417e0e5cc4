#include "text/covers_text.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <algorithm>

#include "analysis/at.h"
#include "text/finding_text.h"
#include "text/gathered_findings.h"
#include "text/machine_form.h"
#include "text/quantities.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(CoversChange)
};

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

const Component& componentOf(const AmountChange& change, const Lesson& lesson) {
    return at(at(lesson.servings, change.serving).dish.components, change.component);
}

const Ingredient& ingredientOf(const AmountChange& change, const Lesson& lesson) {
    return at(componentOf(change, lesson).ingredients, change.ingredient);
}

QStringList coversLines(const CoversChange& change, const TextContext& after) {
    QStringList lines;
    for (const CoversOfDish& dish : change.covers) {
        lines << Text::tr("%1: %2 covers instead of %3")
                     .arg(q(at(after.lesson.servings, dish.serving).dish.name),
                          after.locale.toString(dish.after), after.locale.toString(dish.before));
    }
    return lines;
}

QString amountLine(const AmountChange& change, const TextContext& after) {
    const Ingredient& ingredient = ingredientOf(change, after.lesson);
    const QString line = Text::tr("%1, %2: %3 instead of %4")
                             .arg(q(componentOf(change, after.lesson).name), q(ingredient.name),
                                  measuredText(change.after, after.locale),
                                  measuredText(change.before, after.locale));
    return ingredient.scaling == Scaling::Seasoning ? Text::tr("%1, then to taste").arg(line)
                                                    : line;
}

QString loadsText(const StepLoads& loads, const QLocale& locale) {
    const QString time = durationText(loads.time, locale);
    return loads.count == 1
               ? time
               : Text::tr("%1 loads, %2 in all").arg(locale.toString(loads.count), time);
}

QString loadsLine(const LoadsChange& change, const TextContext& after) {
    return Text::tr("“%1”: %2 instead of %3")
        .arg(q(stepOf(after.lesson, at(after.expanded.tasks, change.task)).name),
             loadsText(change.after, after.locale), loadsText(change.before, after.locale));
}

/// Times on the heat are the cook's to judge; said where there is more in the pans.
QStringList loadsLines(const CoversChange& change, const TextContext& after) {
    QStringList lines;
    for (const LoadsChange& each : change.loads) {
        lines << loadsLine(each, after);
    }
    if (std::ranges::any_of(change.covers,
                            [](const CoversOfDish& dish) { return dish.after > dish.before; })) {
        lines << Text::tr(
            "Otherwise times stay as they are written. A fuller pan heats and reduces more slowly: "
            "go by what each step says of when it is done.");
    }
    return lines;
}

QStringList findingLines(const CoversChange& change, const TextContext& after) {
    QStringList lines;
    for (const GatheredFinding& each : gathered(change.arisen)) {
        lines << QStringLiteral("%1: %2").arg(severityText(each.shown.severity),
                                              sentence(each.shown, after));
    }
    if (lines.isEmpty()) {
        lines << Text::tr("Nothing new.");
    }
    if (change.settled > 0) {
        lines << (change.settled == 1
                      ? Text::tr("One thing that was found before is no longer so.")
                      : Text::tr("%1 things that were found before are no longer so.")
                            .arg(after.locale.toString(change.settled)));
    }
    return lines;
}

QJsonObject toMachine(const StepLoads& loads) {
    return {{"loads", loads.count}, {"seconds", static_cast<qint64>(loads.time.inSeconds())}};
}

}  // namespace

std::vector<CoversSection> coversSections(const CoversChange& change, const TextContext& after) {
    QStringList amounts;
    for (const AmountChange& each : change.amounts) {
        amounts << amountLine(each, after);
    }
    std::vector<CoversSection> sections = {
        {Text::tr("Covers"), coversLines(change, after)},
        {Text::tr("Amounts"), amounts},
        {Text::tr("Loads and times"), loadsLines(change, after)},
        {Text::tr("Collisions and cautions, before arranging anew"), findingLines(change, after)}};
    std::erase_if(sections, [](const CoversSection& section) { return section.lines.isEmpty(); });
    return sections;
}

QJsonObject toMachine(const CoversChange& change, const TextContext& after) {
    QJsonArray covers;
    for (const CoversOfDish& dish : change.covers) {
        covers.append(QJsonObject{{"dish", q(at(after.lesson.servings, dish.serving).dish.name)},
                                  {"before", dish.before},
                                  {"after", dish.after}});
    }
    QJsonArray amounts;
    for (const AmountChange& each : change.amounts) {
        amounts.append(QJsonObject{{"component", q(componentOf(each, after.lesson).name)},
                                   {"ingredient", q(ingredientOf(each, after.lesson).name)},
                                   {"before", measuredText(each.before, after.locale)},
                                   {"after", measuredText(each.after, after.locale)}});
    }
    QJsonArray loads;
    for (const LoadsChange& each : change.loads) {
        loads.append(QJsonObject{{"step", q(at(after.expanded.tasks, each.task).key.step.text)},
                                 {"before", toMachine(each.before)},
                                 {"after", toMachine(each.after)}});
    }
    return {{"covers", covers},
            {"amounts", amounts},
            {"loads", loads},
            {"new_findings", toMachine(change.arisen, after)},
            {"settled_findings", change.settled}};
}

}  // namespace rangeline
