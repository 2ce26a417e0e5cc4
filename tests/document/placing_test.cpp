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

}  // namespace
}  // namespace rangeline::test
