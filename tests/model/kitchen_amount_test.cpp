#include "model/kitchen_amount.h"

#include <gtest/gtest.h>

#include <string>

#include "model/quantity_text.h"

namespace rangeline {
namespace {

std::string told(Rational value, const char* unit) {
    const KitchenAmount amount = toldAsMeasured({value, value, unit});
    const char* words[] = {"", "scant ", "generous ", "less than "};
    return words[static_cast<int>(amount.nearness)] + toText(amount.amount);
}

// Worked by hand from 1 cup = 16 tbsp = 48 tsp and 1 lb = 16 oz (NIST Handbook 44).
TEST(KitchenAmount, GoesIntoASmallerMeasureWhereTheWrittenOneIsTooCoarse) {
    EXPECT_EQ(told({1, 16}, "cup"), "1 tbsp");
    EXPECT_EQ(told({1, 32}, "lb"), "1/2 oz");
    EXPECT_EQ(told({1, 100}, "kg"), "10 g");
}

TEST(KitchenAmount, GoesIntoALargerMeasureWhereThereWouldBeManySpoons) {
    EXPECT_EQ(told({16}, "tbsp"), "1 cup");
    EXPECT_EQ(told({24}, "oz"), "1 1/2 lb");
    EXPECT_EQ(told({7}, "tbsp"), "7 tbsp") << "seven spoons are no part that a cup is measured in";
}

TEST(KitchenAmount, TellsSpoonsThatMakeUpALargerMeasureAsThat) {
    EXPECT_EQ(told({8}, "tbsp"), "1/2 cup");
    EXPECT_EQ(told({16, 3}, "tbsp"), "1/3 cup");
    EXPECT_EQ(told({3}, "tsp"), "1 tbsp");
    EXPECT_EQ(told({3}, "tbsp"), "3 tbsp") << "less than a quarter cup stays in spoons";
    EXPECT_EQ(told({4}, "cups"), "4 cups") << "a cup is no spoon";
    EXPECT_EQ(told({8}, "oz"), "8 oz");
}

TEST(KitchenAmount, KnowsThirdsOfACup) {
    EXPECT_EQ(told({2, 3}, "cup"), "2/3 cup");
}

// A quarter cup less a twentieth is 19/80 cup; more by a twentieth is 21/80 cup.
TEST(KitchenAmount, IsScantOrGenerousOnlyBeyondATwentieth) {
    EXPECT_EQ(told({19, 80}, "cup"), "1/4 cup");
    EXPECT_EQ(told({1899, 8000}, "cup"), "scant 1/4 cup");
    EXPECT_EQ(told({21, 80}, "cup"), "1/4 cup");
    EXPECT_EQ(told({11, 80}, "tsp"), "generous 1/8 tsp") << "11/10 of it";
}

TEST(KitchenAmount, BelowTheSmallestSpoonIsLessThanIt) {
    EXPECT_EQ(told({17, 160}, "tsp"), "scant 1/8 tsp") << "just 17/20 of it";
    EXPECT_EQ(told({1, 10}, "tsp"), "less than 1/8 tsp") << "16/20 of it";
}

TEST(KitchenAmount, OfWhatIsWeighedOrCountedTakesNoWord) {
    EXPECT_EQ(told({5, 2}, "g"), "3 g");
    EXPECT_EQ(told({5, 8}, ""), "1/2");
}

}  // namespace
}  // namespace rangeline
