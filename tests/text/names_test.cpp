#include "text/names.h"

#include <gtest/gtest.h>

#include "text/supper.h"

namespace rangeline::test {
namespace {

TEST(Names, AStepByItsNameWhereThatIsClear) {
    const Supper supper;
    EXPECT_EQ(Names(supper.context).step(key("roast")), "“Roast the thighs”");
}

TEST(Names, WithItsComponentWhereTwoStepsShareTheName) {
    auto builder = supperBuilder();
    builder.get("bake").name = "Roast the thighs";
    const Supper supper(builder);
    EXPECT_EQ(Names(supper.context).step(key("roast")), "“Roast the thighs” (Component)");
}

TEST(Names, WithBatchAndGroup) {
    auto builder = supperBuilder();
    builder.lesson.choices.batches = {{StepId{"char"}, 2}};
    builder.lesson.head.groups.count = 2;
    builder.lesson.head.groups.shared = {"oven"};
    const Supper supper(builder);
    const Names names(supper.context);
    EXPECT_EQ(names.step(key("char", 1, 1)), "“Char the leeks” (batch 2 of 2, group 2)");
    EXPECT_EQ(names.oven(OvenId{"oven"}, 1), "oven");
    EXPECT_EQ(names.cook(CookId{"ann"}, 1), "Robin of group 2");
}

TEST(Names, WashesAndTurningOn) {
    const Supper supper;
    const Names names(supper.context);
    EXPECT_EQ(names.step(washAfter("char")), "washing sauté pan 2");
    EXPECT_EQ(names.step(turningOn("oven")), "turning on the oven");
}

TEST(Names, EquipmentWithItsNumberWhereThereAreSeveral) {
    const Supper supper;
    const Names names(supper.context);
    EXPECT_EQ(names.ware({WareId{"pan"}, 0}, 0), "sauté pan 1");
    EXPECT_EQ(names.burner(BurnerId{"left"}, 0), "front left burner");
    EXPECT_EQ(names.equipment({EquipmentSort::Oven, 0}), "oven");
    EXPECT_EQ(names.equipment({}), "");
    EXPECT_EQ(names.withArticle({EquipmentSort::Oven, 0}), "the oven");
    EXPECT_EQ(names.withArticle({EquipmentSort::Ware, 0}), "sauté pan 1");
    EXPECT_EQ(names.withArticle({EquipmentSort::Cook, 0}), "Robin");
}

TEST(Names, WhatTheKitchenLacksGoesByItsId) {
    const Supper supper;
    const Names names(supper.context);
    EXPECT_EQ(names.ware({WareId{"wok"}, 0}, 0), "wok");
    EXPECT_EQ(names.ware({WareId{"pan"}, 7}, 0), "pan");
    EXPECT_EQ(names.cook(CookId{"nobody"}, 0), "nobody");
    EXPECT_EQ(names.step(key("nothing")), "“nothing”");
}

TEST(Names, Lists) {
    EXPECT_EQ(listText({}), "");
    EXPECT_EQ(listText({"a"}), "a");
    EXPECT_EQ(listText({"a", "b"}), "a and b");
    EXPECT_EQ(listText({"a", "b", "c"}), "a, b and c");
}

TEST(Names, SentencesBeginWithACapital) {
    EXPECT_EQ(sentenceCase("oven: hot"), "Oven: hot");
    EXPECT_EQ(sentenceCase("“bake” it"), "“Bake” it");
    EXPECT_EQ(sentenceCase(""), "");
}

}  // namespace
}  // namespace rangeline::test
