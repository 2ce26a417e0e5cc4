#include "document/free_place.h"

#include <gtest/gtest.h>

#include "document/small_supper.h"

namespace rangeline::test {
namespace {

Instant startIn(const SetPlacements& edit, const PlacementKey& key) {
    return std::ranges::find(edit.changes, key, &PlacementChange::key)->placement->start;
}

TEST(FreePlace, IsTheNearestOneWithoutACollision) {
    LessonState state(placedSupper().lesson);
    const PlacementKey trim = key("trim");
    // Char at -50 needs what is trimmed: five minutes before it at the latest.
    const auto edit = firstFreePlace(state, trim, minute(-51));
    ASSERT_TRUE(edit.has_value());
    EXPECT_EQ(startIn(*edit, trim), minute(-55));
}

TEST(FreePlace, IsNowhereForAStepThatNothingFits) {
    LessonBuilder builder = placedSupper();
    builder.get("char").wares.front().leastWidth = Length::millimetres(900);
    LessonState state(builder.lesson);
    EXPECT_FALSE(firstFreePlace(state, key("char"), minute(-50)).has_value());
}

TEST(FreePlace, UsualStartIsBeforeWhatNeedsIt) {
    LessonBuilder builder = placedSupper();
    builder.lesson.placements.erase(key("trim"));
    const LessonState state(builder.lesson);
    EXPECT_EQ(usualStart(state.index(), state.expanded().taskOf(key("trim"))), minute(-55));
}

TEST(FreePlace, UsualStartOfTheLastStepEndsAtServing) {
    const LessonState state(smallSupper().lesson);
    EXPECT_EQ(usualStart(state.index(), state.expanded().taskOf(key("plate"))), minute(-3));
}

TEST(PlaceInTurn, EachStepWaitsForTheOneBefore) {
    LessonState state(smallSupper().lesson);
    const std::vector<int> tasks = tasksOfComponent(state.index(), 0, 0, 0);
    const SetPlacements edit =
        placeInTurn(state, tasks, minute(-70), {{EquipmentSort::Burner, 1}, -1});
    EXPECT_EQ(startIn(edit, key("trim")), minute(-70));
    EXPECT_EQ(startIn(edit, key("char")), minute(-65));
    EXPECT_EQ(startIn(edit, key("simmer")), minute(-55));
    EXPECT_GE(startIn(edit, key("plate")), minute(-45));
    Edit made = edit;
    state.exchange(made);
    EXPECT_EQ(state.lesson().placements.at(key("char")).burners, std::vector{BurnerId{"right"}});
    for (const Finding& finding : state.findings()) {
        EXPECT_NE(finding.code, FindingCode::HandsTwice);
        EXPECT_NE(finding.code, FindingCode::BurnerTwice);
        EXPECT_NE(finding.code, FindingCode::TooEarlyAfter);
    }
}

}  // namespace
}  // namespace rangeline::test
