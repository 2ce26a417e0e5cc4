#include "exchange/recipe_file.h"

#include <gmock/gmock.h>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using testing::HasSubstr;

Lesson supper() {
    LessonBuilder builder;
    Step& step = builder.step("sear", {hands(2_min), away(8_min)});
    step.name = "Sear the leeks";
    step.cue = "until brown";
    step.heat = BurnerHeat{"medium-high", {}, 1, false};
    Serving& serving = builder.lesson.servings.front();
    serving.dish.name = "Leeks";
    serving.dish.writtenFor = 4;
    serving.covers = 8;
    serving.dish.components.front().name = "Charred leeks";
    serving.dish.components.front().ingredients = {
        {"salt", Amount{{1, 2}, {1, 2}, "tsp"}, "", "fine", {}},
        {"leeks", Amount{{4}, {4}, ""}, "halved", "", {}},
        {"pepper", std::nullopt, "", "", {}}};
    return builder.lesson;
}

TEST(RecipeFile, HasAmountsForTheCoversServed) {
    const std::string text = writeRecipes(supper());
    EXPECT_THAT(text, HasSubstr("\"recipeYield\": \"8 servings\""));
    EXPECT_THAT(text, HasSubstr("\"1 tsp salt (fine)\""));
    EXPECT_THAT(text, HasSubstr("\"8 leeks, halved\""));
    EXPECT_THAT(text, HasSubstr("\"pepper\""));
}

TEST(RecipeFile, TellsHandsFromTheRest) {
    const std::string text = writeRecipes(supper());
    EXPECT_THAT(text, HasSubstr("\"prepTime\": \"PT2M\""));
    EXPECT_THAT(text, HasSubstr("\"cookTime\": \"PT8M\""));
}

TEST(RecipeFile, SaysHowHotAndUntilWhat) {
    EXPECT_THAT(writeRecipes(supper()),
                HasSubstr("\"Sear the leeks, medium-high heat, until brown (10 min).\""));
}

TEST(RecipeFile, OfSeveralDishesIsAGraph) {
    Lesson lesson = supper();
    lesson.servings.push_back(lesson.servings.front());
    lesson.servings.back().dish.name = "More leeks";
    const std::string text = writeRecipes(lesson);
    EXPECT_THAT(text, HasSubstr("\"@graph\""));
    EXPECT_THAT(text, HasSubstr("\"More leeks\""));
}

}  // namespace
}  // namespace rangeline::test
