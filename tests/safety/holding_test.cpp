#include "safety/holding.h"

#include <gtest/gtest.h>

namespace rangeline {
namespace {

// USDA FSIS (read in copies): danger zone 40 to 140 °F, never out over 2 h, 1 h above 90 °F.
TEST(Holding, Household) {
    const HoldingLimits& limits = holdingLimits(SafetyProfile::Household);
    EXPECT_EQ(limits.cold, Temperature::fahrenheit(40));
    EXPECT_EQ(limits.hot, Temperature::fahrenheit(140));
    EXPECT_EQ(limits.out, Duration::hours(2));
    ASSERT_TRUE(limits.hotRoom);
    EXPECT_EQ(*limits.hotRoom, Temperature::fahrenheit(90));
    EXPECT_EQ(limits.outInHotRoom, Duration::hours(1));
}

TEST(Holding, FoodCode) {
    const HoldingLimits& limits = holdingLimits(SafetyProfile::FoodCode);
    // FDA Food Code 3-501.16 (read in state rules): hot at or above 135 °F, cold at or below 41 °F.
    EXPECT_EQ(limits.cold, Temperature::fahrenheit(41));
    EXPECT_EQ(limits.hot, Temperature::fahrenheit(135));
    // FDA Food Code 3-501.19(B) (read in state rules): 4 h with time as the control.
    EXPECT_EQ(limits.out, Duration::hours(4));
    EXPECT_FALSE(limits.hotRoom);
}

// FDA Food Code 3-501.14(A) (read in state rules): 135 to 70 °F within 2 h, to 41 °F within 6 h.
TEST(Holding, CoolingInTwoStages) {
    const auto stages = coolingStages();
    ASSERT_EQ(stages.size(), 2u);
    EXPECT_EQ(stages[0].from, Temperature::fahrenheit(135));
    EXPECT_EQ(stages[0].to, Temperature::fahrenheit(70));
    EXPECT_EQ(stages[0].within, Duration::hours(2));
    EXPECT_EQ(stages[1].from, Temperature::fahrenheit(135));
    EXPECT_EQ(stages[1].to, Temperature::fahrenheit(41));
    EXPECT_EQ(stages[1].within, Duration::hours(6));
}

// National Center for Home Food Preservation (page reviewed 2015, read): at or below 40 °F, at most
// 4 days.
TEST(Holding, GarlicInOil) {
    EXPECT_EQ(garlicInOil().cold, Temperature::fahrenheit(40));
    EXPECT_EQ(garlicInOil().keeps, Duration::hours(96));
}

}  // namespace
}  // namespace rangeline
