#include "range/range_scene.h"

#include <gmock/gmock.h>

#include "inspect/seen.h"

namespace rangeline::test {
namespace {

using ::testing::Contains;
using ::testing::SizeIs;

TEST(RangeScene, SaysWhatStandsOnEachBurner) {
    const Seen seen(smallKitchen().lesson);
    const RangeScene scene = seen.at(minute(-22));
    ASSERT_THAT(scene.burners, SizeIs(2));
    ASSERT_THAT(scene.burners[0].vessels, SizeIs(1));
    EXPECT_EQ(scene.burners[0].vessels[0].name, "pan 1");
    EXPECT_EQ(scene.burners[0].vessels[0].step, "Sear");
    ASSERT_THAT(scene.burners[1].vessels, SizeIs(1));
    EXPECT_EQ(scene.burners[1].vessels[0].name, "pot");
    EXPECT_TRUE(scene.ovens[0].loads.empty());
}

TEST(RangeScene, AnEndedStepHasLeftItsBurner) {
    const Seen seen(smallKitchen().lesson);
    // Half-open: sear ends at -20 and is gone then.
    EXPECT_TRUE(seen.at(minute(-20)).burners[0].vessels.empty());
    EXPECT_FALSE(seen.at(minute(-21)).burners[0].vessels.empty());
}

TEST(RangeScene, TheOvenIsOffThenWarmsThenHolds) {
    const Seen seen(smallKitchen().lesson);
    EXPECT_EQ(seen.at(minute(-90)).ovens[0].state, OvenState::Off);
    // Turned on at -80 (30 s of hands), warm ten minutes later.
    EXPECT_EQ(seen.at(minute(-75)).ovens[0].state, OvenState::Warming);
    EXPECT_EQ(ovenStateText(seen.at(minute(-75)).ovens[0]), "warming up to 400 °F");
    EXPECT_EQ(ovenStateText(seen.at(minute(-65)).ovens[0]), "at 400 °F");
    const RangeScene roasting = seen.at(minute(-45));
    ASSERT_THAT(roasting.ovens[0].loads, SizeIs(1));
    EXPECT_EQ(roasting.ovens[0].loads[0].first, 0);
    EXPECT_EQ(roasting.ovens[0].loads[0].second.step, "Roast");
}

TEST(RangeScene, IsReadAsSentencesToo) {
    const Seen seen(smallKitchen().lesson);
    const QStringList lines = sceneLines(seen.at(minute(-10)));
    EXPECT_THAT(lines, Contains("Front left burner: free"));
    EXPECT_THAT(lines, Contains("Back right burner: Simmer (pot)"));
}

TEST(RangeScene, BurnersWithoutStatedPlacesDoNotLieOnEachOther) {
    Lesson lesson = smallKitchen().lesson;
    for (Burner& burner : lesson.kitchen.burners) {
        burner.fromLeft = {};
        burner.fromFront = {};
    }
    const RangeScene scene = Seen(lesson).at(minute(-22));
    EXPECT_NE(scene.burners[0].fromFront, scene.burners[1].fromFront);
    EXPECT_GT(scene.width, Length());
}

TEST(RangeScene, AVesselAsideIsToldElsewhere) {
    LessonBuilder builder = smallKitchen();
    builder.ware("bowl", "bowl");
    builder.get("garnish").wares = {fresh("bowl")};
    Placement& garnish = builder.place("garnish", -15);
    garnish.wares = {{WareId{"bowl"}, 0}};
    assign(garnish, "ann");
    EXPECT_THAT(Seen(builder.lesson).at(minute(-12)).elsewhere, Contains("Bowl: Garnish"));
}

}  // namespace
}  // namespace rangeline::test
