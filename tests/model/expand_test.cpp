// What lessons come down to, worked out by hand.

#include "model/expand.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

/// Thighs seared in one pan, then a sauce made in it, then plated.
LessonBuilder searAndSauce() {
    LessonBuilder builder;
    builder.burner("left");
    builder.ware("pan", "saute-pan", 2);
    builder.step("sear", {hands(2_min), watch(6_min)}).wares = {fresh("saute-pan")};
    builder.step("sauce", {hands(5_min)}).wares = {carryOn("saute-pan", "sear")};
    builder.step("plate", {hands(2_min)}).plates = true;
    builder.uses("sauce", "sear");
    builder.uses("plate", "sauce");
    return builder;
}

TEST(Expand, StepsCarryOnInOneWareUntilTheirFoodIsUsed) {
    const LessonBuilder builder = searAndSauce();
    const Expanded expanded = expand(builder.lesson);
    ASSERT_EQ(expanded.chains.size(), 1U);
    const Chain& chain = expanded.chains.front();
    EXPECT_THAT(chain.tasks, ElementsAre(0, 1));
    EXPECT_EQ(chain.span.beginTask, 0);
    EXPECT_THAT(chain.span.untilStartOf, ElementsAre(2));
    EXPECT_EQ(chain.owner, 0);
}

TEST(Expand, FoodTurnedOutLeavesTheWareAtTheEnd) {
    LessonBuilder builder = searAndSauce();
    builder.get("sauce").wares.front().turnedOut = true;
    const Expanded expanded = expand(builder.lesson);
    EXPECT_EQ(expanded.chains.front().span.endOf, 1);
    EXPECT_THAT(expanded.chains.front().span.untilStartOf, IsEmpty());
}

TEST(Expand, WhatIsTurnedOutOnTheWayNoLongerHoldsTheWare) {
    LessonBuilder builder = searAndSauce();
    builder.get("sear").wares.front().turnedOut = true;
    builder.step("roast", {away(20_min)});
    builder.uses("roast", "sear");
    const Expanded expanded = expand(builder.lesson);
    // Only the sauce's use counts; the roast took the thighs, which had left the pan.
    EXPECT_THAT(expanded.chains.front().span.untilStartOf, ElementsAre(2));
}

TEST(Expand, PiecesSplitIntoBatchesAsEvenlyAsCanBe) {
    LessonBuilder builder = searAndSauce();
    builder.lesson.servings.front().covers = 7;
    Step& sear = builder.get("sear");
    sear.piecesPerCover = Rational(1);
    sear.piecesPerBatch = 3;
    const Expanded expanded = expand(builder.lesson);
    ASSERT_EQ(expanded.tasks.size(), 5U);
    EXPECT_EQ(expanded.tasks[0].pieces, 3);
    EXPECT_EQ(expanded.tasks[1].pieces, 2);
    EXPECT_EQ(expanded.tasks[2].pieces, 2);
    // The sauce goes on in the last batch's pan; the batches need no wash between them.
    EXPECT_THAT(expanded.chains[2].tasks, ElementsAre(2, 3));
    EXPECT_EQ(expanded.chains[0].family, expanded.chains[2].family);
    EXPECT_GE(expanded.chains[0].family, 0);
}

TEST(Expand, TheCookMayStateTheBatches) {
    LessonBuilder builder = searAndSauce();
    builder.lesson.choices.batches = {{StepId{"sear"}, 2}};
    EXPECT_EQ(expand(builder.lesson).tasks.size(), 4U);
}

TEST(Expand, TimePerPieceGrowsWithTheCovers) {
    LessonBuilder builder = searAndSauce();
    builder.lesson.servings.front().covers = 4;
    Step& plate = builder.get("plate");
    plate.piecesPerCover = Rational(1);
    plate.timePer = TimePer::Piece;
    plate.time = {30_s, 45_s, 60_s};
    const Expanded expanded = expand(builder.lesson);
    EXPECT_EQ(expanded.tasks.back().time.likely, 3_min);
    EXPECT_EQ(expanded.tasks.back().segments.front().length, 3_min);
}

TEST(Expand, AStepDoneAheadLeavesTheTimelineAndItsFoodIsClocked) {
    LessonBuilder builder = searAndSauce();
    builder.get("sear").after.mayBeDoneAhead = true;
    builder.get("sear").after.cold = 4_h;
    builder.lesson.choices.doneAhead = {
        {StepId{"sear"}, 5_h, Storage::Cold, std::nullopt, {{WareId{"pan"}, 1}}}};
    const Expanded expanded = expand(builder.lesson);
    ASSERT_EQ(expanded.tasks.size(), 2U);
    ASSERT_EQ(expanded.chains.size(), 1U);
    EXPECT_EQ(expanded.chains.front().span.begin, SpanBegin::Opening);
    EXPECT_EQ(expanded.chains.front().fixedSpot, (WareSpot{WareId{"pan"}, 1}));
    const auto keeping = std::ranges::find(expanded.waits, WaitOrigin::Keeping, &Wait::origin);
    ASSERT_NE(keeping, expanded.waits.end());
    EXPECT_EQ(keeping->from.fixed, Instant() - 5_h);
    EXPECT_EQ(keeping->most, 4_h);
}

