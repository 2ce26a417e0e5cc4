// The limits: household 2 h (USDA FSIS), Food Code 4 h (3-501.19(B)); see tests/safety.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

constexpr auto code = FindingCode::OutOfTemperatureTooLong;

/// Leeks cooked on a burner for 10 min from `made`, used by the plating step at minute -5.
LessonBuilder cookedLeeks(std::int64_t made) {
    LessonBuilder builder;
    builder.burner("left");
    builder.ware("pan", "saute-pan");
    builder.step("cook", {hands(10_min)}).heat = onBurner();
    builder.get("cook").hazards.food = "cooked-plant";
    builder.step("plate", {hands(5_min)});
    builder.uses("plate", "cook");
    builder.place("cook", made);
    builder.place("plate", -5);
    return builder;
}

TEST(CautionTimeOut, HeatedFoodCountsFromTheEndOfItsStep) {
    // Made until -126, used at -5: out for 121 min, one more than the household limit.
    const auto found = findingsOf(cookedLeeks(-136).lesson, code);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("cook"), key("plate")));
    EXPECT_EQ(found[0].interval, minutes(-126, -5));
    EXPECT_THAT(found[0].figures,
                ElementsAre(Figure(121_min), Figure(2_h), Figure(std::string("usda-danger-zone"))));
    EXPECT_EQ(found[0].severity, Severity::Caution);
}

TEST(CautionTimeOut, ExactlyTheLimitIsWithinIt) {
    EXPECT_THAT(findingsOf(cookedLeeks(-135).lesson, code), IsEmpty());
}

TEST(CautionTimeOut, TheFoodCodeAllowsFourHours) {
    auto builder = cookedLeeks(-136);
    builder.lesson.head.profile = SafetyProfile::FoodCode;
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    builder.place("cook", -256);
    EXPECT_THAT(findingsOf(builder.lesson, code), SizeIs(1));
}

// USDA FSIS (read in copies): no more than one hour where the room is above 90 °F.
TEST(CautionTimeOut, AHotRoomHalvesTheHouseholdLimitAndNoOther) {
    auto builder = cookedLeeks(-76);  // made until -66, used at -5: 61 min
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    builder.lesson.kitchen.room = Temperature::fahrenheit(90);
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    builder.lesson.kitchen.room = Temperature::fahrenheit(91);
    const auto found = findingsOf(builder.lesson, code);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].figures[1], Figure(1_h));
    builder.place("cook", -75);
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    builder.place("cook", -200);
    builder.lesson.head.profile = SafetyProfile::FoodCode;
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
}

TEST(CautionTimeOut, FoodKeptColdOrHotIsNotOut) {
    auto builder = cookedLeeks(-300);
    for (const Storage storage : {Storage::Cold, Storage::HotOnBurner, Storage::HotInOven}) {
        builder.get("cook").after.storage = storage;
        EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    }
}

TEST(CautionTimeOut, FoodThatNeedsNoControlMayStandOut) {
    auto builder = cookedLeeks(-300);
    for (const char* food : {"nuts", "", "something of the cook's own"}) {
        builder.get("cook").hazards.food = food;
        EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    }
}

TEST(CautionTimeOut, UnheatedWorkCountsFromItsStart) {
    LessonBuilder builder;
    builder.step("cut", {hands(30_min)}).hazards.food = "cut-tomatoes";
    builder.step("plate", {hands(5_min)});
    builder.uses("plate", "cut");
    builder.place("plate", -5);
    builder.place("cut", -125);  // from -125 to -5: exactly 2 h
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    builder.place("cut", -126);
    EXPECT_THAT(findingsOf(builder.lesson, code), SizeIs(1));
}

// Cold until it is dressed, then out: from -140 to -5, past the two hours of the household.
TEST(CautionTimeOut, FoodFromTheColdCountsFromTheWorkThatTakesItUp) {
    LessonBuilder builder;
    builder.step("boil", {hands(10_min)}).hazards.food = "cooked-plant";
    builder.get("boil").after.storage = Storage::Cold;
    builder.step("dress", {hands(10_min)});
    builder.step("plate", {hands(5_min)});
    builder.uses("dress", "boil");
    builder.uses("plate", "dress");
    builder.place("boil", -200);
    builder.place("dress", -140);
    builder.place("plate", -5);
    const auto found = findingsOf(builder.lesson, code);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval, minutes(-140, -5));
    builder.place("dress", -100);
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
}

