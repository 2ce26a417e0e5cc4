#include "document/placing.h"

#include <gtest/gtest.h>

#include "check/check.h"
#include "document/lesson_state.h"
#include "document/small_supper.h"

namespace rangeline::test {
namespace {

constexpr DropTarget onBurnerUnit(int unit) {
    return {{EquipmentSort::Burner, unit}, -1};
}
constexpr DropTarget inSlot(int slot) {
    return {{EquipmentSort::Oven, 0}, slot};
}

int taskOf(const LessonState& state, const char* step) {
    return state.expanded().taskOf(key(step));
}

const Placement& placementIn(const SetPlacements& edit, const PlacementKey& key) {
    return *std::ranges::find(edit.changes, key, &PlacementChange::key)->placement;
}

TEST(Placing, FillsInWhatAStepNeeds) {
    LessonState state(smallSupper().lesson);
    const Placement sear =
        completePlacement(state.index(), taskOf(state, "char"), minute(-50), onBurnerUnit(1));
    EXPECT_EQ(sear.start, minute(-50));
    EXPECT_EQ(sear.burners, std::vector{BurnerId{"right"}});
    EXPECT_EQ(sear.wares, (std::vector{WareSpot{WareId{"pan"}, 0}}));
    EXPECT_EQ(sear.hands, (std::vector{Share{CookId{"ann"}, 0}}));
    EXPECT_EQ(sear.watchers, std::vector{CookId{"ann"}});
    EXPECT_FALSE(sear.oven.has_value());
}

TEST(Placing, ChoosesWhatIsFreeThen) {
    LessonBuilder builder = placedSupper();
    Step& second = builder.step("second", {hands(2_min), away(8_min)});
    second.heat = onBurner();
    second.wares = {fresh("saute-pan")};
    LessonState state(builder.lesson);
    const Placement placed = completePlacement(state.index(), taskOf(state, "second"), minute(-50));
    EXPECT_EQ(placed.burners, std::vector{BurnerId{"right"}});
    EXPECT_EQ(placed.wares, (std::vector{WareSpot{WareId{"pan"}, 1}}));
    EXPECT_EQ(placed.hands.front().cook, CookId{"bob"});
}

TEST(Placing, TakesTheOvenSettingOfItsNeighbours) {
    LessonBuilder builder = placedSupper();
    Step& bread = builder.step("bread", {away(10_min)});
    bread.heat = inOven(375_F, 475_F);
    LessonState state(builder.lesson);
    const Placement placed = completePlacement(state.index(), taskOf(state, "bread"), minute(-30));
    ASSERT_TRUE(placed.oven.has_value());
    EXPECT_EQ(placed.oven->setTo, 425_F);
    EXPECT_EQ(placed.oven->firstSlot, 1);
}

TEST(Placing, TakesTheFirstAcceptedSettingWithoutNeighbours) {
    LessonState state(smallSupper().lesson);
    const Placement roast =
        completePlacement(state.index(), taskOf(state, "roast"), minute(-40), inSlot(1));
    ASSERT_TRUE(roast.oven.has_value());
    EXPECT_EQ(roast.oven->setTo, 400_F);
    EXPECT_EQ(roast.oven->firstSlot, 1);
}

TEST(Placing, AcceptsOnlyWhatTheStepCanUse) {
    LessonState state(placedSupper().lesson);
    EXPECT_TRUE(accepts(state.index(), taskOf(state, "char"), onBurnerUnit(0)));
    EXPECT_FALSE(accepts(state.index(), taskOf(state, "char"), inSlot(0)));
    EXPECT_TRUE(accepts(state.index(), taskOf(state, "roast"), inSlot(1)));
    EXPECT_FALSE(accepts(state.index(), taskOf(state, "trim"), onBurnerUnit(0)));
    EXPECT_TRUE(accepts(state.index(), taskOf(state, "trim"), {{EquipmentSort::Cook, 1}, -1}));
}

TEST(Placing, MovingKeepsTheEquipment) {
    LessonState state(placedSupper().lesson);
    const PlacementKey sear = key("char");
    const SetPlacements edit = moveTo(state.index(), {&sear, 1}, minute(-45), {});
    Placement expected = state.lesson().placements.at(sear);
    expected.start = minute(-45);
    EXPECT_EQ(placementIn(edit, sear), expected);
}

TEST(Placing, MovingToAnotherPanMovesWhatCarriesOnInIt) {
    LessonState state(placedSupper().lesson);
    const PlacementKey simmer = key("simmer");
    const SetPlacements edit =
        moveTo(state.index(), {&simmer, 1}, minute(-38), {{EquipmentSort::Ware, 1}, -1});
    EXPECT_EQ(placementIn(edit, simmer).start, minute(-38));
    EXPECT_EQ(placementIn(edit, key("char")).wares, (std::vector{WareSpot{WareId{"pan"}, 1}}));
    EXPECT_EQ(placementIn(edit, key("char")).start, minute(-50));
}

TEST(Placing, AnotherCookTakesHandsAndWatching) {
    LessonState state(placedSupper().lesson);
    const PlacementKey sear = key("char");
    const SetPlacements edit =
        moveTo(state.index(), {&sear, 1}, minute(-50), {{EquipmentSort::Cook, 1}, -1});
    EXPECT_EQ(placementIn(edit, sear).hands.front().cook, CookId{"bob"});
    EXPECT_EQ(placementIn(edit, sear).watchers, std::vector{CookId{"bob"}});
}

TEST(Placing, ALoadStaysInsideTheOven) {
    LessonBuilder builder = placedSupper();
    builder.lesson.kitchen.wares.back().rackSlots = 2;
    LessonState state(builder.lesson);
    const PlacementKey roast = key("roast");
    const SetPlacements edit = moveTo(state.index(), {&roast, 1}, minute(-40), inSlot(1));
    EXPECT_EQ(placementIn(edit, roast).oven->firstSlot, 0);
}

TEST(Placing, MovingStepsMovesTheirWashesToo) {
    LessonBuilder builder = placedSupper();
    builder.placeWash("char", -30, "bob");
    LessonState state(builder.lesson);
    const std::vector<PlacementKey> keys{key("char"), key("simmer")};
    const SetPlacements edit = moveBy(state.index(), keys, -10_min);
    EXPECT_EQ(edit.changes.size(), 3U);
    EXPECT_EQ(placementIn(edit, washAfter("char")).start, minute(-40));
    EXPECT_EQ(placementIn(edit, key("simmer")).start, minute(-50));
}

TEST(Placing, TakingAwayTakesTheWashAlong) {
    LessonBuilder builder = placedSupper();
    builder.placeWash("char", -30, "bob");
    LessonState state(builder.lesson);
    const PlacementKey sear = key("char");
    Edit edit = takeAway(state.index(), {&sear, 1});
    state.exchange(edit);
    EXPECT_FALSE(state.lesson().placements.contains(sear));
    EXPECT_FALSE(state.lesson().placements.contains(washAfter("char")));
    EXPECT_TRUE(state.lesson().placements.contains(key("simmer")));
}

TEST(Placing, PinsAndUnpins) {
    LessonState state(placedSupper().lesson);
    const PlacementKey sear = key("char");
    Edit edit = setPinned(state.index(), {&sear, 1}, true);
    state.exchange(edit);
    EXPECT_TRUE(state.lesson().placements.at(sear).pinned);
    EXPECT_FALSE(placementIn(setPinned(state.index(), {&sear, 1}, false), sear).pinned);
}

TEST(Placing, GrainIsTheNearestOne) {
    Lesson lesson;
    lesson.head.grain = 5_min;
    EXPECT_EQ(onGrain(lesson, Instant::atSeconds(-149)), minute(0));
    EXPECT_EQ(onGrain(lesson, Instant::atSeconds(-151)), minute(-5));
    EXPECT_EQ(onGrain(lesson, Instant::atSeconds(151)), minute(5));
}

// ---- ovens ----

TEST(Placing, TheFirstLoadTurnsAColdOvenOnInTime) {
    LessonBuilder builder = placedSupper();
    const PlacementKey turnOn = TurnOnKey{OvenId{"oven"}, 0};
    const PlacementKey roast = key("roast");
    const Placement before = builder.lesson.placements.at(roast);
    builder.lesson.placements.erase(turnOn);
    builder.lesson.placements.erase(roast);
    LessonState state(builder.lesson);
    const SetPlacements edit =
        placeTask(state.index(), taskOf(state, "roast"), before.start, inSlot(0));
    ASSERT_EQ(edit.changes.size(), 2U);
    const Placement on = placementIn(edit, turnOn);
    const Placement load = placementIn(edit, roast);
    EXPECT_EQ(on.oven->setTo, load.oven->setTo);
    const Duration warm = state.index().ovenOf(0).warmUpTo(load.oven->setTo);
    EXPECT_LE(on.start + turnOnTakes + warm, load.start);
    EXPECT_LT(load.start, on.start + turnOnTakes + warm + state.lesson().head.grain);
    EXPECT_LE(state.collisionsAdded(edit), 0);
}

TEST(Placing, AnOvenThatIsOnIsNotTurnedOnAgain) {
    LessonBuilder builder = placedSupper();
    builder.step("bread", {away(10_min)}).heat = inOven(375_F, 475_F);
    LessonState state(builder.lesson);
    const SetPlacements edit =
        placeTask(state.index(), taskOf(state, "bread"), minute(-30), inSlot(1));
    EXPECT_EQ(edit.changes.size(), 1U);
}

TEST(Placing, TheLastLoadTakenAwayLeavesTheOvenCold) {
    LessonBuilder builder = placedSupper();
    const PlacementKey roast = key("roast");
    const PlacementKey turnOn = TurnOnKey{OvenId{"oven"}, 0};
    const auto touches = [&](const SetPlacements& edit) {
        return std::ranges::count(edit.changes, turnOn, &PlacementChange::key) > 0;
    };
    EXPECT_TRUE(touches(takeAway(LessonState(builder.lesson).index(), {&roast, 1})));
    builder.lesson.placements.at(turnOn).pinned = true;
    EXPECT_FALSE(touches(takeAway(LessonState(builder.lesson).index(), {&roast, 1})));
}

TEST(Placing, AnotherOvenIsSetToWhatItOffers) {
    LessonBuilder builder = placedSupper();
    builder.oven("small").highest = 400_F;
    LessonState state(builder.lesson);
    const SetPlacements edit = placeTask(state.index(), taskOf(state, "roast"), minute(-40),
                                         {{EquipmentSort::Oven, 1}, 0});
    const Placement roast = placementIn(edit, key("roast"));
    EXPECT_EQ(roast.oven->oven, OvenId{"small"});
    EXPECT_EQ(roast.oven->setTo, 400_F);
}

TEST(Placing, AnotherOvenKeepsASettingThatItOffers) {
    LessonBuilder builder = placedSupper();
    builder.oven("other");
    LessonState state(builder.lesson);
    const SetPlacements edit = placeTask(state.index(), taskOf(state, "roast"), minute(-40),
                                         {{EquipmentSort::Oven, 1}, 0});
    EXPECT_EQ(placementIn(edit, key("roast")).oven->setTo, 425_F);
}

TEST(Placing, TurningOnGoesAlongWithTheFirstLoad) {
    LessonBuilder builder = placedSupper();
    const PlacementKey roast = key("roast");
    const PlacementKey turnOn = TurnOnKey{OvenId{"oven"}, 0};
    const Instant on = builder.lesson.placements.at(turnOn).start;
    const auto moved = [&](Instant to) {
        const LessonState state(builder.lesson);
        const SetPlacements edit = moveTo(state.index(), {&roast, 1}, to, {});
        const auto change = std::ranges::find(edit.changes, turnOn, &PlacementChange::key);
        return change == edit.changes.end() ? on : change->placement->start;
    };
    EXPECT_EQ(moved(minute(-45)), on - 5_min);
    EXPECT_EQ(moved(minute(-30)), on + 10_min);
    builder.lesson.placements.at(turnOn).pinned = true;
    EXPECT_EQ(moved(minute(-45)), on) << "what is pinned stays";
    builder.lesson.placements.at(turnOn).pinned = false;
    Step& bread = builder.step("bread", {away(10_min)});
    bread.heat = inOven(400_F, 450_F);
    builder.place("bread", -38).oven = spot("oven", 425_F, 1);
    EXPECT_EQ(moved(minute(-30)), on + 2_min) << "the bread is then the first load";
}

// ---- what has begun ----

TEST(Placing, WhatHasBegunEndsWhenSaid) {
    LessonBuilder builder = placedSupper();
    const PlacementKey roast = key("roast");
    EXPECT_TRUE(endAt(LessonState(builder.lesson).index(), roast, minute(-5)).changes.empty());
    builder.lesson.placements.at(roast).started = true;
    const LessonState state(builder.lesson);
    EXPECT_EQ(placementIn(endAt(state.index(), roast, minute(-5)), roast).lasts, 35_min);
    EXPECT_EQ(placementIn(endAt(state.index(), roast, minute(-60)), roast).lasts, 1_min);
}

TEST(Placing, WhatHasBegunStays) {
    LessonBuilder builder = placedSupper();
    const PlacementKey roast = key("roast");
    builder.lesson.placements.at(roast).started = true;
    const LessonState state(builder.lesson);
    const std::vector<PlacementKey> both{key("char"), roast};
    EXPECT_TRUE(takeAway(state.index(), {&roast, 1}).changes.empty());
    EXPECT_TRUE(setPinned(state.index(), {&roast, 1}, false).changes.empty());
    EXPECT_TRUE(moveTo(state.index(), {&roast, 1}, minute(-30), inSlot(1)).changes.empty());
    for (const PlacementChange& change : moveBy(state.index(), both, 5_min).changes) {
        if (change.key == roast) {
            EXPECT_EQ(change.placement, builder.lesson.placements.at(roast));
        }
    }
}

}  // namespace
}  // namespace rangeline::test