TEST(Expand, ATwinIsUsedInsteadOfTheStepTheClassSees) {
    LessonBuilder builder = searAndSauce();
    builder.get("sear").after.mayBeSwappedIn = true;
    builder.lesson.choices.swapIns = {{StepId{"sear"}, {{WareId{"pan"}, 0}}}};
    const Expanded expanded = expand(builder.lesson);
    EXPECT_EQ(expanded.tasks.size(), 3U);
    // Nothing waits for the sear any more, and the sauce goes on in the twin's pan.
    for (const Wait& wait : expanded.waits) {
        EXPECT_THAT(wait.from.tasks, testing::Not(testing::Contains(0)));
    }
    const auto twin = std::ranges::find(expanded.chains, SpanBegin::Opening,
                                        [](const Chain& chain) { return chain.span.begin; });
    ASSERT_NE(twin, expanded.chains.end());
    EXPECT_THAT(twin->tasks, ElementsAre(1));
    EXPECT_NE(twin->key.spot, 0);
}

TEST(Expand, StayingOnTheHeatKeepsTheBurnerAndTheWatch) {
    LessonBuilder builder = searAndSauce();
    builder.get("sear").heat = onBurner();
    BurnerHeat heat = onBurner();
    heat.staysOnHeat = true;
    builder.get("sauce").heat = heat;
    const Expanded expanded = expand(builder.lesson);
    ASSERT_EQ(expanded.burnerHolds.size(), 1U);
    EXPECT_EQ(expanded.burnerHolds.front().span.endOf, 1);
    ASSERT_EQ(expanded.watchedWaits.size(), 1U);
    EXPECT_EQ(expanded.watchedWaits.front().task, 0);
    EXPECT_EQ(expanded.watchedWaits.front().next, 1);
}

TEST(Expand, OfTwoPansOneMayStayOnTheHeatWhicheverIsNamedFirst) {
    LessonBuilder builder;
    builder.step("sear", {hands(5_min)}).wares = {fresh("saute-pan")};
    builder.get("sear").heat = onBurner();
    BurnerHeat stays = onBurner();
    stays.staysOnHeat = true;
    builder.step("glaze", {hands(2_min)}).wares = {fresh("saucepan"), carryOn("saute-pan", "sear")};
    builder.get("glaze").heat = stays;
    builder.uses("glaze", "sear");
    const Expanded expanded = expand(builder.lesson);
    ASSERT_EQ(expanded.burnerHolds.size(), 1U);
    EXPECT_EQ(expanded.burnerHolds[0].tasks.size(), 2U);
}

TEST(Expand, APanKeptHotThatThenStaysOnTheHeatTakesItsBurnerOnce) {
    LessonBuilder builder;
    builder.step("sear", {hands(5_min)}).wares = {fresh("saute-pan")};
    builder.get("sear").heat = onBurner();
    builder.get("sear").after.storage = Storage::HotOnBurner;
    BurnerHeat stays = onBurner();
    stays.staysOnHeat = true;
    builder.step("glaze", {hands(2_min)}).wares = {carryOn("saute-pan", "sear")};
    builder.get("glaze").heat = stays;
    builder.uses("glaze", "sear");
    EXPECT_EQ(expand(builder.lesson).burnerHolds.size(), 1U);
}

TEST(Expand, OfTwoVesselsAlikeOnlyTheOneTurnedOutIsFree) {
    LessonBuilder builder;
    builder.step("sear", {hands(5_min)}).wares = {fresh("saute-pan")};
    builder.step("turn", {hands(2_min)}).wares = {carryOn("saute-pan", "sear"), fresh("saute-pan")};
    builder.get("turn").wares[0].turnedOut = true;
    builder.step("plate", {hands(5_min)});
    builder.uses("turn", "sear");
    builder.uses("plate", "turn");
    const Expanded expanded = expand(builder.lesson);
    ASSERT_EQ(expanded.chains.size(), 2U);
    for (const Chain& chain : expanded.chains) {
        const bool carried = chain.tasks.size() == 2;
        EXPECT_EQ(chain.span.untilStartOf.empty(), carried);
    }
}

