#include "analysis/use_index.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/lesson_builder.h"
#include "support/random_lesson.h"
#include "support/random_placements.h"

namespace rangeline::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Index, expansion and lesson that belong together.
struct Indexed {
    explicit Indexed(const LessonBuilder& builder)
        : lesson(builder.lesson), expanded(expand(lesson)), index(lesson, expanded) {}

    Lesson lesson;
    Expanded expanded;
    UseIndex index;
};

/// Browned on the front burner [-40, -30), then braised in the same pot in the oven [-25, -5).
LessonBuilder braise() {
    LessonBuilder builder;
    builder.burner("front");
    builder.oven("oven");
    builder.ware("pot", "pot", 2);
    builder.ware("wide", "pot").rackSlots = 2;
    Step& brown = builder.step("brown", {hands(4_min), watch(6_min)});
    brown.heat = onBurner();
    brown.wares = {fresh("pot")};
    Placement& placement = builder.place("brown", -40);
    placement.burners = {BurnerId{"front"}};
    placement.wares = {{WareId{"pot"}, 1}};
    assign(placement, "ann", 1);
    Step& stew = builder.step("stew", {away(20_min)});
    stew.heat = inOven(300_F, 350_F);
    stew.wares = {carryOn("pot", "brown")};
    builder.place("stew", -25).oven = spot("oven", 325_F);
    return builder;
}

TEST(UseIndex, ReadsWhatPlacementsTake) {
    const Indexed at(braise());
    ASSERT_THAT(at.index.burnerUses(0), SizeIs(1));
    EXPECT_EQ(at.index.burnerUses(0)[0].interval, minutes(-40, -30));
    ASSERT_THAT(at.index.ovenUses(0), SizeIs(1));
    EXPECT_EQ(at.index.ovenUses(0)[0].interval, minutes(-25, -5));
    EXPECT_EQ(at.index.ovenUses(0)[0].setTo, 325_F);
    EXPECT_THAT(at.index.wareUses(0), IsEmpty());
    ASSERT_THAT(at.index.wareUses(1), SizeIs(1)) << "the second pot";
    EXPECT_EQ(at.index.wareUses(1)[0].interval, minutes(-40, -5)) << "the wait included";
    ASSERT_THAT(at.index.handsUses(0), SizeIs(1));
    EXPECT_EQ(at.index.handsUses(0)[0].interval, minutes(-40, -36));
    ASSERT_THAT(at.index.watchUses(0), SizeIs(1));
    EXPECT_EQ(at.index.watchUses(0)[0].interval, minutes(-36, -30));
}

TEST(UseIndex, AUseEndsAtWhatIsKnown) {
    auto builder = braise();
    builder.lesson.placements.erase(key("stew"));
    const Indexed at(builder);
    EXPECT_EQ(at.index.wareUses(1)[0].interval, minutes(-40, -30));
    EXPECT_THAT(at.index.ovenUses(0), IsEmpty());
}

TEST(UseIndex, APotCarriedOnTakesItsRackSlots) {
    auto builder = braise();
    EXPECT_EQ(Indexed(builder).index.ovenUses(0)[0].slots, 1);
    builder.lesson.placements.at(key("brown")).wares = {{WareId{"wide"}, 0}};
    EXPECT_EQ(Indexed(builder).index.ovenUses(0)[0].slots, 2);
}

TEST(UseIndex, AnotherPotTouchesTheOvenThatItGoesIntoLater) {
    Indexed at(braise());
    at.lesson.placements.at(key("brown")).wares = {{WareId{"wide"}, 0}};
    const auto touched = at.index.update(std::vector<PlacementKey>{key("brown")});
    EXPECT_EQ(at.index.ovenUses(0)[0].slots, 2);
    EXPECT_THAT(touched.of(Subject::Oven), ElementsAre(0));
    EXPECT_THAT(touched.of(Subject::Ware), ElementsAre(1, 2));
    EXPECT_THAT(touched.of(Subject::Task), ElementsAre(0, 1));
}

TEST(UseIndex, AnotherPotTouchesTheBurnerThatItStandsOnLater) {
    auto builder = braise();
    builder.burner("rear");
    builder.step("reduce", {away(5_min)}).heat = onBurner();
    builder.get("reduce").wares = {carryOn("pot", "stew")};
    builder.place("reduce", -5).burners = {BurnerId{"rear"}};
    Indexed at(builder);
    at.lesson.placements.at(key("brown")).wares = {{WareId{"wide"}, 0}};
    const auto touched = at.index.update(std::vector<PlacementKey>{key("brown")});
    EXPECT_THAT(touched.of(Subject::Burner), ElementsAre(0, 1));
}

