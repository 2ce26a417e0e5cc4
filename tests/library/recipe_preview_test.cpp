#include "library/recipe_preview.h"

#include <gtest/gtest.h>

#include <QApplication>

#include "support/focus_names.h"

namespace rangeline::test {
namespace {

ImportedRecipe recipeNamed(const std::string& name) {
    const auto read = readRecipes(R"({"@type": "Recipe", "name": ")" + name +
                                  R"(", "recipeYield": 6, "recipeIngredient": ["3 leeks, sliced"],
        "recipeInstructions": ["Bake the leeks at 400°F for 20 minutes.", "Season."]})");
    EXPECT_TRUE(read.ok() && read.value().size() == 1);
    return read.value().front();
}

TEST(RecipePreview, ShowsTheChosenRecipeAndWhatToLookAt) {
    const QLocale english(QLocale::English, QLocale::UnitedStates);
    RecipePreview preview({recipeNamed("Leek bake"), recipeNamed("Leek pie")}, english,
                          Units::UsCustomary);
    preview.show();
    QApplication::processEvents();
    expectNames(preview);
    const auto* parts = findNamed<QTreeWidget>(preview, "Ingredients and steps");
    ASSERT_EQ(parts->topLevelItemCount(), 2);
    const QTreeWidgetItem* leeks = parts->topLevelItem(0)->child(0);
    EXPECT_EQ(leeks->text(0), "leeks");
    EXPECT_EQ(leeks->text(1), "3");
    EXPECT_EQ(leeks->text(2), "sliced");
    const QTreeWidgetItem* bake = parts->topLevelItem(1)->child(0);
    EXPECT_EQ(bake->text(1), "20 min");
    EXPECT_EQ(bake->text(2), "400 °F");
    const auto* remarks = findNamed<QListWidget>(preview, "To look at");
    ASSERT_EQ(remarks->count(), 1);
    EXPECT_TRUE(remarks->item(0)->text().contains("Season"));
    findNamed<QComboBox>(preview, "Recipe")->setCurrentIndex(1);
    EXPECT_EQ(preview.chosen().dish.name, "Leek pie");
}

TEST(RecipePreview, TellsTheHeatInTheUnitsOfTheUserNotOfTheLocale) {
    const QLocale english(QLocale::English, QLocale::UnitedStates);
    RecipePreview preview({recipeNamed("Leek bake")}, english, Units::Metric);
    const auto* parts = findNamed<QTreeWidget>(preview, "Ingredients and steps");
    EXPECT_EQ(parts->topLevelItem(1)->child(0)->text(2), "204.4 °C");
}

}  // namespace
}  // namespace rangeline::test