TEST(Expand, ATwinThatStandsInNothingLeavesTheStepAPanOfItsOwn) {
    LessonBuilder builder;
    builder.ware("pan", "saute-pan");
    builder.ware("bowl", "bowl");
    builder.step("reduce", {away(30_min)}).wares = {fresh("saute-pan")};
    builder.get("reduce").after.mayBeSwappedIn = true;
    builder.step("finish", {hands(2_min)}).wares = {carryOn("saute-pan", "reduce"), fresh("bowl")};
    builder.uses("finish", "reduce");
    builder.lesson.choices.swapIns = {{StepId{"reduce"}, {}}};
    std::vector<WashKey> keys;
    for (const Chain& chain : expand(builder.lesson).chains) {
        EXPECT_EQ(std::ranges::count(keys, chain.key), 0);
        keys.push_back(chain.key);
    }
}

/// The steps that have to end by their serving.
std::vector<std::string> dueAtServing(const LessonBuilder& builder) {
    const Expanded expanded = expand(builder.lesson);
    std::vector<std::string> due;
    for (const Window& window : expanded.windows) {
        if (window.origin == WindowOrigin::Serving) {
            due.push_back(expanded.tasks[static_cast<std::size_t>(window.task)].key.step.text);
        }
    }
    return due;
}

TEST(Expand, WhatIsFollowedOnlyByWorkAfterServingIsDueAtServing) {
    LessonBuilder builder;
    builder.step("simmer", {away(20_min)});
    builder.step("scour", {hands(5_min)}).afterServing = true;
    builder.link("simmer", "scour");
    EXPECT_THAT(dueAtServing(builder), testing::ElementsAre("simmer"));
}

TEST(Expand, WhatOnlyBeginsBeforeAnotherIsDueAtServingItself) {
    LessonBuilder builder;
    builder.step("rice", {away(20_min)});
    builder.step("sauce", {away(20_min)});
    builder.link("rice", "sauce").from.end = StepEnd::Start;
    EXPECT_THAT(dueAtServing(builder), testing::ElementsAre("rice", "sauce"));
    builder.lesson.servings[0].dish.links[0].from.end = StepEnd::End;
    EXPECT_THAT(dueAtServing(builder), testing::ElementsAre("sauce"));
}

TEST(Expand, EachBatchKeepsOnlySoLongThoughItsFoodIsUsedWithTheOthers) {
    LessonBuilder builder;
    builder.step("sear", {away(7_min)}).after.atRoom = 6_min;
    builder.get("sear").piecesPerCover = Rational(1);
    builder.get("sear").piecesPerBatch = 4;
    builder.lesson.servings[0].covers = 8;
    builder.step("sauce", {away(5_min)});
    builder.uses("sauce", "sear");
    std::vector<int> kept;
    for (const Wait& wait : expand(builder.lesson).waits) {
        if (wait.origin == WaitOrigin::Keeping) {
            EXPECT_EQ(wait.most, 6_min);
            ASSERT_EQ(wait.from.tasks.size(), 1U);
            kept.push_back(wait.from.tasks.front());
        }
    }
    EXPECT_THAT(kept, ElementsAre(0, 1));
}

TEST(Expand, AnEventTakesNoCook) {
    LessonBuilder builder;
    builder.step("bell", {}).segments = {{Attention::Hands, {}, true}};
    EXPECT_TRUE(expand(builder.lesson).tasks.at(0).segments.empty());
}

TEST(Expand, GroupsHaveStationsOfTheirOwnAndShareWhatIsShared) {
    LessonBuilder builder = searAndSauce();
    builder.oven("oven");
    builder.lesson.head.groups.count = 3;
    builder.lesson.head.groups.shared = {"oven"};
    builder.lesson.head.groups.stagger = 10_min;
    const Expanded expanded = expand(builder.lesson);
    EXPECT_EQ(expanded.tasks.size(), 9U);
    EXPECT_EQ(expanded.stations.burners.size(), 3);
    EXPECT_EQ(expanded.stations.wares.size(), 6);
    EXPECT_EQ(expanded.stations.ovens.size(), 1);
    const int last = expanded.taskOf(key("plate", 0, 2));
    ASSERT_GE(last, 0);
    EXPECT_EQ(servingOf(builder.lesson, expanded.tasks[static_cast<std::size_t>(last)]),
              Instant() + 20_min);
    EXPECT_EQ(expanded.taskOf(key("plate", 0, 3)), -1);
}

TEST(Expand, PlatesEndWithinTheirLimitOfServing) {
    LessonBuilder builder = searAndSauce();
    builder.lesson.servings.front().dish.platesHold = 4_min;
    builder.lesson.servings.front().offset = 30_min;
    const Expanded expanded = expand(builder.lesson);
    const auto window = [&](WindowOrigin origin) {
        return *std::ranges::find_if(
            expanded.windows, [&](const Window& w) { return w.task == 2 && w.origin == origin; });
    };
    EXPECT_EQ(window(WindowOrigin::PlateKeeps).earliest, minute(26));
    EXPECT_EQ(window(WindowOrigin::Serving).latest, minute(30));
}

