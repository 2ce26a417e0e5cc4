// What must hold for every row, so that adding one cannot leave a loose end.

#include <gtest/gtest.h>

#include <set>

#include "safety/allergens.h"
#include "safety/dangers.h"
#include "safety/foods.h"
#include "safety/holding.h"
#include "safety/sources.h"
#include "safety/techniques.h"

namespace rangeline {
namespace {

template <class Rows>
void expectKeysOnce(const Rows& rows) {
    std::set<std::string_view> seen;
    for (const auto& row : rows) {
        EXPECT_FALSE(row.key.empty());
        EXPECT_TRUE(seen.insert(row.key).second) << row.key;
    }
}

TEST(Tables, KeysAreThereOnce) {
    expectKeysOnce(sources());
    expectKeysOnce(foods());
    expectKeysOnce(dangers());
    expectKeysOnce(allergens());
    expectKeysOnce(techniques());
}

TEST(Tables, EveryFoodNamesItsSources) {
    for (const Food& food : foods()) {
        EXPECT_EQ(food.controlled, findSource(food.controlledSource) != nullptr) << food.key;
        for (const auto& limit : {food.household, food.foodCode}) {
            EXPECT_TRUE(!limit || findSource(limit->source) != nullptr) << food.key;
        }
        EXPECT_TRUE(food.danger.empty() || findDanger(food.danger) != nullptr) << food.key;
    }
}

TEST(Tables, EveryLimitNamesItsSource) {
    for (const auto profile : {SafetyProfile::Household, SafetyProfile::FoodCode}) {
        EXPECT_EQ(holdingLimits(profile).profile, profile);
        EXPECT_NE(findSource(holdingLimits(profile).temperatureSource), nullptr);
        EXPECT_NE(findSource(holdingLimits(profile).timeSource), nullptr);
    }
    for (const CoolingStage& stage : coolingStages()) {
        EXPECT_NE(findSource(stage.source), nullptr);
    }
    EXPECT_NE(findSource(garlicInOil().source), nullptr);
    for (const Danger& danger : dangers()) {
        EXPECT_NE(findSource(danger.source), nullptr) << danger.key;
    }
}

TEST(Tables, PartsOfAllergensAreInTheTable) {
    for (const Allergen& row : allergens()) {
        EXPECT_TRUE(row.us || row.eu) << row.key;
        EXPECT_TRUE(row.partOf.empty() || findAllergen(row.partOf) != nullptr) << row.key;
    }
}

TEST(Techniques, RangesAreInOrder) {
    for (const Technique& row : techniques()) {
        EXPECT_LT(Duration(), row.least) << row.key;
        EXPECT_LT(row.least, row.most) << row.key;
        EXPECT_TRUE(row.danger.empty() || findDanger(row.danger) != nullptr) << row.key;
    }
}

// Common practice, no source.
TEST(Techniques, UsualTimesOfTheStove) {
    const auto expectRange = [](const char* key, int least, int most) {
        const Technique* row = findTechnique(key);
        ASSERT_NE(row, nullptr) << key;
        EXPECT_EQ(row->least, Duration::minutes(least)) << key;
        EXPECT_EQ(row->most, Duration::minutes(most)) << key;
    };
    expectRange("sweat", 4, 10);
    expectRange("melt", 20, 45);
    expectRange("caramelize", 45, 90);
    expectRange("roast-in-packet", 30, 40);
    expectRange("render", 8, 15);
    expectRange("saute", 3, 7);
    EXPECT_EQ(findTechnique("rest")->least, Duration::minutes(3));  // USDA FSIS (read)
    EXPECT_EQ(findTechnique("whittle"), nullptr);
}

}  // namespace
}  // namespace rangeline
