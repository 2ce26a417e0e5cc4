#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

void work(LessonBuilder& builder, const char* id, std::int64_t at,
          const std::vector<Segment>& segments, const char* cook = "ann") {
    builder.step(id, segments);
    const auto watches = std::ranges::count(segments, Attention::Watch, &Segment::attention);
    assign(builder.place(id, at), cook, static_cast<int>(watches));
}

TEST(HandsTwice, TouchingIsFineAndOverlappingIsNot) {
    LessonBuilder builder;
    work(builder, "peel", -30, {hands(10_min)});
    work(builder, "chop", -20, {hands(10_min)});
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::HandsTwice), IsEmpty());
    builder.lesson.placements.at(key("chop")).start = minute(-21);
    const auto found = findingsOf(builder.lesson, FindingCode::HandsTwice);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("peel"), key("chop")));
    EXPECT_EQ(found[0].equipment, (EquipmentRef{EquipmentSort::Cook, 0}));
    EXPECT_EQ(found[0].interval, minutes(-21, -20));
}

TEST(HandsTwice, OneFindingForTwoThatCollideAgainAndAgain) {
    LessonBuilder builder;
    work(builder, "peel", -40, {hands(30_min)});
    work(builder, "stir", -38, {hands(2_min), away(5_min), hands(2_min)});
    const auto found = findingsOf(builder.lesson, FindingCode::HandsTwice);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-38, -29));
}

TEST(HandsTwice, WorkInsideSomebodyElsesAwayTimeIsFine) {
    LessonBuilder builder;
    work(builder, "stew", -60, {hands(5_min), away(30_min), hands(5_min)});
    work(builder, "chop", -55, {hands(30_min)});
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::HandsTwice), IsEmpty());
}

TEST(HandsTwice, ASlowCookTakesLonger) {
    LessonBuilder builder;
    builder.cook("ben", 150);
    work(builder, "peel", -30, {hands(10_min)}, "ben");
    work(builder, "chop", -20, {hands(10_min)}, "ben");
    const auto found = findingsOf(builder.lesson, FindingCode::HandsTwice);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-20, -15));
}

TEST(HandsTwice, TwoCooksAtOneStepAreBothTaken) {
    LessonBuilder builder;
    builder.cook("ben");
    work(builder, "carry", -30, {hands(10_min)});
    builder.get("carry").cooks = 2;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::TooFewHands), SizeIs(1));
    builder.lesson.placements.at(key("carry")).hands = {{CookId{"ann"}, 0}, {CookId{"ben"}, 0}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::TooFewHands), IsEmpty());
    work(builder, "chop", -25, {hands(10_min)}, "ben");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::HandsTwice), SizeIs(1));
}

TEST(Watches, AtMostTheLimitAtOnce) {
    LessonBuilder builder;
    builder.lesson.kitchen.watchLimit = 2;
    work(builder, "a", -30, {watch(10_min)});
    work(builder, "b", -28, {watch(10_min)});
    work(builder, "c", -20, {watch(10_min)});
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WatchesTooMuch), IsEmpty());
    builder.lesson.placements.at(key("c")).start = minute(-21);
    const auto found = findingsOf(builder.lesson, FindingCode::WatchesTooMuch);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("a"), key("b"), key("c")));
    EXPECT_EQ(found[0].interval, minutes(-21, -20));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::int64_t{3}), Figure(std::int64_t{2})));
}

TEST(Watches, AlsoWhileHisHandsWork) {
    LessonBuilder builder;
    builder.lesson.kitchen.watchLimit = 1;
    work(builder, "a", -30, {watch(10_min)});
    work(builder, "chop", -30, {hands(10_min)});
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WatchesTooMuch), IsEmpty());
}

TEST(Watches, GoOnWhileThePanStaysOnTheHeat) {
    LessonBuilder builder;
    builder.lesson.kitchen.watchLimit = 1;
    builder.burner("front");
    builder.ware("pan", "saute-pan");
    work(builder, "brown", -40, {watch(10_min)});
    builder.get("brown").heat = onBurner();
    builder.get("brown").wares = {fresh("saute-pan")};
    builder.lesson.placements.at(key("brown")).burners = {BurnerId{"front"}};
    builder.lesson.placements.at(key("brown")).wares = {{WareId{"pan"}, 0}};
    work(builder, "reduce", -20, {away(10_min)});
    BurnerHeat heat = onBurner();
    heat.staysOnHeat = true;
    builder.get("reduce").heat = heat;
    builder.get("reduce").wares = {carryOn("saute-pan", "brown")};
    work(builder, "toast", -28, {watch(5_min)});
    const auto found = findingsOf(builder.lesson, FindingCode::WatchesTooMuch);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-28, -23));
}

