#include "fuzz/readers.h"

#include <array>
#include <cstdio>
#include <cstdlib>

#include "book/judge.h"
#include "check/check.h"
#include "exchange/lesson_file.h"
#include "exchange/part_text.h"
#include "live_store/entry_text.h"
#include "model/expand.h"
#include "model/quantity_text.h"
#include "model/validate.h"
#include "recipe/ingredient_line.h"
#include "recipe/instruction.h"
#include "recipe/iso_duration.h"
#include "recipe/recipe_import.h"

namespace rangeline::test {
namespace {

void mustHold(bool holds, const char* what) {
    if (!holds) {
        std::fprintf(stderr, "does not hold: %s\n", what);
        std::abort();
    }
}

/// A lesson that is read is valid, can be expanded and checked, and is read back as it was.
void readLessons(std::string_view bytes) {
    const auto lesson = readLesson(bytes);
    if (!lesson.ok()) {
        return;
    }
    mustHold(validate(lesson.value()).empty(), "a lesson that is read is valid");
    const Expanded expanded = expand(lesson.value());
    checkLesson(lesson.value(), expanded);
    const auto again = readLesson(writeLesson(lesson.value()));
    mustHold(again.ok() && again.value() == lesson.value(), "a lesson is read back as it was");
}

/// The dish of a recipe is valid by itself. Whether a kitchen has an oven for it is another matter.
void readPages(std::string_view bytes) {
    const auto recipes = readRecipes(bytes);
    if (!recipes.ok()) {
        return;
    }
    for (const ImportedRecipe& recipe : recipes.value()) {
        mustHold(!judgeDish(recipe.dish), "the dish of a recipe is valid");
    }
}

void readIngredients(std::string_view bytes) {
    readIngredientLine(bytes);
}

void readInstructions(std::string_view bytes) {
    for (const std::string& sentence : sentencesOf(bytes)) {
        readInstruction(sentence, Temperature::fahrenheit(350));
    }
}

/// What is read is written and read back as it was.
template <class Value, class Write>
void readBack(const Result<Value, Fault>& read, Result<Value, Fault> (*parse)(std::string_view),
              Write write) {
    if (read.ok()) {
        const auto again = parse(write(read.value()));
        mustHold(again.ok() && again.value() == read.value(), "a quantity is read back as it was");
    }
}

void readQuantities(std::string_view bytes) {
    readBack(parseDuration(bytes), parseDuration, [](Duration value) { return toText(value); });
    readBack(parseLength(bytes), parseLength,
             [](Length value) { return toText(value, Units::Metric); });
    readBack(parseTemperature(bytes), parseTemperature,
             [](Temperature value) { return toText(value, Units::Metric); });
    readBack(parsePower(bytes), parsePower, [](const Power& value) { return toText(value); });
    readBack(parseVolume(bytes), parseVolume, volumeText);
    readIsoDuration(bytes);
}

/// What a book or a file of a service stores.
void readStored(std::string_view bytes) {
    static_cast<void>(readPart<Kitchen>(bytes));
    static_cast<void>(readPart<Dish>(bytes));
    static_cast<void>(readPart<Choices>(bytes));
    static_cast<void>(readPart<PlacementPart>(bytes));
    static_cast<void>(readPart<EditsPart>(bytes));
    const QByteArray text(bytes.data(), static_cast<qsizetype>(bytes.size()));
    live::readHead(text);
    live::readEntry(text);
}

constexpr std::array all = {
    Reader{"lessons", readLessons},         Reader{"pages", readPages},
    Reader{"ingredients", readIngredients}, Reader{"instructions", readInstructions},
    Reader{"quantities", readQuantities},   Reader{"stored", readStored},
};

}  // namespace

std::span<const Reader> readers() {
    return all;
}

}  // namespace rangeline::test
