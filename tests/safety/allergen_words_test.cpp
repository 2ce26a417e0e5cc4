// Common practice, no source: which foods belong to the groups that law asks to name.

#include "safety/allergen_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "safety/allergens.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(AllergenWords, NamesInSingularOrPluralSuggestTheirGroup) {
    EXPECT_THAT(usuallyContains("unsalted butter"), ElementsAre("milk"));
    EXPECT_THAT(usuallyContains("Egg yolks"), ElementsAre("eggs"));
    EXPECT_THAT(usuallyContains("anchovies in oil"), ElementsAre("fish"));
    EXPECT_THAT(usuallyContains("flour"), ElementsAre("wheat"));
    EXPECT_THAT(usuallyContains("dry white wine"), ElementsAre("sulphites"));
    EXPECT_THAT(usuallyContains("radishes"), IsEmpty());
}

TEST(AllergenWords, OneNameMaySuggestSeveral) {
    EXPECT_THAT(usuallyContains("soy sauce"), ElementsAre("wheat", "soybeans"));
    EXPECT_THAT(usuallyContains("vanilla custard"), ElementsAre("milk", "eggs"));
}

TEST(AllergenWords, WhatStandsBesideMakesAnotherFoodOfIt) {
    EXPECT_THAT(usuallyContains("coconut milk"), IsEmpty());
    EXPECT_THAT(usuallyContains("peanut butter"), ElementsAre("peanuts"));
    EXPECT_THAT(usuallyContains("almond milk"), ElementsAre("tree-nuts"));
    EXPECT_THAT(usuallyContains("butter beans"), IsEmpty());
    EXPECT_THAT(usuallyContains("rice noodles"), IsEmpty());
    EXPECT_THAT(usuallyContains("oyster mushrooms"), IsEmpty());
    EXPECT_THAT(usuallyContains("pine nuts"), IsEmpty());
}

TEST(AllergenWords, PartsOfWordsSayNothing) {
    for (const char* name : {"eggplant", "butternut squash", "buckwheat", "nutmeg", "crabapple"}) {
        EXPECT_THAT(usuallyContains(name), IsEmpty()) << name;
    }
}

// FASTER Act of 2021 and Regulation (EU) 1169/2011, Annex II: each group that law names has words
// that suggest it.
TEST(AllergenWords, ReachEveryGroupOfTheTable) {
    for (const Allergen& allergen : allergens()) {
        const bool reached = [&] {
            for (const char* name :
                 {"milk", "eggs", "cod", "prawns", "walnuts", "peanuts", "bread", "tofu", "tahini",
                  "barley", "celeriac", "mustard", "wine", "lupin flour", "mussels"}) {
                const auto keys = usuallyContains(name);
                if (std::ranges::find(keys, allergen.key) != keys.end()) {
                    return true;
                }
            }
            return false;
        }();
        EXPECT_TRUE(reached) << allergen.key;
    }
}

TEST(AllergenWords, AnythingAtAllCanBeAsked) {
    EXPECT_THAT(usuallyContains(""), IsEmpty());
    EXPECT_THAT(usuallyContains(" ,;- "), IsEmpty());
    EXPECT_THAT(usuallyContains("\xff\xfe\x01"), IsEmpty());
}

}  // namespace
}  // namespace rangeline::test
