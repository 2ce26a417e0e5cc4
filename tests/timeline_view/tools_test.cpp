#include <gtest/gtest.h>

#include "document/small_supper.h"
#include "timeline_view/carry_tool.h"
#include "timeline_view/fake_adapter.h"
#include "timeline_view/point_tool.h"

namespace rangeline::test {
namespace {

constexpr int slotOne = 0;
constexpr int slotTwo = 1;
constexpr int leftBurner = 2;
constexpr int rightBurner = 3;

std::vector<DropTarget> lanesOfSupper() {
    return {{{EquipmentSort::Oven, 0}, 0},
            {{EquipmentSort::Oven, 0}, 1},
            {{EquipmentSort::Burner, 0}, -1},
            {{EquipmentSort::Burner, 1}, -1}};
}

/// Ten units are a minute.
PointerAt pointer(std::int64_t atMinute, int lane, const char* step = nullptr) {
    PointerAt at;
    at.at = minute(atMinute);
    at.position = QPointF(static_cast<double>(atMinute) * 10, lane * 30.0);
    at.lane = lane;
    if (step != nullptr) {
        at.key = key(step);
    }
    return at;
}

class ToolsTest : public testing::Test {
  protected:
    Placement now(const char* step) const { return state_.lesson().placements.at(key(step)); }
    CarryTool carrying(const std::vector<StepKey>& steps) {
        return {adapter_, Carry::ofSteps(adapter_, steps)};
    }
    CarryTool carryingPlaced(const char* step) {
        return {adapter_, Carry::ofPlaced(adapter_, {key(step)})};
    }

