#include "check/covers_change.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using testing::Contains;
using testing::Field;
using testing::IsEmpty;
using testing::Not;
using testing::SizeIs;

/// Two chops a cover, four a pan, eight minutes a panful, for two covers at first.
LessonBuilder chops() {
    LessonBuilder builder;
    builder.burner("left");
    builder.ware("pan", "saute-pan");
    Step& sear = builder.step("sear", {hands(8_min)});
    sear.heat = onBurner();
    sear.wares = {fresh("saute-pan")};
    sear.piecesPerCover = 2;
    sear.piecesPerBatch = 4;
    Serving& serving = builder.lesson.servings.front();
    serving.covers = serving.dish.writtenFor = 2;
    Ingredient salt{"salt", Amount{1, 1, "tsp"}, {}, {}, {}, Scaling::Seasoning};
    Ingredient oil{"oil", Amount{2, 2, "tbsp"}, {}, {}, {}, Scaling::Fixed};
    Ingredient chop{"chops", Amount{4, 4, ""}, {}, {}, {}};
    serving.dish.components.front().ingredients = {salt, oil, chop};
    return builder;
}

CoversChange change(const Lesson& before, int covers) {
    Lesson after = before;
    after.servings.front().covers = covers;
    const Expanded old = expand(before);
    const Expanded now = expand(after);
    const UseIndex first(before, old);
    const UseIndex second(after, now);
    return coversChange(first, second);
}

// By hand: 6 covers are three times 2, so 12 chops in 3 loads of 4, 24 min in all; the salt grows
// by half of the two times more, to 2 tsp.
TEST(CoversChange, TellsAmountsThatScaleAndLoadsThatArise) {
    const LessonBuilder builder = chops();
    const CoversChange told = change(builder.lesson, 6);
    ASSERT_THAT(told.covers, SizeIs(1));
    EXPECT_EQ(told.covers[0].before, 2);
    EXPECT_EQ(told.covers[0].after, 6);
    ASSERT_THAT(told.amounts, SizeIs(2));
    EXPECT_EQ(told.amounts[0].ingredient, 0);
    EXPECT_EQ(told.amounts[0].after.amount, (Amount{2, 2, "tsp"}));
    EXPECT_EQ(told.amounts[1].ingredient, 2);
    EXPECT_EQ(told.amounts[1].after.amount, (Amount{12, 12, ""}));
    ASSERT_THAT(told.loads, SizeIs(1));
    EXPECT_EQ(told.loads[0].before, (StepLoads{1, 8_min}));
    EXPECT_EQ(told.loads[0].after, (StepLoads{3, 24_min}));
}

TEST(CoversChange, TellsWhatArisesOfItOnly) {
    LessonBuilder builder = chops();
    builder.step("talk", {hands(4_min)}).classWatches = true;
    builder.place("sear", -20);
    const CoversChange told = change(builder.lesson, 6);
    EXPECT_THAT(told.arisen, Contains(Field(&Finding::code, FindingCode::NotPlaced)));
    for (const Finding& finding : told.arisen) {
        EXPECT_THAT(finding.keys, Not(Contains(PlacementKey(key("talk")))));
    }
}

TEST(CoversChange, IsNothingForTheSameCovers) {
    const LessonBuilder builder = chops();
    const CoversChange told = change(builder.lesson, 2);
    EXPECT_THAT(told.covers, IsEmpty());
    EXPECT_THAT(told.amounts, IsEmpty());
    EXPECT_THAT(told.loads, IsEmpty());
    EXPECT_THAT(told.arisen, IsEmpty());
    EXPECT_EQ(told.settled, 0);
}

TEST(CoversChange, FewerCoversSettleWhatWasFound) {
    LessonBuilder builder = chops();
    builder.lesson.servings.front().covers = 6;
    EXPECT_GT(change(builder.lesson, 2).settled, 0);
}

}  // namespace
}  // namespace rangeline::test
