#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Chicken at 425 °F in the upper slot [-100, -60); gratin for 40 min in the lower one.
LessonBuilder oven(std::int64_t gratin, Temperature gratinAt) {
    LessonBuilder builder;
    builder.oven("oven");
    const auto load = [&](const char* id, int slot, Temperature setTo, std::int64_t at) {
        builder.step(id, {away(40_min)}).heat = inOven(350_F, 425_F);
        builder.place(id, at).oven = spot("oven", setTo, slot);
    };
    load("chicken", 0, 425_F, -100);
    load("gratin", 1, gratinAt, gratin);
    builder.placeTurnOn("oven", minute(-200), 425_F, "ann");
    return builder;
}

TEST(OvenSettings, AlikeLoadsShareTheOvenAndNeedNoGap) {
    for (const std::int64_t gratin : {-120, -90, -60}) {
        const auto builder = oven(gratin, 425_F);
        EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenTwoTemperatures), IsEmpty());
        EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenChangedTooFast), IsEmpty());
    }
}

TEST(OvenSettings, TwoTemperaturesAtOnce) {
    const auto found = findingsOf(oven(-80, 375_F).lesson, FindingCode::OvenTwoTemperatures);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("chicken"), key("gratin")));
    EXPECT_EQ(found[0].interval, minutes(-80, -60));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(425_F), Figure(375_F)));
}

TEST(OvenSettings, TwoModesAtOnce) {
    auto builder = oven(-80, 425_F);
    builder.lesson.placements.at(key("gratin")).oven->mode = OvenMode::Convection;
    const auto found = findingsOf(builder.lesson, FindingCode::OvenTwoModes);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure("bake"), Figure("convection")));
}

// 50 °F down at 5 °F a minute takes 10 min.
TEST(OvenChange, NeedsTheTimeToCool) {
    EXPECT_THAT(findingsOf(oven(-50, 375_F).lesson, FindingCode::OvenChangedTooFast), IsEmpty());
    const auto found = findingsOf(oven(-51, 375_F).lesson, FindingCode::OvenChangedTooFast);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("chicken"), key("gratin")));
    EXPECT_EQ(found[0].interval, minutes(-60, -51));
    EXPECT_THAT(found[0].figures,
                ElementsAre(Figure(10_min), Figure(9_min), Figure(425_F), Figure(375_F)));
}

TEST(OvenChange, TouchingLoadsOfTwoSettings) {
    EXPECT_THAT(findingsOf(oven(-60, 375_F).lesson, FindingCode::OvenChangedTooFast), SizeIs(1));
    EXPECT_THAT(findingsOf(oven(-60, 375_F).lesson, FindingCode::OvenTwoTemperatures), IsEmpty());
}

// 50 °F up at 10 °F a minute takes 5 min.
TEST(OvenChange, HeatsFasterThanItCools) {
    EXPECT_THAT(findingsOf(oven(-145, 375_F).lesson, FindingCode::OvenChangedTooFast), IsEmpty());
    EXPECT_THAT(findingsOf(oven(-144, 375_F).lesson, FindingCode::OvenChangedTooFast), SizeIs(1));
}

TEST(OvenChange, ModeChangeCountsToo) {
    auto builder = oven(-58, 425_F);
    builder.lesson.kitchen.ovens[0].modeChange = 3_min;
    builder.lesson.placements.at(key("gratin")).oven->mode = OvenMode::Convection;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenChangedTooFast), SizeIs(1));
    builder.place("gratin", -57).oven = {{OvenId{"oven"}, 1, 425_F, OvenMode::Convection}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenChangedTooFast), IsEmpty());
}

TEST(OvenChange, EmptyFromWhenTheLastLoadLeaves) {
    auto builder = oven(-90, 425_F);  // leaves at -50
    builder.step("crumb", {away(10_min)}).heat = inOven(300_F, 350_F);
    builder.place("crumb", -40).oven = spot("oven", 350_F);
    const auto found = findingsOf(builder.lesson, FindingCode::OvenChangedTooFast);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("gratin"), key("crumb")));
}

TEST(OvenSlots, OneSlotForTwo) {
    auto builder = oven(-80, 425_F);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenSlotTwice), IsEmpty());
    builder.lesson.placements.at(key("gratin")).oven->firstSlot = 0;
    const auto found = findingsOf(builder.lesson, FindingCode::OvenSlotTwice);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::int64_t{1})));
    EXPECT_EQ(found[0].interval, minutes(-80, -60));
    builder.place("gratin", -60).oven = spot("oven", 425_F);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenSlotTwice), IsEmpty());
}

