#include "recipe/ingredient_line.h"

#include <gmock/gmock.h>

#include "base/random.h"
#include "model/quantity_text.h"
#include "support/random_lesson.h"

namespace rangeline {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

struct Line {
    const char* text;
    const char* amount;  ///< as quantity_text.h writes it; empty: none
    const char* name;
    const char* cut;
    const char* note;
};

std::ostream& operator<<(std::ostream& out, const Line& it) {
    return out << it.text;
}

class IngredientLines : public testing::TestWithParam<Line> {};

TEST_P(IngredientLines, AreReadWhole) {
    const Line& expected = GetParam();
    const IngredientLine read = readIngredientLine(expected.text);
    const Ingredient& it = read.ingredient;
    EXPECT_EQ(it.amount ? toText(*it.amount) : std::string(), expected.amount);
    EXPECT_EQ(it.name, expected.name);
    EXPECT_EQ(it.cut, expected.cut);
    EXPECT_EQ(it.note, expected.note);
    EXPECT_THAT(read.unread, IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(
    Us, IngredientLines,
    testing::Values(
        Line{"2 medium carrots, peeled, in 1/4-inch dice (about 8 oz)", "2", "carrots",
             "in 1/4-inch dice", "medium, peeled, about 8 oz"},
        Line{"1 1/2 cups heavy cream", "1 1/2 cup", "heavy cream", "", ""},
        Line{"1½ tsp. fine salt", "1 1/2 tsp", "fine salt", "", ""},
        Line{"1-1/2 Tablespoons butter", "1 1/2 tbsp", "butter", "", ""},
        Line{"2 T olive oil, plus more for the pan", "2 tbsp", "olive oil", "",
             "plus more for the pan"},
        Line{"1 t salt", "1 tsp", "salt", "", ""},
        Line{"a scant 1/4 cup sugar", "1/4 cup", "sugar", "", "scant"},
        Line{"3 to 4 cloves garlic, thinly sliced", "3-4 cloves", "garlic", "thinly sliced", ""},
        Line{"2–3 large cloves of garlic", "2-3 cloves", "garlic", "", "large"},
        Line{"1 cup plus 2 tbsp flour", "1 1/8 cup", "flour", "", ""},
        Line{"8 fl. oz. dry cider", "8 fl oz", "dry cider", "", ""},
        Line{"1 (14-oz) can plum tomatoes, crushed", "1 can", "plum tomatoes", "crushed", "14-oz"},
        Line{"2 tbsp finely chopped parsley", "2 tbsp", "parsley", "finely chopped", ""},
        Line{"1 lb ground beef", "1 lb", "ground beef", "", ""},
        Line{"freshly ground black pepper", "", "black pepper", "freshly ground", ""},
        Line{"Salt to taste", "", "Salt", "", "to taste"},
        Line{"a pinch of saffron", "1 pinch", "saffron", "", ""},
        Line{"half a lemon, in wedges", "1/2", "lemon", "in wedges", ""},
        Line{"2 lb. boneless, skinless chicken thighs", "2 lb", "skinless chicken thighs", "",
             "boneless"},
        Line{"zest and juice of 1 lemon", "1", "lemon", "", "zest and juice"},
        Line{"Juice of 2 limes", "2", "limes", "", "Juice"},
        Line{"1 dozen oysters", "12", "oysters", "", ""},
        Line{"half a dozen eggs", "6", "eggs", "", ""},
        Line{"½ a red cabbage", "1/2", "red cabbage", "", ""},
        Line{"Pinch of salt", "1 pinch", "salt", "", ""},
        Line{"1 cup packed brown sugar", "1 cup", "brown sugar", "", "packed"},
        Line{"1 cup loosely packed basil leaves", "1 cup", "basil leaves", "", "loosely packed"},
        Line{"3-pound chicken", "3 lb", "chicken", "", ""},
        Line{"One 15-ounce can chickpeas, rinsed", "1 can", "chickpeas", "", "15 oz each, rinsed"},
        Line{"15-ounce can chickpeas", "15 oz", "chickpeas", "", "can"},
        Line{"2 8-ounce pork chops", "2", "pork chops", "", "8 oz each"},
        Line{"1 1/2-pound pork loin", "1 1/2 lb", "pork loin", "", ""},
        Line{"1-inch piece of ginger, grated", "1 piece", "ginger", "grated", "1-inch"},
        Line{"8 oz. package cream cheese", "8 oz", "cream cheese", "", "package"},
        Line{"One egg", "1", "egg", "", ""}, Line{"a dozen eggs", "12", "eggs", "", ""},
        Line{"about 2 pounds squash; peeled and cubed", "2 lb", "squash", "peeled and cubed",
             "about"}));

INSTANTIATE_TEST_SUITE_P(
    Metric, IngredientLines,
    testing::Values(Line{"200g flour", "200 g", "flour", "", ""},
                    Line{"1.5 l vegetable stock", "1 1/2 l", "vegetable stock", "", ""},
                    Line{"250 mL milk, warm", "250 ml", "milk", "", "warm"},
                    Line{"200 g / 7 oz leeks, halved lengthwise", "200 g", "leeks",
                         "halved lengthwise", "7 oz"},
                    Line{"2 x 400 g tins chickpeas", "2 tins", "chickpeas", "", "400 g each"},
                    Line{"1.5 kg/3 lb 5 oz leg of lamb", "1 1/2 kg", "leg of lamb", "",
                         "3 lb 5 oz"},
                    Line{"2 dsp yoghurt", "2 dsp", "yoghurt", "", ""},
                    Line{"400g tin of tomatoes", "400 g", "tomatoes", "", "tin"},
                    Line{"2 cm piece ginger", "1 piece", "ginger", "", "2 cm"},
                    Line{"0.75 kg potatoes", "3/4 kg", "potatoes", "", ""},
                    Line{"• 3 dl cream", "3 dl", "cream", "", ""},
                    Line{"½ kg crème fraîche", "1/2 kg", "crème fraîche", "", ""}));

TEST(IngredientLine, KeepsWhatItDoesNotUnderstandAndSaysSo) {
    const IngredientLine numbers = readIngredientLine("2 cups 00 flour");
    EXPECT_EQ(numbers.ingredient.name, "00 flour");
    EXPECT_THAT(numbers.unread, ElementsAre("00"));
    const IngredientLine open = readIngredientLine("3 leeks (white part");
    EXPECT_THAT(open.unread, ElementsAre("(white part"));
    EXPECT_NE(open.ingredient.name.find("(white part"), std::string::npos);
    const IngredientLine comma = readIngredientLine("1,5 l stock");
    EXPECT_FALSE(comma.ingredient.amount);
    EXPECT_THAT(comma.unread, ElementsAre("1,5"));
    EXPECT_THAT(readIngredientLine("2 cups").unread, ElementsAre("2 cups"));
    EXPECT_THAT(readIngredientLine("For the sauce:").unread, ElementsAre("For the sauce:"));
    EXPECT_THAT(readIngredientLine("3-2 eggs").unread, ElementsAre("3-2"));
}

TEST(IngredientLine, OfNothingIsNothing) {
    const IngredientLine read = readIngredientLine("  \t ");
    EXPECT_EQ(read.ingredient.name, "");
    EXPECT_FALSE(read.ingredient.amount);
}

TEST(IngredientLine, OfAnyBytesIsReadAndLosesNoLetter) {
    const std::uint64_t seed = test::seedOr(1);
    SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed));
    Random random(seed);
    const std::string_view pieces[] = {"1", "/",    "2",    " ",     "cup",  "(",   ")",
                                       ",", "½",    "-",    "of",    "\xFF", "a",   "x",
                                       ".", "plus", "tbsp", "leeks", ";",    "\x01"};
    for (int trial = 0; trial < 20'000; ++trial) {
        std::string line;
        for (std::int64_t i = random.between(0, 12); i > 0; --i) {
            line += pieces[static_cast<std::size_t>(random.between(0, 19))];
        }
        const IngredientLine read = readIngredientLine(line);
        const bool hasLeeks = line.find("leeks") != std::string::npos;
        const Ingredient& it = read.ingredient;
        const std::string all = it.name + '|' + it.cut + '|' + it.note + '|' +
                                (it.amount ? it.amount->unit : std::string());
        ASSERT_TRUE(!hasLeeks || all.find("leeks") != std::string::npos) << line << ": " << all;
    }
}

}  // namespace
}  // namespace rangeline