LessonBuilder talk() {
    LessonBuilder builder;
    builder.cook("ben");
    work(builder, "show", -30, {hands(10_min)});
    builder.get("show").classWatches = true;
    return builder;
}

TEST(Talk, NobodyElseWorksWhileTheClassWatches) {
    auto builder = talk();
    work(builder, "chop", -20, {hands(10_min)}, "ben");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WorksDuringTalk), IsEmpty());
    builder.lesson.placements.at(key("chop")).start = minute(-21);
    const auto found = findingsOf(builder.lesson, FindingCode::WorksDuringTalk);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("show"), key("chop")));
    EXPECT_EQ(found[0].equipment, (EquipmentRef{EquipmentSort::Cook, 1}));
    EXPECT_EQ(found[0].interval, minutes(-21, -20));
}

TEST(Talk, WatchingAPotIsAllowed) {
    auto builder = talk();
    work(builder, "simmer", -30, {watch(10_min)}, "ben");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WorksDuringTalk), IsEmpty());
}

TEST(Talk, ConcernsItsOwnGroupAndSharedCooks) {
    auto builder = talk();
    builder.lesson.head.groups.count = 2;
    work(builder, "chop", -90, {hands(10_min)}, "ben");
    builder.place(key("show", 0, 1), minute(-60)).hands = {{CookId{"ann"}, 0}};
    builder.place(key("chop", 0, 1), minute(-25)).hands = {{CookId{"ben"}, 0}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WorksDuringTalk), IsEmpty());
    builder.lesson.head.groups.shared = {"ben"};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::WorksDuringTalk), SizeIs(1));
}

TEST(Crew, OnlyWhoCanDoIt) {
    LessonBuilder builder;
    work(builder, "show", -30, {hands(10_min)});
    builder.get("show").needsAbility = "teacher";
    const auto found = findingsOf(builder.lesson, FindingCode::CannotDo);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure("teacher")));
    builder.lesson.kitchen.cooks[0].can = {"teacher"};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CannotDo), IsEmpty());
}

/// Eight pieces, a minute each, split between two cooks.
LessonBuilder shared(int ann, int ben) {
    LessonBuilder builder;
    builder.cook("ben", 200);
    Step& shape = builder.step("shape", {hands(1_min)});
    shape.segments[0].stretches = true;
    shape.timePer = TimePer::Piece;
    shape.piecesPerCover = Rational(8);
    shape.mayBeShared = true;
    builder.place("shape", -30).hands = {{CookId{"ann"}, ann}, {CookId{"ben"}, ben}};
    return builder;
}

TEST(Crew, PiecesAreSharedOutWhole) {
    EXPECT_THAT(findingsOf(shared(5, 3).lesson, FindingCode::PiecesDoNotAdd), IsEmpty());
    const auto found = findingsOf(shared(5, 2).lesson, FindingCode::PiecesDoNotAdd);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::int64_t{7}), Figure(std::int64_t{8})));
    auto builder = shared(5, 3);
    builder.get("shape").mayBeShared = false;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::PiecesDoNotAdd), SizeIs(1));
}

TEST(Crew, ACookNamedTwiceIsNotTwoCooks) {
    auto builder = shared(4, 4);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::TooFewHands), IsEmpty());
    builder.lesson.placements.at(key("shape")).hands[1].cook = CookId{"ann"};
    const auto found = findingsOf(builder.lesson, FindingCode::TooFewHands);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::int64_t{1}), Figure(std::int64_t{2})));
}

TEST(Crew, EachWorksForHisPiecesOnly) {
    auto builder = shared(6, 2);  // ann [-30, -24), ben [-30, -26)
    work(builder, "chop", -26, {hands(5_min)}, "ben");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::HandsTwice), IsEmpty());
    work(builder, "peel", -25, {hands(5_min)}, "ann");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::HandsTwice), SizeIs(1));
}

}  // namespace
}  // namespace rangeline::test