TEST(UseIndex, MovingAStepTouchesOnlyItsOwn) {
    auto builder = braise();
    builder.cook("ben");
    builder.step("chop", {hands(5_min)});
    assign(builder.place("chop", -60), "ben");
    Indexed at(builder);
    at.lesson.placements.at(key("chop")).start = minute(-50);
    const auto touched = at.index.update(std::vector<PlacementKey>{key("chop")});
    EXPECT_EQ(at.index.handsUses(1)[0].interval, minutes(-50, -45));
    EXPECT_THAT(touched.of(Subject::Task), ElementsAre(2));
    EXPECT_THAT(touched.of(Subject::Cook), ElementsAre(1));
    for (const Subject sort : {Subject::Burner, Subject::Oven, Subject::Ware, Subject::Pool}) {
        EXPECT_THAT(touched.of(sort), IsEmpty());
    }
}

TEST(UseIndex, WashesAndTurningOnAreWorkToo) {
    auto builder = braise();
    builder.pool("sink", "sink", 1);
    builder.lesson.kitchen.wares[0].cleaning = {4_min, PoolId{"sink"}};
    builder.cook("ben", 150);
    builder.placeWash("brown", -5, "ben");
    builder.placeTurnOn("oven", minute(-60), 325_F, "ben");
    const Indexed at(builder);
    ASSERT_THAT(at.index.handsUses(1), SizeIs(2));
    EXPECT_EQ(at.index.handsUses(1)[0].interval.length(), 45_s);
    EXPECT_EQ(at.index.handsUses(1)[1].interval, minutes(-5, 1));
    ASSERT_THAT(at.index.poolUses(0), SizeIs(1));
    EXPECT_EQ(at.index.poolUses(0)[0].interval, minutes(-5, 1));
    ASSERT_THAT(at.index.wareUses(1), SizeIs(2));
    EXPECT_TRUE(at.index.wareUses(1)[1].wash);
}

TEST(UseIndex, EveryKeyHasItsNodeAndBack) {
    auto builder = braise();
    builder.lesson.head.groups = {3, {"oven"}, 0_min};
    const Indexed at(builder);
    for (int node = 0; node < at.index.nodes(); ++node) {
        EXPECT_EQ(at.index.nodeOf(at.index.keyOf(node)), node);
    }
    EXPECT_EQ(at.index.nodeOf(turningOn("oven", 1)), -1) << "there is only one oven";
    EXPECT_EQ(at.index.nodeOf(key("brown", 0, 3)), -1);
    EXPECT_EQ(at.index.nodeOf(key("nothing")), -1);
    EXPECT_EQ(at.index.nodeOf(washAfter("stew")), -1);
}

TEST(UseIndex, GroupsHaveStationsOfTheirOwnExceptWhatTheyShare) {
    auto builder = braise();
    builder.lesson.head.groups = {2, {"oven"}, 0_min};
    for (const char* id : {"brown", "stew"}) {
        builder.lesson.placements[key(id, 0, 1)] = builder.lesson.placements.at(key(id));
    }
    const Indexed at(builder);
    EXPECT_THAT(at.index.burnerUses(0), SizeIs(1));
    EXPECT_THAT(at.index.burnerUses(1), SizeIs(1));
    EXPECT_THAT(at.index.ovenUses(0), SizeIs(2));
}

template <class Use>
std::vector<Use> copy(std::span<const Use> uses) {
    return {uses.begin(), uses.end()};
}

void expectSameUses(const UseIndex& a, const UseIndex& b) {
    for (int i = 0; i < a.count(Subject::Burner); ++i) {
        EXPECT_EQ(copy(a.burnerUses(i)), copy(b.burnerUses(i)));
    }
    for (int i = 0; i < a.count(Subject::Oven); ++i) {
        EXPECT_EQ(copy(a.ovenUses(i)), copy(b.ovenUses(i)));
    }
    for (int i = 0; i < a.count(Subject::Ware); ++i) {
        EXPECT_EQ(copy(a.wareUses(i)), copy(b.wareUses(i)));
    }
    for (int i = 0; i < a.count(Subject::Pool); ++i) {
        EXPECT_EQ(copy(a.poolUses(i)), copy(b.poolUses(i)));
    }
    for (int i = 0; i < a.count(Subject::Cook); ++i) {
        EXPECT_EQ(copy(a.handsUses(i)), copy(b.handsUses(i)));
        EXPECT_EQ(copy(a.watchUses(i)), copy(b.watchUses(i)));
    }
}

TEST(UseIndex, AfterEditsIsTheSameAsANewOne) {
    const std::uint64_t first = seedOr(1);
    for (std::uint64_t seed = first; seed < first + 30; ++seed) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed);
        Random random(seed);
        RandomLessonSize size;
        size.groups = 1 + static_cast<int>(seed % 2);
        size.choices = 0.2;
        Lesson lesson = randomLesson(random, size);
        const Expanded expanded = expand(lesson);
        placeAtRandom(random, lesson, expanded, 0.7);
        UseIndex index(lesson, expanded);
        for (const PlacementKey& key : possibleKeys(lesson, expanded)) {
            if (random.chance(0.3)) {
                lesson.placements.erase(key);
            } else {
                lesson.placements.insert_or_assign(key, randomPlacement(random, lesson));
            }
            index.update(std::vector<PlacementKey>{key});
        }
        expectSameUses(index, UseIndex(lesson, expanded));
    }
}

}  // namespace
}  // namespace rangeline::test
