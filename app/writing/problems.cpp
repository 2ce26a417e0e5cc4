#include "writing/problems.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

#include "model/validate_alone.h"
#include "text/names.h"
#include "text/written_fault.h"
#include "writing/dish_changes.h"
#include "writing/ties.h"
#include "writing/unusual_times.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Problems)
};

/// The number behind a key of the place: 2 in "components[2]".
std::optional<std::size_t> numberIn(const QString& place, const char* key) {
    const QRegularExpression pattern(QStringLiteral("%1\\[(\\d+)\\]").arg(QLatin1String(key)));
    const auto match = pattern.match(place);
    return match.hasMatch() ? std::optional<std::size_t>(match.captured(1).toULongLong())
                            : std::nullopt;
}

QString placed(const std::string& where, const QString& what) {
    return where.empty() ? Text::tr("%1.").arg(sentenceCase(what))
                         : Text::tr("“%1”: %2.").arg(QString::fromStdString(where), what);
}

/// What comes after "steps[2].", or after the dish.
std::string fieldIn(const QString& place, const Fault& fault) {
    if (fault.code == FaultCode::CycleInSteps) {
        return "circle";
    }
    static const QRegularExpression before(QStringLiteral(
        "^servings\\[0\\]\\.dish\\.?(components\\[\\d+\\]\\.?)?(steps\\[\\d+\\]\\.?)?"));
    std::string field = QString(place).remove(before).toStdString();
    if (fault.code == FaultCode::MissingKey && !fault.figures.empty()) {
        field += (field.empty() ? "" : ".") + fault.figures.front();
    }
    return field;
}

/// The name of what the fault is at; sets component and step.
std::string locate(const Dish& dish, const QString& place, Problem& problem) {
    if (const auto link = numberIn(place, "links"); link && *link < dish.links.size()) {
        const Step* step = findStep(dish, dish.links[*link].to.step);
        problem.step = dish.links[*link].to.step;
        return step == nullptr ? std::string() : step->name;
    }
    const auto component = numberIn(place, "components");
    if (!component || *component >= dish.components.size()) {
        return {};
    }
    const Component& at = dish.components[*component];
    problem.component = component;
    if (const auto step = numberIn(place, "steps"); step && *step < at.steps.size()) {
        problem.step = at.steps[*step].id;
        return at.steps[*step].name;
    }
    const auto ingredient = numberIn(place, "ingredients");
    return ingredient && *ingredient < at.ingredients.size() ? at.ingredients[*ingredient].name
                                                             : at.name;
}

/// True too of a dish with no step yet, which is asked for its steps first.
bool isPlated(const Dish& dish) {
    std::size_t steps = 0;
    for (const Component& component : dish.components) {
        if (std::ranges::any_of(component.steps, &Step::plates)) {
            return true;
        }
        steps += component.steps.size();
    }
    return steps == 0;
}

void addMissing(std::vector<Problem>& problems, const Dish& dish) {
    if (dish.name.empty()) {
        problems.push_back({Text::tr("Give the dish a name."), {}, {}, "name"});
    }
    const auto hasSteps = [](const Component& part) { return !part.steps.empty(); };
    if (std::ranges::none_of(dish.components, hasSteps)) {
        problems.push_back(
            {Text::tr("Type the steps, one line each: what is done first comes first.")});
    }
}

/// What is said to keep hot, and waits elsewhere as long as it likes.
bool keepsHotInVain(const Keeping& after) {
    const bool waitsHot =
        after.storage == Storage::HotOnBurner || after.storage == Storage::HotInOven;
    return after.hot && !waitsHot && !after.limit();
}

void addKeptHotInVain(std::vector<Problem>& problems, const Dish& dish) {
    for (std::size_t i = 0; i < dish.components.size(); ++i) {
        for (const Step& step : dish.components[i].steps) {
            if (keepsHotInVain(step.after)) {
                problems.push_back({Text::tr("“%1” keeps hot only so long, but does not wait hot: "
                                             "say how it waits.")
                                        .arg(QString::fromStdString(step.name)),
                                    i, step.id, "after", true});
            }
        }
    }
}

/// The thing of the kitchen that the place names.
std::string thingAt(const Kitchen& kitchen, const QString& place) {
    std::string name;
    const auto look = [&](const char* key, const auto& things) {
        const auto number = numberIn(place, key);
        name = number && *number < things.size() ? things[*number].name : name;
    };
    look("burners", kitchen.burners);
    look("ovens", kitchen.ovens);
    look("wares", kitchen.wares);
    look("pools", kitchen.pools);
    look("cooks", kitchen.cooks);
    return name;
}

}  // namespace

std::vector<Problem> problemsOf(const Dish& dish, const OwnTerms& terms, const QLocale& locale) {
    std::vector<Problem> problems;
    addMissing(problems, dish);
    const StepNames names = stepNames(dish);
    const auto nameOf = [&](const std::string& id) {
        return QString::fromStdString(names.nameOf({id}));
    };
    for (const Fault& fault : validateDish(dish)) {
        const QString place = QString::fromStdString(fault.place);
        Problem problem;
        const std::string where = locate(dish, place, problem);
        problem.text = placed(where, writtenSentence(fault, nameOf));
        problem.field = fieldIn(place, fault);
        problems.push_back(std::move(problem));
    }
    if (problems.empty() && !isPlated(dish)) {
        problems.push_back({Text::tr("Nothing ends on the plate yet: type “Plate ...” as the last "
                                     "step, or tick “ends on the plate” at it."),
                            {},
                            {},
                            "",
                            true});
    }
    addKeptHotInVain(problems, dish);
    for (const UnusualTime& unusual : unusualTimes(dish, terms, locale)) {
        problems.push_back(
            {unusual.text, placeOf(dish, unusual.step)->component, unusual.step, "time", true});
    }
    return problems;
}

std::vector<Problem> problemsOf(const Kitchen& kitchen) {
    std::vector<Problem> problems;
    if (kitchen.name.empty()) {
        problems.push_back({Text::tr("Give the kitchen a name."), {}, {}, "name"});
    }
    if (kitchen.cooks.empty()) {
        problems.push_back(
            {Text::tr("Somebody must cook: one more under Cooks."), {}, {}, "cooks"});
    }
    for (const Fault& fault : validateKitchenAlone(kitchen)) {
        const QString place = QString::fromStdString(fault.place);
        const QString said = writtenSentence(fault, [](const std::string&) { return QString(); });
        problems.push_back({placed(thingAt(kitchen, place), said),
                            {},
                            {},
                            QString(place).remove(QStringLiteral("kitchen.")).toStdString()});
    }
    return problems;
}

bool mayBeKept(const std::vector<Problem>& problems) {
    return std::ranges::all_of(problems, &Problem::caution);
}

}  // namespace rangeline