TEST(Timing, TheStretchingSegmentTakesWhatTheOthersLeave) {
    LessonBuilder builder;
    Step& step = builder.step("braise", {hands(5_min), away(10_min), hands(2_min)});
    step.time = {30_min, 40_min, 60_min};
    const Expanded expanded = expand(builder.lesson);
    const Timing timing = timingOf(expanded.tasks.front(), {});
    EXPECT_EQ(timing.length, 40_min);
    EXPECT_EQ(timing.segments[1].length, 33_min);
    EXPECT_EQ(timing.segments[2].offset, 38_min);
}

TEST(Timing, PaceSlowsHandsOnly) {
    LessonBuilder builder;
    builder.step("dice", {hands(4_min), away(10_min)});
    const Expanded expanded = expand(builder.lesson);
    const HandShare slow{150, 0};
    const Timing timing = timingOf(expanded.tasks.front(), {&slow, 1});
    EXPECT_EQ(timing.segments[0].length, 6_min);
    EXPECT_EQ(timing.length, 16_min);
}

TEST(Timing, WhatIsDoneBeforeItsFixedPartsAreOverEndsThere) {
    LessonBuilder builder;
    builder.step("braise", {hands(5_min), away(30_min), hands(4_min)});
    const Expanded expanded = expand(builder.lesson);
    const HandShare usual{100, 0};
    const Timing timing = timingOf(expanded.tasks.front(), {&usual, 1}, 7_min);
    EXPECT_EQ(timing.length, 7_min);
    EXPECT_EQ(timing.segments[1].length, Duration());
    EXPECT_EQ(timing.segments[2].offset, 5_min);
    EXPECT_EQ(timing.segments[2].length, 2_min);
    EXPECT_THAT(timing.segments[2].shares, ElementsAre(2_min));
    const Timing shorter = timingOf(expanded.tasks.front(), {&usual, 1}, 3_min);
    EXPECT_EQ(shorter.length, 3_min);
    EXPECT_THAT(shorter.segments[0].shares, ElementsAre(3_min));
    EXPECT_EQ(shorter.segments[2].length, Duration());
}

TEST(Timing, SplitPiecesLastAsLongAsTheLongerShare) {
    LessonBuilder builder;
    Step& step = builder.step("peel", {hands(1_min)});
    step.piecesPerCover = Rational(10);
    step.timePer = TimePer::Piece;
    step.mayBeShared = true;
    const Expanded expanded = expand(builder.lesson);
    const std::vector<HandShare> shares = {{100, 6}, {200, 4}};
    const Timing timing = timingOf(expanded.tasks.front(), shares);
    EXPECT_EQ(timing.length, 8_min);
    EXPECT_THAT(timing.segments.front().shares, ElementsAre(6_min, 8_min));
}

TEST(Oven, WarmUpLiesBetweenMeasuredPoints) {
    Oven oven;
    oven.warmUp = {{350_F, 15_min}, {400_F, 20_min}};
    EXPECT_EQ(oven.warmUpTo(350_F), 15_min);
    EXPECT_EQ(oven.warmUpTo(375_F), 17_min + 30_s);
    EXPECT_EQ(oven.warmUpTo(450_F), 25_min);
    EXPECT_EQ(oven.warmUpTo(300_F), 10_min);
}

TEST(Oven, ChangeOverGoesByTheRateInThatDirection) {
    Oven oven;  // 10 °F a minute up, 5 down
    oven.modeChange = 2_min;
    EXPECT_EQ(oven.changeOver(375_F, OvenMode::Bake, 425_F, OvenMode::Bake), 5_min);
    EXPECT_EQ(oven.changeOver(425_F, OvenMode::Bake, 375_F, OvenMode::Bake), 10_min);
    EXPECT_EQ(oven.changeOver(375_F, OvenMode::Bake, 375_F, OvenMode::Broil), 2_min);
    EXPECT_EQ(oven.changeOver(375_F, OvenMode::Bake, 375_F, OvenMode::Bake), 0_min);
}

TEST(Oven, SettingsAreTheDialsOwn) {
    Oven oven;
    oven.lowest = 170_F;
    oven.highest = 550_F;
    EXPECT_THAT(oven.settingsWithin(360_F, 400_F), ElementsAre(375_F, 400_F));
    EXPECT_THAT(oven.settingsWithin(530_F, 700_F), ElementsAre(550_F));
    oven.dialStep = TemperatureDelta::celsius(10);
    EXPECT_THAT(oven.settingsWithin(175_C, 195_C), ElementsAre(180_C, 190_C));
}

}  // namespace
}  // namespace rangeline::test