TEST(CautionTimeOut, AStepInTheFridgeIsNotOut) {
    LessonBuilder builder;
    builder.pool("shelf", "fridge-shelf", 1);
    builder.step("chill", {away(180_min)}).hazards.food = "dairy";
    builder.get("chill").pools = {{PoolId{"shelf"}, 1}};
    builder.step("plate", {hands(5_min)});
    builder.uses("plate", "chill");
    builder.place("chill", -190);
    builder.place("plate", -5);
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
}

/// Leeks cooked until -150, cooled in the open until `cooled`, cut until -20, on the plate from -5.
LessonBuilder cooledAndCutLeeks(std::int64_t cooled) {
    auto builder = cookedLeeks(-160);
    builder.get("plate").uses.clear();
    builder.step("cool", {away(30_min)}).uses = {{StepId{"cook"}, false}};
    builder.step("cut", {hands(10_min)}).uses = {{StepId{"cool"}, false}};
    builder.uses("plate", "cut");
    builder.place("cool", cooled);
    builder.place("cut", -30);
    return builder;
}

TEST(CautionTimeOut, UnheatedStepsOneAfterTheOtherAddUp) {
    const auto found = findingsOf(cooledAndCutLeeks(-150).lesson, code);
    ASSERT_THAT(found, SizeIs(1)) << "one clock, not one for each step";
    EXPECT_THAT(found[0].keys, ElementsAre(key("cook"), key("plate")));
    EXPECT_EQ(found[0].interval, minutes(-150, -5));
}

TEST(CautionTimeOut, TheClockStopsWhereTheFoodIsPutInTheCold) {
    auto builder = cooledAndCutLeeks(-150);
    builder.get("cool").after.storage = Storage::Cold;
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty()) << "out for half an hour";
    builder.place("cool", -60);  // warm in the pan until then: from -150 to -30
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty()) << "exactly 2 h";
    builder.place("cook", -161);
    const auto found = findingsOf(builder.lesson, code);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("cook"), key("cool")));
    EXPECT_EQ(found[0].interval, minutes(-151, -30));
}

TEST(CautionTimeOut, MovingAnEarlierStepStartsTheClockOfALaterOneAnew) {
    auto builder = cooledAndCutLeeks(-150);
    Lesson& lesson = builder.lesson;
    const Expanded expanded = expand(lesson);
    UseIndex index(lesson, expanded);
    lesson.placements[key("cook")].start = Instant::atMinutes(-130);
    lesson.placements[key("cool")].start = Instant::atMinutes(-120);
    const auto touched = index.update(std::vector<PlacementKey>{key("cook"), key("cool")});
    const auto& waits = touched.of(Subject::Wait);
    for (int wait = 0; wait < index.count(Subject::Wait); ++wait) {
        const auto& of = expanded.waits[static_cast<std::size_t>(wait)];
        if (of.origin == WaitOrigin::Uses) {
            EXPECT_THAT(waits, testing::Contains(wait));
        }
    }
}

TEST(CautionTimeOut, FoodMadeAheadAndLeftOut) {
    auto builder = cookedLeeks(-136);
    builder.lesson.placements.erase(key("cook"));
    builder.get("cook").after.mayBeDoneAhead = true;
    builder.lesson.choices.doneAhead = {{StepId{"cook"}, 126_min, Storage::Room, {}, {}}};
    const auto found = findingsOf(builder.lesson, code);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("plate")));
    EXPECT_EQ(found[0].interval, minutes(-126, -5));
    builder.lesson.choices.doneAhead[0].storage = Storage::Cold;
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
}

TEST(CautionTimeOut, NotYetPlacedIsNotJudged) {
    auto builder = cookedLeeks(-300);
    builder.lesson.placements.erase(key("plate"));
    EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
}

}  // namespace
}  // namespace rangeline::test