    LessonState state_{placedSupper().lesson};
    Lesson before_ = state_.lesson();
    FakeAdapter adapter_{state_, lanesOfSupper()};
};

TEST_F(ToolsTest, AClickSelects) {
    PointTool tool(adapter_);
    EXPECT_FALSE(tool.press(pointer(-45, leftBurner, "char")));
    EXPECT_FALSE(tool.release(pointer(-45, leftBurner, "char")));
    EXPECT_EQ(adapter_.selected, std::vector<PlacementKey>{key("char")});
    EXPECT_EQ(state_.lesson(), before_);
}

TEST_F(ToolsTest, AClickOnNothingSelectsNothing) {
    adapter_.selected = {key("char")};
    PointTool tool(adapter_);
    tool.press(pointer(-90, leftBurner));
    EXPECT_TRUE(adapter_.selected.empty());
}

TEST_F(ToolsTest, CtrlAddsAndTakesOut) {
    adapter_.selected = {key("char")};
    PointTool tool(adapter_);
    PointerAt at = pointer(-35, leftBurner, "simmer");
    at.modifiers = Qt::ControlModifier;
    tool.press(at);
    tool.release(at);
    EXPECT_EQ(adapter_.selected, (std::vector<PlacementKey>{key("simmer"), key("char")}));
    tool.press(at);
    tool.release(at);
    EXPECT_EQ(adapter_.selected, std::vector<PlacementKey>{key("char")});
}

TEST_F(ToolsTest, ATrembleIsNoDrag) {
    PointTool tool(adapter_);
    tool.press(pointer(-45, leftBurner, "char"));
    PointerAt at = pointer(-45, leftBurner, "char");
    at.position += QPointF(3, 2);
    EXPECT_FALSE(tool.move(at));
    EXPECT_FALSE(tool.isDragging());
    tool.release(at);
    EXPECT_TRUE(adapter_.commits.empty());
}

TEST_F(ToolsTest, ADragShowsWhatWouldBeAndMakesItOnRelease) {
    PointTool tool(adapter_);
    tool.press(pointer(-45, leftBurner, "char"));
    EXPECT_TRUE(tool.move(pointer(-47, leftBurner)));
    EXPECT_TRUE(tool.move(pointer(-48, rightBurner)));
    EXPECT_EQ(adapter_.proposals.size(), 2U);
    EXPECT_EQ(state_.lesson(), before_);
    tool.release(pointer(-48, rightBurner));
    EXPECT_EQ(now("char").start, minute(-53));  // gripped five minutes from its start
    EXPECT_EQ(now("char").burners, std::vector{BurnerId{"right"}});
    EXPECT_EQ(adapter_.commits, std::vector{ActionKind::Move});
}

TEST_F(ToolsTest, EscapePutsADragBack) {
    PointTool tool(adapter_);
    tool.press(pointer(-45, leftBurner, "char"));
    tool.move(pointer(-30, rightBurner));
    tool.cancel();
    tool.move(pointer(-20, rightBurner));
    tool.release(pointer(-20, rightBurner));
    EXPECT_EQ(state_.lesson(), before_);
    EXPECT_TRUE(adapter_.commits.empty());
    EXPECT_EQ(adapter_.withdrawn, 1);
}

TEST_F(ToolsTest, ALaneThatDoesNotTakeItIsRefusedButTimeMoves) {
    PointTool tool(adapter_);
    tool.press(pointer(-45, leftBurner, "char"));
    tool.move(pointer(-47, slotOne));
    EXPECT_TRUE(adapter_.proposals.back().refused);
    tool.release(pointer(-47, slotOne));
    EXPECT_EQ(now("char").start, minute(-52));
    EXPECT_EQ(now("char").burners, std::vector{BurnerId{"left"}});
}

TEST_F(ToolsTest, SeveralMoveByTheSameTime) {
    adapter_.selected = {key("simmer"), key("char")};
    PointTool tool(adapter_);
    tool.press(pointer(-35, leftBurner, "simmer"));
    tool.move(pointer(-32, leftBurner));
    tool.release(pointer(-32, leftBurner));
    EXPECT_EQ(now("char").start, minute(-47));
    EXPECT_EQ(now("simmer").start, minute(-37));
    EXPECT_EQ(now("trim").start, minute(-60));
}

TEST_F(ToolsTest, DroppedOnTheShelfItIsTakenAway) {
    PointTool tool(adapter_);
    tool.press(pointer(-45, leftBurner, "char"));
    PointerAt at = pointer(-90, -1);
    at.onShelf = true;
    tool.move(at);
    EXPECT_TRUE(adapter_.proposals.back().removes);
    tool.release(at);
    EXPECT_FALSE(state_.lesson().placements.contains(key("char")));
    EXPECT_EQ(adapter_.commits, std::vector{ActionKind::TakeAway});
}

TEST_F(ToolsTest, WhatIsInHandFollowsThePointerAndAClickPutsItDown) {
    CarryTool tool = carryingPlaced("roast");
    EXPECT_TRUE(tool.release(pointer(-35, slotOne)));  // of the click that picked it up
    EXPECT_TRUE(tool.move(pointer(-45, slotTwo)));
    EXPECT_EQ(state_.lesson(), before_);
    EXPECT_TRUE(tool.press(pointer(-44, slotTwo)));
    EXPECT_FALSE(tool.release(pointer(-44, slotTwo)));
    EXPECT_EQ(now("roast").start, minute(-44));
    EXPECT_EQ(now("roast").oven->firstSlot, 1);
}

TEST_F(ToolsTest, WhatIsInHandFollowsTheKeys) {
    CarryTool tool = carryingPlaced("roast");
    tool.step(-1, 0);
    tool.step(-1, 0);
    tool.step(0, 1);
    EXPECT_EQ(state_.lesson(), before_);
    EXPECT_FALSE(tool.accept());
    EXPECT_EQ(now("roast").start, minute(-42));
    EXPECT_EQ(now("roast").oven->firstSlot, 1);
}

TEST_F(ToolsTest, KeysPassOverLanesThatDoNotTakeIt) {
    CarryTool tool = carryingPlaced("roast");
    tool.step(0, 1);
    tool.step(0, 1);  // below are only burners
    tool.accept();
    EXPECT_EQ(now("roast").oven->firstSlot, 1);
}

TEST_F(ToolsTest, LettingGoOfWhatIsInHandChangesNothing) {
    CarryTool tool = carryingPlaced("roast");
    tool.step(-5, 0);
    EXPECT_FALSE(tool.cancel());
    EXPECT_EQ(state_.lesson(), before_);
    EXPECT_EQ(adapter_.withdrawn, 1);
}

TEST_F(ToolsTest, AStepFromTheShelfIsPlacedWhole) {
    const PlacementKey roast = key("roast");
    Edit away = takeAway(state_.index(), {&roast, 1});
    state_.exchange(away);
    CarryTool tool = carrying({key("roast")});
    tool.press(pointer(-41, slotTwo));
    tool.release(pointer(-41, slotTwo));
    EXPECT_EQ(now("roast").start, minute(-41));
    EXPECT_EQ(now("roast").oven->firstSlot, 1);
    EXPECT_EQ(now("roast").wares, (std::vector{WareSpot{WareId{"sheet"}, 0}}));
    EXPECT_EQ(adapter_.commits, std::vector{ActionKind::Place});
}

TEST_F(ToolsTest, AComponentFromTheShelfIsPlacedInTurn) {
    Edit away = SetPlacements{placementDifference(state_.lesson().placements, {})};
    state_.exchange(away);
    CarryTool tool = carrying({key("trim"), key("char"), key("simmer")});
    tool.press(pointer(-60, rightBurner));
    tool.release(pointer(-60, rightBurner));
    EXPECT_EQ(now("trim").start, minute(-60));
    EXPECT_EQ(now("char").start, minute(-55));
    EXPECT_EQ(now("char").burners, std::vector{BurnerId{"right"}});
    EXPECT_EQ(now("simmer").start, minute(-45));
}

}  // namespace
}  // namespace rangeline::test
