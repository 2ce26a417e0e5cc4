// The rest of a lesson arranged while it is being cooked.

#include <gmock/gmock.h>

#include "arrange/verified.h"
#include "model/validate.h"
#include "support/lesson_builder.h"
#include "support/off_plan.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

/// What may be wrong and cannot be excused.
std::vector<Finding> inexcusable(const OffPlan& cooked, const Placements& placements) {
    Lesson lesson = cooked.lesson;
    lesson.placements = placements;
    std::vector<Finding> findings = checkLesson(lesson, expand(lesson));
    std::erase_if(findings,
                  [&](const Finding& f) { return isExcused(f, lesson, cooked.underway); });
    return findings;
}

void expectKeepsThePast(const OffPlan& cooked, const Placements& placements) {
    for (const auto& [key, placement] : cooked.lesson.placements) {
        if (placement.started) {
            ASSERT_TRUE(placements.contains(key));
            EXPECT_EQ(placements.at(key), placement);
        }
    }
    for (const auto& [key, placement] : placements) {
        const bool turnOn = std::holds_alternative<TurnOnKey>(key);
        const Instant grainBefore = cooked.underway.now - cooked.lesson.head.grain;
        EXPECT_TRUE(placement.started || turnOn || placement.start > grainBefore);
        EXPECT_FALSE(cooked.underway.leftOut.contains(key));
        const auto putOff = cooked.underway.notBefore.find(key);
        if (putOff != cooked.underway.notBefore.end() && !turnOn) {
            EXPECT_GE(placement.start, putOff->second);
        }
    }
}

ArrangeResult arrangeRest(const OffPlan& cooked, std::int64_t conflicts = 2000) {
    ArrangeOptions options;
    options.underway = cooked.underway;
    options.conflictLimit = conflicts;
    ArrangeResult result = arrange(cooked.lesson, options);
    if (!result.placements.empty()) {
        expectKeepsThePast(cooked, result.placements);
    }
    return result;
}

// ---- by hand --------------------------------------------------------------------------------

/// The placement begun at that minute and second, as long as stated.
void begin(Lesson& lesson, const PlacementKey& key, Instant start, Duration lasts) {
    Placement& placement = lesson.placements.at(key);
    placement.start = start;
    placement.started = true;
    placement.lasts = lasts;
}

Instant startOf(const ArrangeResult& result, const PlacementKey& key) {
    return result.placements.at(key).start;
}

/// A roast of 40 min in the oven, turned on at -70; a salad of 10 min by hand at -20; plated at -5.
LessonBuilder roastAndSalad() {
    LessonBuilder builder;
    builder.oven("oven");
    Step& roast = builder.step("roast", {away(40_min)});
    roast.heat = inOven(350_F, 350_F);
    builder.step("salad", {hands(10_min)});
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    builder.uses("plate", "roast");
    builder.uses("plate", "salad");
    builder.placeTurnOn("oven", minute(-70), 350_F, "ann");
    builder.place("roast", -50).oven = spot("oven", 350_F);
    assign(builder.place("salad", -20), "ann");
    assign(builder.place("plate", -5), "ann");
    return builder;
}

TEST(ArrangeUnderway, PlanThatStillHoldsIsLeftAsItIs) {
    OffPlan cooked{roastAndSalad().lesson, {minute(-30), {}, {}, true}};
    begin(cooked.lesson, turningOn("oven"), minute(-70), 30_s);
    begin(cooked.lesson, key("roast"), minute(-50) + 7_s, 40_min);
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(result.status, ArrangeStatus::Proved);
    EXPECT_EQ(result.placements, cooked.lesson.placements);
}

TEST(ArrangeUnderway, LateOvenPutsOffThePlateAndNothingElse) {
    OffPlan cooked{roastAndSalad().lesson, {minute(-40), {}, {}, true}};
    begin(cooked.lesson, turningOn("oven"), minute(-70), 30_s);
    // It went in at -42 and 20 s, so it comes out 2 min and 20 s before serving.
    begin(cooked.lesson, key("roast"), minute(-42) - 20_s, 40_min);
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(result.status, ArrangeStatus::Proved);
    EXPECT_EQ(startOf(result, key("plate")), minute(-2)) << "on the grain again";
    EXPECT_EQ(startOf(result, key("salad")), minute(-20));
}

