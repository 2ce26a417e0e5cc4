#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// One pan, washed in 3 min at the one sink; leeks in it [-40, -30), then glaze for 10 min.
LessonBuilder onePan(std::int64_t glaze) {
    LessonBuilder builder;
    builder.pool("sink", "sink", 1);
    builder.ware("pan", "saute-pan").cleaning = {3_min, PoolId{"sink"}};
    const auto inPan = [&](const char* id, std::int64_t at) {
        Step& step = builder.step(id, {away(10_min)});
        step.wares = {fresh("saute-pan")};
        step.wares[0].turnedOut = true;
        builder.place(id, at).wares = {{WareId{"pan"}, 0}};
    };
    inPan("leeks", -40);
    inPan("glaze", glaze);
    return builder;
}

std::vector<Finding> twice(const LessonBuilder& builder) {
    return findingsOf(builder.lesson, FindingCode::WareTwice);
}
std::vector<Finding> unwashed(const LessonBuilder& builder) {
    return findingsOf(builder.lesson, FindingCode::NotYetWashed);
}

TEST(WareTwice, TouchingIsFineAndOverlappingIsNot) {
    EXPECT_THAT(twice(onePan(-30)), IsEmpty());
    const auto found = twice(onePan(-31));
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("leeks"), key("glaze")));
    EXPECT_EQ(found[0].interval, minutes(-31, -30));
    EXPECT_THAT(unwashed(onePan(-31)), IsEmpty()) << "one finding is enough";
}

TEST(WareTwice, TheFoodStaysInThePanUntilItIsUsed) {
    auto builder = onePan(-28);
    builder.get("leeks").wares[0].turnedOut = false;
    builder.step("plate", {away(5_min)});
    builder.uses("plate", "leeks");
    builder.place("plate", -20);
    const auto found = twice(builder);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-28, -20));
}

TEST(WareTwice, WhatGoesOnInThePanIsTheSameUse) {
    auto builder = onePan(-30);
    builder.get("glaze").wares = {carryOn("saute-pan", "leeks")};
    builder.lesson.placements.at(key("glaze")).wares.clear();
    EXPECT_THAT(twice(builder), IsEmpty());
    EXPECT_THAT(unwashed(builder), IsEmpty());
}

TEST(WareTwice, AWashDuringTheNextUse) {
    auto builder = onePan(-30);
    builder.placeWash("leeks", -30, "ann");
    const auto found = twice(builder);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-30, -27));
    EXPECT_THAT(unwashed(builder), IsEmpty());
}

TEST(WareTwice, FoodStoredSinceBeforeTheLesson) {
    auto builder = onePan(-30);
    builder.uses("glaze", "leeks");
    builder.get("leeks").after.mayBeDoneAhead = true;
    builder.lesson.placements.erase(key("leeks"));
    builder.lesson.choices.doneAhead = {
        {StepId{"leeks"}, 24_h, Storage::Room, std::nullopt, {{WareId{"pan"}, 0}}}};
    EXPECT_THAT(twice(builder), IsEmpty());
    builder.step("toast", {away(5_min)}).wares = {fresh("saute-pan")};
    builder.place("toast", -60).wares = {{WareId{"pan"}, 0}};
    ASSERT_THAT(twice(builder), SizeIs(1));
    EXPECT_EQ(twice(builder)[0].interval, minutes(-60, -55));
}

TEST(NotYetWashed, NeedsAWashBetween) {
    auto builder = onePan(-25);
    const auto found = unwashed(builder);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("leeks"), key("glaze"), washAfter("leeks")));
    EXPECT_EQ(found[0].equipment, (EquipmentRef{EquipmentSort::Ware, 0}));
    EXPECT_EQ(found[0].interval, minutes(-30, -25));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(3_min)));
    builder.placeWash("leeks", -30, "ann");
    EXPECT_THAT(unwashed(builder), IsEmpty());
    builder.placeWash("leeks", -28, "ann");
    EXPECT_THAT(unwashed(builder), IsEmpty()) << "it touches both uses";
}

TEST(NotYetWashed, AWashAfterTheNextUseIsTooLate) {
    auto builder = onePan(-25);
    builder.placeWash("leeks", -10, "ann");
    EXPECT_THAT(unwashed(builder), SizeIs(1));
}

TEST(NotYetWashed, WhatNeedsNoCleaningNeedsNoWash) {
    auto builder = onePan(-30);
    builder.lesson.kitchen.wares[0].cleaning = {};
    EXPECT_THAT(unwashed(builder), IsEmpty());
}

TEST(NotYetWashed, BatchesOfOneStepFollowEachOtherUnlessItSaysOtherwise) {
    LessonBuilder builder;
    builder.ware("pan", "saute-pan").cleaning = {3_min, std::nullopt};
    Step& fry = builder.step("fry", {away(5_min)});
    fry.wares = {fresh("saute-pan")};
    fry.piecesPerCover = Rational(8);
    fry.piecesPerBatch = 4;
    builder.place(key("fry", 0), minute(-20)).wares = {{WareId{"pan"}, 0}};
    builder.place(key("fry", 1), minute(-15)).wares = {{WareId{"pan"}, 0}};
    EXPECT_THAT(unwashed(builder), IsEmpty());
    EXPECT_THAT(twice(builder), IsEmpty());
    builder.get("fry").batchesNeedWash = true;
    EXPECT_THAT(unwashed(builder), SizeIs(1));
}

TEST(Wash, TakesThePaceOfItsCook) {
    auto builder = onePan(-25);
    builder.cook("ben", 200);
    builder.placeWash("leeks", -30, "ben");
    EXPECT_THAT(twice(builder), SizeIs(1)) << "6 min do not fit in 5";
}

TEST(Wash, StatedShorterThanItTakes) {
    auto builder = onePan(-25);
    builder.placeWash("leeks", -30, "ann").lasts = 2_min;
    const auto found = findingsOf(builder.lesson, FindingCode::WashTooShort);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(washAfter("leeks")));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(3_min), Figure(2_min)));
    builder.lesson.placements.at(washAfter("leeks")).started = true;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WashTooShort), testing::IsEmpty())
        << "it is done when the cook says so";
}

TEST(Wash, BeforeThePanWasUsed) {
    auto builder = onePan(-80);
    builder.placeWash("leeks", -60, "ann");
    const auto found = findingsOf(builder.lesson, FindingCode::TooEarlyAfter);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("leeks"), washAfter("leeks")));
}

TEST(WareFit, KindWidthAndVolume) {
    auto builder = onePan(-25);
    WareNeed& need = builder.get("leeks").wares[0];
    need.leastWidth = Length::millimetres(300);
    need.leastMillilitres = 2000;
    builder.lesson.kitchen.wares[0].millilitres = 1500;
    const auto small = findingsOf(builder.lesson, FindingCode::WareTooSmall);
    ASSERT_THAT(small, SizeIs(2));
    EXPECT_THAT(small[0].figures,
                ElementsAre(Figure(Length::millimetres(280)), Figure(Length::millimetres(300))));
    EXPECT_THAT(small[1].figures,
                ElementsAre(Figure(std::int64_t{1500}), Figure(std::int64_t{2000})));
    builder.lesson.kitchen.wares[0].kind = "skillet";
    const auto wrong = findingsOf(builder.lesson, FindingCode::WareWrongKind);
    ASSERT_THAT(wrong, SizeIs(2));
    EXPECT_THAT(wrong[0].figures, ElementsAre(Figure("skillet"), Figure("saute-pan")));
}

}  // namespace
}  // namespace rangeline::test
