#include "cli/import_command.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QJsonArray>
#include <QTimeZone>

#include "cli/output.h"
#include "exchange/lesson_file.h"
#include "model/starting_kitchens.h"
#include "model/validate.h"
#include "recipe/recipe_import.h"
#include "recipe/recipe_lesson.h"
#include "text/fault_text.h"
#include "text/import_text.h"
#include "text/usual_units.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(ImportCommand)
};

Exit refuse(const QString& file, const QString& what) {
    complain(QStringLiteral("%1: %2").arg(file, what));
    return Exit::Unusable;
}

std::string pathOf(const QString& file) {
    return QFile::encodeName(file).toStdString();
}

/// The recipes of the file; none after saying why.
std::vector<ImportedRecipe> recipesOf(const QString& file) {
    const auto bytes = loadBytes(pathOf(file));
    auto read = bytes.ok() ? readRecipes(bytes.value())
                           : Result<std::vector<ImportedRecipe>, Fault>(bytes.error());
    if (!read.ok()) {
        refuse(file, sentence(read.error()));
        return {};
    }
    if (read.value().empty()) {
        refuse(file, Text::tr("no recipe is in it: what is read are recipes of schema.org, in a "
                              "web page that was saved or in a JSON-LD file"));
    }
    return std::move(read.value());
}

/// The kitchen asked for; none after saying why it cannot be had.
std::optional<Kitchen> kitchenOf(const Invocation& invocation) {
    if (!invocation.has("--kitchen")) {
        return startingKitchens().front().make();
    }
    const QString file = invocation.value("--kitchen");
    auto lesson = loadLesson(pathOf(file));
    if (!lesson.ok()) {
        refuse(file, sentence(lesson.error()));
        return std::nullopt;
    }
    return std::move(lesson.value().kitchen);
}

Lesson lessonFor(const std::vector<ImportedRecipe>& recipes, Kitchen kitchen, Units units) {
    std::vector<Dish> dishes;
    for (const ImportedRecipe& recipe : recipes) {
        dishes.push_back(recipe.dish);
    }
    const QDateTime tomorrow(QDate::currentDate().addDays(1), QTime(18, 0));
    return lessonOf(dishes, std::move(kitchen),
                    tomorrow.toString(QStringLiteral("yyyy-MM-ddTHH:mm")).toStdString(),
                    QTimeZone::systemTimeZoneId().toStdString(), units);
}

QJsonObject toMachine(const ImportedRecipe& recipe, Units units, const QLocale& locale) {
    QJsonArray remarks;
    for (const ImportRemark& remark : recipe.remarks) {
        remarks.append(sentence(remark, units, locale));
    }
    qint64 steps = 0;
    qint64 ingredients = 0;
    for (const Component& component : recipe.dish.components) {
        steps += static_cast<qint64>(component.steps.size());
        ingredients += static_cast<qint64>(component.ingredients.size());
    }
    return {{"name", QString::fromStdString(recipe.dish.name)},
            {"covers", recipe.dish.writtenFor},
            {"components", static_cast<qint64>(recipe.dish.components.size())},
            {"steps", steps},
            {"ingredients", ingredients},
            {"remarks", remarks}};
}

void tell(const ImportedRecipe& recipe, Units units, const QLocale& locale) {
    const QJsonObject known = toMachine(recipe, units, locale);
    say(Text::tr("%1, for %2: %3 ingredients, %4 steps.\n")
            .arg(known["name"].toString(), QString::number(recipe.dish.writtenFor),
                 QString::number(known["ingredients"].toInteger()),
                 QString::number(known["steps"].toInteger())));
    for (const ImportRemark& remark : recipe.remarks) {
        say(QStringLiteral("  %1\n").arg(sentence(remark, units, locale)));
    }
}

}  // namespace

Exit runImport(const Invocation& invocation) {
    if (!invocation.has("-o")) {
        complain(Text::tr("Where to? Name the lesson to write with -o OUT.json."));
        return Exit::Unusable;
    }
    Units units = usualUnits(invocation.locale);
    if (!readUnits(invocation, units)) {
        return Exit::Unusable;
    }
    const std::vector<ImportedRecipe> recipes = recipesOf(invocation.file);
    auto kitchen = recipes.empty() ? std::nullopt : kitchenOf(invocation);
    if (!kitchen) {
        return Exit::Unusable;
    }
    const Lesson lesson = lessonFor(recipes, *std::move(kitchen), units);
    if (const auto faults = validate(lesson, 1); !faults.empty()) {
        return refuse(invocation.file, sentence(faults.front()));
    }
    const QString out = invocation.value("-o");
    if (const auto fault = saveLesson(pathOf(out), lesson)) {
        return refuse(out, sentence(*fault));
    }
    if (invocation.has("--json")) {
        QJsonArray all;
        for (const ImportedRecipe& recipe : recipes) {
            all.append(toMachine(recipe, units, invocation.locale));
        }
        say(QJsonObject{{"file", out}, {"recipes", all}});
        return Exit::Fine;
    }
    for (const ImportedRecipe& recipe : recipes) {
        tell(recipe, units, invocation.locale);
    }
    say(Text::tr("The lesson was written to %1.\n").arg(out));
    return Exit::Fine;
}

}  // namespace rangeline