TEST(ArrangeUnderway, WhatIsDueWaitsForTheCookWhoIsBusy) {
    OffPlan cooked{roastAndSalad().lesson, {minute(-18), {}, {}, true}};
    begin(cooked.lesson, turningOn("oven"), minute(-70), 30_s);
    begin(cooked.lesson, key("roast"), minute(-50), 40_min);
    cooked.underway.notBefore[key("salad")] = minute(-17) + 1_s;
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(startOf(result, key("salad")), minute(-16));
    EXPECT_EQ(startOf(result, key("plate")), minute(-5));
}

TEST(ArrangeUnderway, DoneEarlyFreesTheHandsButMovesNothingByItself) {
    OffPlan cooked{roastAndSalad().lesson, {minute(-16), {}, {}, true}};
    begin(cooked.lesson, turningOn("oven"), minute(-70), 30_s);
    begin(cooked.lesson, key("roast"), minute(-50), 33_min);
    begin(cooked.lesson, key("salad"), minute(-20), 4_min);
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(startOf(result, key("plate")), minute(-5));
}

TEST(ArrangeUnderway, SkippedStepTakesNoTimeAndHoldsUpNothing) {
    OffPlan cooked{roastAndSalad().lesson, {minute(-12), {key("salad")}, {}, true}};
    begin(cooked.lesson, turningOn("oven"), minute(-70), 30_s);
    begin(cooked.lesson, key("roast"), minute(-50), 40_min);
    cooked.lesson.placements.erase(key("salad"));
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(startOf(result, key("plate")), minute(-5));
    EXPECT_FALSE(result.placements.contains(key("salad")));
}

TEST(ArrangeUnderway, HandsThatAreInTwoPlacesAlreadyForbidNothingElse) {
    LessonBuilder builder;
    builder.step("first", {hands(10_min)});
    builder.step("second", {hands(10_min)});
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    assign(builder.place("first", -30), "ann");
    assign(builder.place("second", -20), "ann");
    assign(builder.place("plate", -5), "ann");
    OffPlan cooked{builder.lesson, {minute(-20), {}, {}, true}};
    begin(cooked.lesson, key("first"), minute(-26), 20_min);
    begin(cooked.lesson, key("second"), minute(-24), 22_min);
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(result.status, ArrangeStatus::Proved);
    EXPECT_EQ(startOf(result, key("plate")), minute(-2)) << "when both are done";
}

/// The one pan is used, washed and used again.
LessonBuilder onePanTwice() {
    LessonBuilder builder;
    builder.burner("front");
    builder.ware("pan", "saute-pan").cleaning.takes = 3_min;
    Step& sear = builder.step("sear", {hands(10_min)});
    sear.heat = onBurner();
    sear.wares = {fresh("saute-pan")};
    sear.wares.front().turnedOut = true;
    Step& fry = builder.step("fry", {hands(10_min)});
    fry.heat = onBurner();
    fry.wares = {fresh("saute-pan")};
    fry.wares.front().turnedOut = true;
    fry.plates = true;
    for (const auto& [step, at] : {std::pair("sear", -40), std::pair("fry", -10)}) {
        Placement& placement = builder.place(step, at);
        assign(placement, "ann");
        placement.burners = {BurnerId{"front"}};
        placement.wares = {{WareId{"pan"}, 0}};
    }
    builder.placeWash("sear", -20, "ann");
    return builder;
}

TEST(ArrangeUnderway, DirtyPanIsWashedBeforeItIsUsedAgain) {
    OffPlan cooked{onePanTwice().lesson, {minute(-25), {}, {}, true}};
    begin(cooked.lesson, key("sear"), minute(-40), 31_min);  // until -9
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(result.status, ArrangeStatus::Proved);
    EXPECT_EQ(startOf(result, washAfter("sear")), minute(-9));
    EXPECT_EQ(startOf(result, key("fry")), minute(-6));
}

TEST(ArrangeUnderway, WashThatWasSkippedIsAskedForNoMore) {
    OffPlan cooked{onePanTwice().lesson, {minute(-25), {washAfter("sear")}, {}, true}};
    begin(cooked.lesson, key("sear"), minute(-40), 29_min);  // until -11
    cooked.lesson.placements.erase(washAfter("sear"));
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(startOf(result, key("fry")), minute(-10));
    EXPECT_FALSE(result.placements.contains(washAfter("sear")));
}

