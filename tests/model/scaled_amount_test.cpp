#include "model/scaled_amount.h"

#include <gtest/gtest.h>

#include "model/measures.h"

namespace rangeline {
namespace {

Serving servingOf(int covers, int writtenFor) {
    Serving serving;
    serving.covers = covers;
    serving.dish.writtenFor = writtenFor;
    return serving;
}

Ingredient ingredientOf(Rational amount, std::string unit) {
    Ingredient ingredient;
    ingredient.amount = Amount{amount, amount, std::move(unit)};
    return ingredient;
}

Rational scaled(Rational amount, const char* unit, int covers, int writtenFor, int times = 1) {
    return scaledAmount(ingredientOf(amount, unit), servingOf(covers, writtenFor), times).low;
}

TEST(ScaledAmount, HalfTheCoversTakeHalf) {
    EXPECT_EQ(scaled({3, 2}, "tsp", 4, 8), Rational(3, 4));
    EXPECT_EQ(scaled({4}, "lb", 4, 8), Rational(2));
}

TEST(ScaledAmount, IsRoundedToWhatCanBeMeasured) {
    EXPECT_EQ(scaled({1}, "tsp", 3, 8), Rational(3, 8));
    EXPECT_EQ(scaled({450}, "g", 5, 8), Rational(281)) << "281.25 g";
    EXPECT_EQ(scaled({8}, "", 3, 8), Rational(3));
    EXPECT_EQ(scaled({1}, "", 5, 8), Rational(1, 2)) << "5/8 of an egg";
}

TEST(ScaledAmount, IsNeverRoundedToNothing) {
    EXPECT_EQ(scaled({1, 8}, "tsp", 1, 24), Rational(1, 8));
}

TEST(ScaledAmount, StaysAsWrittenForTheCoversItIsWrittenFor) {
    EXPECT_EQ(scaled({1, 3}, "cup", 8, 8), Rational(1, 3));
}

TEST(ScaledAmount, OfFixedThingsOnlyCountsTheGroups) {
    Ingredient leaf = ingredientOf({1}, "");
    leaf.scaling = Scaling::Fixed;
    EXPECT_EQ(scaledAmount(leaf, servingOf(24, 8)).low, Rational(1));
    EXPECT_EQ(scaledAmount(leaf, servingOf(24, 8), 4).low, Rational(4));
}

TEST(ScaledAmount, ScalesBothEndsOfARange) {
    Ingredient stock;
    stock.amount = Amount{{2}, {3}, "cups"};
    const Amount amount = scaledAmount(stock, servingOf(16, 8));
    EXPECT_EQ(amount.low, Rational(4));
    EXPECT_EQ(amount.high, Rational(6));
}

/// 32 oz of which 78 % can be used are 41.03 oz to buy, 3 lb at 95 % of 3.16 (open textbooks of
/// kitchen mathematics: as purchased = edible portion / yield, rounded up).
TEST(AmountToBuy, IsMoreWhereAPartIsTrimmedOff) {
    Ingredient squash = ingredientOf({32}, "oz");
    squash.usablePercent = 78;
    EXPECT_EQ(amountToBuy(squash, servingOf(8, 8)).low, Rational(165, 4)) << "41 1/4";
    Ingredient greens = ingredientOf({3}, "lb");
    greens.usablePercent = 95;
    EXPECT_EQ(amountToBuy(greens, servingOf(8, 8)).low, Rational(13, 4)) << "3.16 up to eighths";
    EXPECT_EQ(scaledAmount(squash, servingOf(8, 8)).low, Rational(32)) << "what is laid out";
}

TEST(AmountToBuy, IsNeverLessThanWhatIsNeeded) {
    const Ingredient onion = ingredientOf({1}, "");
    EXPECT_EQ(scaledAmount(onion, servingOf(11, 5)).low, Rational(2));
    EXPECT_GE(amountToBuy(onion, servingOf(11, 5)).low, Rational(11, 5));
    Ingredient leeks = ingredientOf({3}, "tsp");
    for (const int usable : {100, 90, 61}) {
        leeks.usablePercent = usable;
        for (int covers = 1; covers < 60; ++covers) {
            const Amount bought = amountToBuy(leeks, servingOf(covers, 7));
            const Rational needed = Rational(3) * Rational(covers, 7) * findMeasure("tsp")->size *
                                    Rational(100, usable);
            EXPECT_GE(bought.low * findMeasure(bought.unit)->size, needed) << covers;
        }
    }
}

TEST(AmountToBuy, IsWhatIsLaidOutWhereAllIsUsed) {
    EXPECT_EQ(amountToBuy(ingredientOf({3}, "cups"), servingOf(4, 8)).low, Rational(3, 2));
}

}  // namespace
}  // namespace rangeline
