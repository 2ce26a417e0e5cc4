#include "exchange/recipe_file.h"

#include "exchange/json_out.h"
#include "model/loads.h"
#include "model/quantity_text.h"
#include "model/scaled_amount.h"

namespace rangeline {
namespace {

/// ISO 8601: "PT1H20M"; "PT0S" for nothing.
std::string isoDuration(Duration length) {
    const std::int64_t seconds = length.inSeconds();
    std::string text = "PT";
    const auto add = [&](std::int64_t value, char unit) {
        if (value != 0) {
            text += std::to_string(value) + unit;
        }
    };
    add(seconds / 3600, 'H');
    add(seconds / 60 % 60, 'M');
    add(seconds % 60, 'S');
    return text == "PT" ? "PT0S" : text;
}

std::string withNote(std::string text, const char* before, const std::string& note) {
    return note.empty() ? text : std::move(text) + before + note;
}

/// "1 1/2 tsp salt, fine dice (from the farm)"
std::string lineOf(const Ingredient& ingredient, const Serving& serving) {
    std::string line =
        ingredient.amount ? toText(scaledAmount(ingredient, serving)) + ' ' : std::string();
    line += ingredient.name;
    line = withNote(std::move(line), ", ", ingredient.cut);
    return ingredient.note.empty() ? line : line + " (" + ingredient.note + ')';
}

/// "425 °F" or "medium-high heat"; empty where there is none.
std::string heatText(const Step& step, Units units) {
    if (const auto* oven = std::get_if<OvenHeat>(&step.heat)) {
        return "oven at " + toText(oven->lowest, units);
    }
    const auto* burner = std::get_if<BurnerHeat>(&step.heat);
    return burner == nullptr || burner->level.empty() ? std::string() : burner->level + " heat";
}

/// The step as it takes for so many covers: a time for each piece is one for all of them.
Step served(Step step, int covers) {
    if (step.timePer == TimePer::Piece) {
        const std::int64_t pieces = piecesFor(step, covers);
        step.time = {step.time.shortest * pieces, step.time.likely * pieces,
                     step.time.longest * pieces};
    }
    return step;
}

Json stepOf(const Step& step, Units units) {
    std::string text = withNote(step.name, ", ", heatText(step, units));
    text = withNote(std::move(text), ", ", step.cue);
    if (step.time.likely > Duration()) {
        text += " (" + toText(step.time.likely) + ')';
    }
    return Json(Json::Object{
        {"@type", Json("HowToStep")}, {"name", Json(step.name)}, {"text", Json(text + '.')}});
}

Json::Array instructionsOf(const Serving& serving, Units units) {
    Json::Array sections;
    for (const Component& component : serving.dish.components) {
        if (component.steps.empty()) {
            continue;
        }
        Json::Array steps;
        for (const Step& step : component.steps) {
            steps.push_back(stepOf(served(step, serving.covers), units));
        }
        sections.push_back(Json(Json::Object{{"@type", Json("HowToSection")},
                                             {"name", Json(component.name)},
                                             {"itemListElement", Json(std::move(steps))}}));
    }
    return sections;
}

/// Hands on a step at its likely time.
Duration handsOf(const Step& step) {
    Duration fixed;
    Duration hands;
    for (std::size_t i = 0; i < step.segments.size(); ++i) {
        if (i == step.stretchingSegment()) {
            continue;
        }
        fixed += step.segments[i].length;
        hands +=
            step.segments[i].attention == Attention::Hands ? step.segments[i].length : Duration();
    }
    const bool stretches = !step.segments.empty() &&
                           step.segments[step.stretchingSegment()].attention == Attention::Hands;
    return stretches ? hands + step.time.likely - fixed : hands;
}

Json::Object recipeOf(const Serving& serving, Units units) {
    Json::Array ingredients;
    Duration hands;
    Duration rest;
    for (const Component& component : serving.dish.components) {
        for (const Ingredient& ingredient : component.ingredients) {
            ingredients.push_back(Json(lineOf(ingredient, serving)));
        }
        for (const Step& each : component.steps) {
            const Step step = served(each, serving.covers);
            hands += handsOf(step);
            rest += step.time.likely - handsOf(step);
        }
    }
    Json::Object recipe{{"@type", Json("Recipe")},
                        {"name", Json(serving.dish.name)},
                        {"recipeYield", Json(std::to_string(serving.covers) + " servings")},
                        {"prepTime", Json(isoDuration(hands))},
                        {"cookTime", Json(isoDuration(rest))}};
    if (!serving.dish.perCover.empty()) {
        recipe.emplace_back("description", Json(serving.dish.perCover));
    }
    recipe.emplace_back("recipeIngredient", Json(std::move(ingredients)));
    recipe.emplace_back("recipeInstructions", Json(instructionsOf(serving, units)));
    return recipe;
}

}  // namespace

std::string writeRecipes(const Lesson& lesson) {
    Json::Object file{{"@context", Json("https://schema.org")}};
    if (lesson.servings.size() == 1) {
        for (auto& field : recipeOf(lesson.servings.front(), lesson.head.units)) {
            file.push_back(std::move(field));
        }
        return Json(std::move(file)).document();
    }
    Json::Array recipes;
    for (const Serving& serving : lesson.servings) {
        recipes.push_back(Json(recipeOf(serving, lesson.head.units)));
    }
    file.emplace_back("@graph", Json(std::move(recipes)));
    return Json(std::move(file)).document();
}

}  // namespace rangeline