TEST(OvenSlots, TheVesselDecidesHowMany) {
    auto builder = oven(-80, 425_F);
    builder.ware("roaster", "roasting-pan").rackSlots = 2;
    builder.get("gratin").wares = {fresh("roasting-pan")};
    builder.lesson.placements.at(key("gratin")).wares = {{WareId{"roaster"}, 0}};
    const auto few = findingsOf(builder.lesson, FindingCode::OvenTooFewSlots);
    ASSERT_THAT(few, SizeIs(1));
    EXPECT_THAT(few[0].figures, ElementsAre(Figure(std::int64_t{2}), Figure(std::int64_t{1})));
    builder.lesson.placements.at(key("gratin")).oven->firstSlot = 0;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenTooFewSlots), IsEmpty());
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenSlotTwice), SizeIs(1));
}

TEST(OvenWarm, TurningOnTakesHalfAMinuteAndWarmingUpTen) {
    auto builder = oven(-80, 425_F);
    builder.placeTurnOn("oven", minute(-111), 425_F, "ann");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenNotWarm), IsEmpty());
    builder.placeTurnOn("oven", minute(-110), 425_F, "ann");
    const auto found = findingsOf(builder.lesson, FindingCode::OvenNotWarm);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("chicken")));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(10_min), Figure(9_min + 30_s)));
}

TEST(OvenWarm, NotTurnedOn) {
    auto builder = oven(-80, 425_F);
    builder.lesson.placements.erase(turningOn("oven"));
    const auto found = findingsOf(builder.lesson, FindingCode::OvenNotTurnedOn);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("chicken")));
}

TEST(OvenWarm, TurnedOnToAnotherSetting) {
    auto builder = oven(-80, 425_F);
    builder.placeTurnOn("oven", minute(-200), 350_F, "ann");
    const auto found = findingsOf(builder.lesson, FindingCode::OvenTwoTemperatures);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(turningOn("oven"), key("chicken")));
    builder.lesson.placements.at(turningOn("oven")).started = true;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenTwoTemperatures), IsEmpty())
        << "its dial is turned once it is on";
}

/// The chicken wants the door shut in [-100, -60).
LessonBuilder shutDoor(std::int64_t gratin) {
    auto builder = oven(gratin, 425_F);
    OvenHeat heat = inOven(350_F, 425_F);
    heat.doorShut = true;
    builder.get("chicken").heat = heat;
    return builder;
}

TEST(OvenDoor, NothingGoesInOrOutStrictlyInside) {
    for (const std::int64_t gratin : {-139, -101, -99, -61}) {
        EXPECT_THAT(findingsOf(shutDoor(gratin).lesson, FindingCode::DoorOpened), SizeIs(1))
            << gratin;
    }
    for (const std::int64_t gratin : {-140, -100, -60, -50}) {
        EXPECT_THAT(findingsOf(shutDoor(gratin).lesson, FindingCode::DoorOpened), IsEmpty())
            << gratin;
    }
}

TEST(OvenDoor, ALongerLoadMayBeAroundAShutOne) {
    auto builder = shutDoor(-110);
    builder.lesson.placements.at(key("gratin")).lasts = 60_min;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::DoorOpened), IsEmpty());
}

TEST(OvenDoor, HandsOnlyAtTheEnds) {
    auto builder = shutDoor(-40);
    builder.get("chicken").segments = {hands(2_min), away(36_min), hands(2_min)};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::HandsBehindShutDoor), IsEmpty());
    builder.get("chicken").segments = {away(20_min), hands(2_min), away(18_min)};
    const auto found = findingsOf(builder.lesson, FindingCode::HandsBehindShutDoor);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].interval.length(), 2_min);
}

TEST(OvenFit, OutsideTheRangeOffTheDialAndInAnotherMode) {
    auto builder = oven(-50, 450_F);
    const auto outside = findingsOf(builder.lesson, FindingCode::OvenOutsideRange);
    ASSERT_THAT(outside, SizeIs(1));
    EXPECT_THAT(outside[0].figures, ElementsAre(Figure(450_F), Figure(350_F), Figure(425_F)));
    builder.lesson.placements.at(key("gratin")).oven = spot("oven", 360_F, 1);
    const auto off = findingsOf(builder.lesson, FindingCode::OvenOffDial);
    ASSERT_THAT(off, SizeIs(1));
    EXPECT_THAT(off[0].figures, ElementsAre(Figure(360_F), Figure("25 F")));
    builder.lesson.placements.at(key("gratin")).oven->mode = OvenMode::Convection;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OvenWrongMode), SizeIs(1));
}

}  // namespace
}  // namespace rangeline::test