TEST(ArrangeUnderway, FoodThatHasKeptTooLongAlreadyIsUsedAtOnce) {
    LessonBuilder builder = roastAndSalad();
    builder.get("salad").after.atRoom = 5_min;
    OffPlan cooked{builder.lesson, {minute(-1), {}, {}, true}};
    begin(cooked.lesson, turningOn("oven"), minute(-70), 30_s);
    begin(cooked.lesson, key("roast"), minute(-50), 52_min);  // until +2
    begin(cooked.lesson, key("salad"), minute(-20), 10_min);  // keeps until -5
    const ArrangeResult result = arrangeRest(cooked);
    EXPECT_EQ(startOf(result, key("plate")), minute(2));
}

TEST(ArrangeUnderway, PinIsKeptWhileItCanBe) {
    LessonBuilder builder = roastAndSalad();
    OffPlan cooked{builder.lesson, {minute(-40), {}, {}, true}};
    begin(cooked.lesson, turningOn("oven"), minute(-70), 30_s);
    begin(cooked.lesson, key("roast"), minute(-50), 40_min);
    cooked.lesson.placements[key("salad")].pinned = true;
    EXPECT_EQ(startOf(arrangeRest(cooked), key("salad")), minute(-20));
    cooked.underway.now = minute(-19);
    EXPECT_EQ(startOf(arrangeRest(cooked), key("salad")), minute(-19)) << "its time is past";
}

// ---- at random ------------------------------------------------------------------------------

Lesson planned(Random& random, const RandomLessonSize& size) {
    Lesson lesson = randomLesson(random, size);
    ArrangeOptions options;
    options.conflictLimit = 1000;
    lesson.placements = arrange(lesson, options).placements;
    return lesson;
}

void arrangeManyOffPlan(const RandomLessonSize& size, int count, const Straying& straying = {}) {
    const std::uint64_t seed = seedOr(20267);
    int cooked = 0;
    int found = 0;
    for (int i = 0; i < count; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        const Lesson lesson = planned(random, size);
        if (lesson.placements.empty()) {
            continue;
        }
        const OffPlan off = cookOffPlan(random, lesson, straying);
        const ArrangeResult result = arrangeRest(off);
        ++cooked;
        found += result.placements.empty() ? 0 : 1;
        if (!result.placements.empty()) {
            Lesson anew = off.lesson;
            anew.placements = result.placements;
            const auto findings = inexcusable(off, result.placements);
            EXPECT_TRUE(findings.empty()) << "now " << off.underway.now.inSeconds() << '\n'
                                          << describe(anew, findings);
        }
        if (testing::Test::HasFailure()) {
            return;
        }
    }
    EXPECT_GT(cooked, count / 6);
    // Out of turn it may happen that food waits in the only pan for what needs that pan.
    EXPECT_GE(found, cooked - cooked / 10);
}

TEST(ArrangeUnderway, RandomLessonsOffPlanGiveNothingThatIsNotExcused) {
    arrangeManyOffPlan({}, 300);
}

TEST(ArrangeUnderway, RandomLessonsWithBatchesGiveNothingThatIsNotExcused) {
    RandomLessonSize size;
    size.batches = 0.8;
    size.burnerSteps = 0.6;
    arrangeManyOffPlan(size, 150);
}

TEST(ArrangeUnderway, RandomLessonsWithTwoOvensAndChoicesGiveNothingThatIsNotExcused) {
    RandomLessonSize size;
    size.ovens = 2;
    size.ovenSteps = 0.5;
    size.choices = 0.3;
    size.components = 4;
    arrangeManyOffPlan(size, 150);
}

TEST(ArrangeUnderway, RandomLessonsForGroupsGiveNothingThatIsNotExcused) {
    RandomLessonSize size;
    size.groups = 3;
    size.components = 2;
    arrangeManyOffPlan(size, 60);
}

TEST(ArrangeUnderway, RandomLessonsFarOffPlanGiveNothingThatIsNotExcused) {
    arrangeManyOffPlan({}, 200, {1500, 10, 300, 0.4, Duration::minutes(20), 0.1, 0.3});
}

}  // namespace
}  // namespace rangeline::test
