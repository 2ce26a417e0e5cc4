#include "document/repairs.h"

#include <gtest/gtest.h>

#include "document/small_supper.h"

namespace rangeline::test {
namespace {

/// The first finding with that code. Requires one.
Finding findingOf(const LessonState& state, FindingCode code) {
    const auto found = std::ranges::find(state.findings(), code, &Finding::code);
    EXPECT_NE(found, state.findings().end()) << "code " << static_cast<int>(code);
    return *found;
}

const Repair* repairOf(const std::vector<Repair>& repairs, RepairCode code) {
    const auto found = std::ranges::find(repairs, code, &Repair::code);
    return found == repairs.end() ? nullptr : &*found;
}

/// Whether the repair takes that finding away.
bool mends(LessonState& state, const Repair& repair, const Finding& finding) {
    Edit edit = repair.edit;
    state.exchange(edit);
    const auto& findings = state.findings();
    return std::ranges::find(findings, finding) == findings.end();
}

TEST(Repairs, AddTheWash) {
    LessonBuilder builder = placedSupper();
    Step& second = builder.step("second", {hands(2_min), away(8_min)});
    second.heat = onBurner();
    second.wares = {fresh("saute-pan")};
    Placement& placed = builder.place("second", -20);
    assign(placed, "bob");
    placed.burners = {BurnerId{"right"}};
    placed.wares = {{WareId{"pan"}, 0}};
    LessonState state(builder.lesson);
    const Finding finding = findingOf(state, FindingCode::NotYetWashed);
    const auto repairs = repairsFor(state, finding);
    ASSERT_NE(repairOf(repairs, RepairCode::OtherEquipment), nullptr);
    EXPECT_EQ(repairOf(repairs, RepairCode::OtherEquipment)->equipment,
              (EquipmentRef{EquipmentSort::Ware, 1}));
    const Repair* wash = repairOf(repairs, RepairCode::AddWash);
    ASSERT_NE(wash, nullptr);
    EXPECT_EQ(wash->key, PlacementKey(washAfter("char")));
    EXPECT_EQ(wash->at, minute(-30));  // the pan is free then
    EXPECT_TRUE(mends(state, *wash, finding));
}

TEST(Repairs, UseTheOtherBurner) {
    LessonBuilder builder = placedSupper();
    Step& second = builder.step("second", {away(10_min)});
    second.heat = onBurner();
    second.wares = {fresh("saute-pan")};
    Placement& placed = builder.place("second", -45);
    placed.burners = {BurnerId{"left"}};
    placed.wares = {{WareId{"pan"}, 1}};
    LessonState state(builder.lesson);
    const Finding finding = findingOf(state, FindingCode::BurnerTwice);
    const auto repairs = repairsFor(state, finding);
    const Repair* other = repairOf(repairs, RepairCode::OtherEquipment);
    ASSERT_NE(other, nullptr);
    EXPECT_EQ(other->equipment, (EquipmentRef{EquipmentSort::Burner, 1}));
    EXPECT_NE(repairOf(repairs, RepairCode::MoveToFree), nullptr);
    EXPECT_TRUE(mends(state, *other, finding));
}

TEST(Repairs, TurnTheOvenOn) {
    LessonBuilder builder = placedSupper();
    builder.lesson.placements.erase(turningOn("oven"));
    LessonState state(builder.lesson);
    const Finding finding = findingOf(state, FindingCode::OvenNotTurnedOn);
    const auto repairs = repairsFor(state, finding);
    const Repair* turnOn = repairOf(repairs, RepairCode::TurnOnOven);
    ASSERT_NE(turnOn, nullptr);
    EXPECT_EQ(turnOn->at, minute(-51));  // ten minutes and half a minute of hands before -40
    const auto& put = std::get<SetPlacements>(turnOn->edit).changes.front();
    EXPECT_EQ(put.placement->oven->setTo, 425_F);
    EXPECT_TRUE(mends(state, *turnOn, finding));
}

TEST(Repairs, PlaceWhatIsNotPlaced) {
    LessonBuilder builder = placedSupper();
    builder.lesson.placements.erase(key("trim"));
    LessonState state(builder.lesson);
    const Finding finding = findingOf(state, FindingCode::NotPlaced);
    const auto repairs = repairsFor(state, finding);
    const Repair* place = repairOf(repairs, RepairCode::PlaceIt);
    ASSERT_NE(place, nullptr);
    EXPECT_EQ(place->at, minute(-55));
    EXPECT_TRUE(mends(state, *place, finding));
}

TEST(Repairs, PinnedThingsAreOnlyUnpinned) {
    LessonBuilder builder = placedSupper();
    assign(builder.place("trim", -49), "ann");
    for (auto& [placementKey, placement] : builder.lesson.placements) {
        placement.pinned = true;
    }
    LessonState state(builder.lesson);
    const auto repairs = repairsFor(state, findingOf(state, FindingCode::HandsTwice));
    ASSERT_EQ(repairs.size(), 2U);
    for (const Repair& repair : repairs) {
        EXPECT_EQ(repair.code, RepairCode::PinOff);
        EXPECT_FALSE(std::get<SetPlacements>(repair.edit).changes.front().placement->pinned);
    }
}

TEST(Repairs, HandworkIsTimedByThePieceAllOfItOrOne) {
    LessonBuilder builder;
    builder.step("slice", {hands(6_min)});
    builder.step("plate", {hands(4_min)}).plates = true;
    builder.lesson.servings.front().dish.writtenFor = 4;
    builder.lesson.servings.front().covers = 8;
    LessonState state(builder.lesson);
    const Finding finding = findingOf(state, FindingCode::HandworkUnchanged);
    const auto repairs = repairsFor(state, finding);
    ASSERT_EQ(repairs.size(), 3U);
    EXPECT_EQ(repairs[0].code, RepairCode::TimeAllByPiece);
    EXPECT_EQ(repairs[2].key, PlacementKey(key("plate")));
    EXPECT_TRUE(mends(state, repairs[2], finding)) << "of the two one is left";
    EXPECT_EQ(findingOf(state, FindingCode::HandworkUnchanged).keys.size(), 1U);
    LessonState other(builder.lesson);
    EXPECT_TRUE(mends(other, repairs[0], finding));
    EXPECT_TRUE(std::ranges::none_of(other.findings(), [](const Finding& left) {
        return left.code == FindingCode::HandworkUnchanged;
    }));
}

TEST(Repairs, NoneForCautions) {
    LessonBuilder builder = placedSupper();
    builder.get("char").hazards.dangers = {"hot-fat"};
    LessonState state(builder.lesson);
    EXPECT_TRUE(repairsFor(state, findingOf(state, FindingCode::Danger)).empty());
}

TEST(Repairs, LeaveTheLessonAsItIs) {
    LessonBuilder builder = placedSupper();
    assign(builder.place("trim", -49), "ann");
    LessonState state(builder.lesson);
    const Lesson before = state.lesson();
    const auto findings = state.findings();
    for (const Finding& finding : findings) {
        repairsFor(state, finding);
    }
    EXPECT_EQ(state.lesson(), before);
    EXPECT_EQ(state.findings(), findings);
}

}  // namespace
}  // namespace rangeline::test
