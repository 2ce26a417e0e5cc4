#include "safety/foods.h"

#include <gtest/gtest.h>

namespace rangeline {
namespace {

std::optional<CoreLimit> core(const char* food, SafetyProfile profile) {
    const Food* row = findFood(food);
    EXPECT_NE(row, nullptr) << food;
    return row != nullptr ? row->core(profile) : std::nullopt;
}

std::int64_t fahrenheit(const char* food, SafetyProfile profile) {
    const auto limit = core(food, profile);
    EXPECT_TRUE(limit) << food;
    return limit ? (limit->least - Temperature::fahrenheit(0)).units() / 50 : -1;
}

// USDA FSIS, minimum internal temperatures (read in copies): steaks, chops, roasts 145 °F and 3 min
// rest; ground meat 160 °F; poultry 165 °F; fish 145 °F; egg dishes 160 °F; leftovers 165 °F.
TEST(Foods, HouseholdCoreTemperatures) {
    constexpr auto household = SafetyProfile::Household;
    EXPECT_EQ(fahrenheit("whole-meat", household), 145);
    EXPECT_EQ(core("whole-meat", household)->held, Duration::minutes(3));
    EXPECT_EQ(fahrenheit("roast", household), 145);
    EXPECT_EQ(core("roast", household)->held, Duration::minutes(3));
    EXPECT_EQ(fahrenheit("ground-meat", household), 160);
    EXPECT_EQ(fahrenheit("poultry", household), 165);
    EXPECT_EQ(fahrenheit("fish", household), 145);
    EXPECT_EQ(fahrenheit("egg-dish", household), 160);
    EXPECT_EQ(fahrenheit("leftovers", household), 165);
    // Poultry that is ground or stuffed: same figure, from memory.
    EXPECT_EQ(fahrenheit("ground-poultry", household), 165);
    EXPECT_EQ(fahrenheit("stuffed", household), 165);
}

// FDA Food Code, read in state rules that adopt its 2009-2017 editions; 2022 edition believed
// unchanged (from memory).
TEST(Foods, FoodCodeCoreTemperatures) {
    constexpr auto code = SafetyProfile::FoodCode;
    // 3-401.11(A)(1): fish, intact meat, eggs cooked to order 145 °F, 15 s.
    for (const char* food : {"fish", "whole-meat", "eggs"}) {
        EXPECT_EQ(fahrenheit(food, code), 145);
        EXPECT_EQ(core(food, code)->held, Duration::seconds(15));
    }
    // 3-401.11(A)(2): ground meat, pooled eggs 155 °F, 17 s.
    for (const char* food : {"ground-meat", "egg-dish"}) {
        EXPECT_EQ(fahrenheit(food, code), 155);
        EXPECT_EQ(core(food, code)->held, Duration::seconds(17));
    }
    // 3-401.11(A)(3): poultry, stuffed foods 165 °F, under 1 s.
    for (const char* food : {"poultry", "stuffed", "ground-poultry"}) {
        EXPECT_EQ(fahrenheit(food, code), 165);
        EXPECT_EQ(core(food, code)->held, Duration());
    }
    // 3-401.11(B): whole roasts, 145 °F for 4 min.
    EXPECT_EQ(fahrenheit("roast", code), 145);
    EXPECT_EQ(core("roast", code)->held, Duration::minutes(4));
    // 3-403.11: reheating for hot holding, 165 °F for 15 s.
    EXPECT_EQ(fahrenheit("leftovers", code), 165);
    EXPECT_EQ(core("leftovers", code)->held, Duration::seconds(15));
}

TEST(Foods, PlantFoodHasACoreLimitOnlyForHotHolding) {
    // FDA Food Code 3-401.13: plant food cooked for hot holding, 135 °F.
    EXPECT_EQ(fahrenheit("cooked-plant", SafetyProfile::FoodCode), 135);
    EXPECT_TRUE(core("cooked-plant", SafetyProfile::FoodCode)->onlyForHotHolding);
    EXPECT_FALSE(core("cooked-plant", SafetyProfile::Household));
}

// FDA Food Code 1-201.10: cooked plant food, cut tomatoes, cut melons, cut leafy greens, garlic in
// oil, besides animal foods.
TEST(Foods, WhatNeedsTimeOrTemperatureControl) {
    for (const char* food : {"cooked-plant", "cut-tomatoes", "cut-melon", "cut-leafy-greens",
                             "garlic-in-oil", "poultry", "fish", "eggs", "dairy", "bacon"}) {
        EXPECT_TRUE(findFood(food)->controlled) << food;
    }
    for (const char* food : {"bread", "nuts", "dry", "raw-produce"}) {
        EXPECT_FALSE(findFood(food)->controlled) << food;
    }
}

TEST(Foods, UnknownKindIsNotThere) {
    EXPECT_EQ(findFood("granite"), nullptr);
    EXPECT_EQ(findFood(""), nullptr);
}

}  // namespace
}  // namespace rangeline
