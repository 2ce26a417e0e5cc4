#include "safety/allergens.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace rangeline {
namespace {

using testing::UnorderedElementsAre;

std::vector<std::string> keysWhere(bool Allergen::*listed) {
    std::vector<std::string> keys;
    for (const Allergen& row : allergens()) {
        if (row.*listed) {
            keys.emplace_back(row.key);
        }
    }
    return keys;
}

// FASTER Act, in force 1 January 2023 (read).
TEST(Allergens, TheUsNine) {
    EXPECT_THAT(keysWhere(&Allergen::us),
                UnorderedElementsAre("milk", "eggs", "fish", "crustaceans", "tree-nuts", "peanuts",
                                     "wheat", "soybeans", "sesame"));
}

// Regulation (EU) 1169/2011, Annex II (read).
TEST(Allergens, TheEuFourteen) {
    EXPECT_THAT(keysWhere(&Allergen::eu),
                UnorderedElementsAre("gluten", "crustaceans", "eggs", "fish", "peanuts", "soybeans",
                                     "milk", "tree-nuts", "celery", "mustard", "sesame",
                                     "sulphites", "lupin", "molluscs"));
}

TEST(Allergens, AGuestWithoutGlutenDoesNotGetWheat) {
    EXPECT_TRUE(allergenCovers("gluten", "wheat"));
    EXPECT_TRUE(allergenCovers("wheat", "gluten")) << "the cereal may be wheat";
    EXPECT_FALSE(allergenCovers("milk", "wheat"));
}

TEST(Allergens, AWordOutsideTheTableEqualsItself) {
    EXPECT_TRUE(allergenCovers("kiwi", "kiwi"));
    EXPECT_FALSE(allergenCovers("kiwi", "milk"));
    EXPECT_FALSE(allergenCovers("", "milk"));
}

}  // namespace
}  // namespace rangeline
