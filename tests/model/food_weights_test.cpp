#include "model/food_weights.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <string>

#include "model/quantity_text.h"
#include "support/run_program.h"

namespace rangeline {
namespace {

double grams(const char* name, const char* amount, const char* cut = "", const char* note = "") {
    Ingredient ingredient;
    ingredient.name = name;
    ingredient.cut = cut;
    ingredient.note = note;
    const auto weight = weightOf(ingredient, parseAmount(amount).value());
    return weight ? weight->high : -1;
}

// USDA National Nutrient Database SR26: a cup of chopped onion 160 g, sliced 115 g, a medium one
// 110 g; a clove of garlic 3 g; a tbsp of butter 14.2 g; a tsp of salt 6 g; a large egg 50 g.
TEST(FoodWeights, FollowTheTablesOfTheUsda) {
    EXPECT_DOUBLE_EQ(grams("yellow onions", "1/2 cup", "finely chopped"), 80);
    EXPECT_DOUBLE_EQ(grams("Onion", "2 cups", "thinly sliced"), 230);
    EXPECT_DOUBLE_EQ(grams("onions", "3", "", "medium"), 330);
    EXPECT_DOUBLE_EQ(grams("garlic", "4 cloves"), 12);
    EXPECT_DOUBLE_EQ(grams("unsalted butter", "1/4 cup"), 4 * 14.2);
    EXPECT_DOUBLE_EQ(grams("fine salt", "1 1/2 tsp"), 9);
    EXPECT_DOUBLE_EQ(grams("eggs", "2", "", "large"), 100);
}

TEST(FoodWeights, AreNotGuessed) {
    EXPECT_EQ(grams("green onions", "1 cup", "chopped"), -1) << "another food";
    EXPECT_EQ(grams("almond flour", "1 cup"), -1);
    EXPECT_EQ(grams("onion", "1 cup"), -1) << "how it is cut decides";
    EXPECT_EQ(grams("onions", "3", "", "small"), -1) << "the table has medium ones";
    EXPECT_EQ(grams("butter", "4 oz"), -1) << "a weight already";
    EXPECT_EQ(grams("kosher salt", "1 tsp"), -1) << "coarser than table salt";
}

/// Against GNU Units (Debian's package units), which knows densities of its own.
TEST(FoodWeights, AgreeWithAnotherProgram) {
    if (std::system("command -v units >/dev/null 2>&1") != 0) {
        GTEST_SKIP() << "missing program: units";
    }
    struct Known {
        const char* name;
        const char* amount;
        const char* question;
        double within;  ///< of its weight: the sources are not the same for all
    };
    const Known known[] = {
        {"flour", "1 cup", "uscup flour_spooned", 1e-6}, {"sugar", "250 ml", "250 ml sugar", 1e-6},
        {"honey", "2 tbsp", "2 ustbsp honey", 1e-6},     {"milk", "1 dl", "100 ml milk", 1e-6},
        {"butter", "1 cup", "uscup butter", 0.01},       {"salt", "1 tsp", "ustsp salt", 1e-6}};
    for (const Known& each : known) {
        const std::string command = std::string("units -t '") + each.question + "' g";
        const double weight = std::strtod(test::outputOf(command).c_str(), nullptr);
        ASSERT_GT(weight, 0) << command;
        EXPECT_NEAR(grams(each.name, each.amount), weight, each.within * weight) << each.name;
    }
}

}  // namespace
}  // namespace rangeline
