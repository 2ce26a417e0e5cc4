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
    EXPECT_EQ(told({8}, "tbsp"), "8 tbsp") << "eight spoons are still spoons";
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
