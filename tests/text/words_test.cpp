#include "text/words.h"

#include <gtest/gtest.h>

#include "safety/allergens.h"
#include "safety/dangers.h"
#include "safety/foods.h"
#include "safety/sources.h"

namespace rangeline {
namespace {

QString asQString(std::string_view key) {
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

TEST(Words, EveryDangerHasSomethingToMind) {
    for (const Danger& danger : dangers()) {
        EXPECT_TRUE(dangerText(danger.key).endsWith('.')) << danger.key;
    }
}

TEST(Words, EveryKeyOfTheSafetyTablesIsKnown) {
    // Words with a hyphen are keys, never kitchen words here.
    for (const Food& food : foods()) {
        EXPECT_FALSE(foodText(food.key).contains('-')) << food.key;
    }
    for (const Allergen& allergen : allergens()) {
        EXPECT_FALSE(allergenText(allergen.key).contains('-')) << allergen.key;
    }
    for (const Source& source : sources()) {
        EXPECT_NE(sourceText(source.key), asQString(source.key));
    }
}

TEST(Words, ModesAndStorageAgreeWithTheirKeys) {
    EXPECT_EQ(modeText(OvenMode::Convection), modeText("convection"));
    EXPECT_EQ(modeText(OvenMode::Broil), "broil");
    EXPECT_EQ(storageText(Storage::HotInOven), storageText("hot-in-oven"));
    EXPECT_EQ(storageText(Storage::Cold), "in the cold");
}

TEST(Words, TheCooksOwnWordsStay) {
    EXPECT_EQ(allergenText("kiwi"), "kiwi");
    EXPECT_EQ(dangerText("the dog"), "the dog");
}

}  // namespace
}  // namespace rangeline
