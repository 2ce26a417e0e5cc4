#include "timeline/build_timeline.h"

#include <gmock/gmock.h>

#include <set>

#include "analysis/use_index.h"
#include "check/check.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"

namespace rangeline {
namespace {

using namespace test;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::UnorderedElementsAre;

TimelineModel timelineOf(const Lesson& lesson) {
    const Expanded expanded = expand(lesson);
    const UseIndex index(lesson, expanded);
    const TextContext text{lesson, expanded, QLocale::c()};
    const std::vector<Finding> findings = checkLesson(lesson, expanded);
    const PlatingAnalysis analysis = analysePlating(index);
    return buildTimeline({index, text, findings, analysis});
}

/// A block as "lane:kind:begin:end" in minutes from serving, the main one with a star.
std::string described(const TimelineModel& model, const TimelineBlock& block) {
    constexpr const char* kinds[] = {"work", "wash", "on", "warm", "change", "wait"};
    const std::string lane = model.lanes[static_cast<std::size_t>(block.lane)].name.toStdString();
    return lane + ":" + kinds[static_cast<int>(block.kind)] + ":" +
           std::to_string(block.interval.begin.inSeconds() / 60) + ":" +
           std::to_string(block.interval.end.inSeconds() / 60) + (block.main ? "*" : "");
}

std::vector<std::string> blocksOf(const TimelineModel& model, const PlacementKey& key) {
    std::vector<std::string> blocks;
    for (const TimelineBlock& block : model.blocks) {
        if (model.items[static_cast<std::size_t>(block.item)].key == key) {
            blocks.push_back(described(model, block));
        }
    }
    return blocks;
}

const TimelineItem* itemOf(const TimelineModel& model, const PlacementKey& key) {
    for (const TimelineItem& item : model.items) {
        if (item.key == key) {
            return &item;
        }
    }
    return nullptr;
}

/// Sear in a pan on the burner, go on with it in the oven, wash the pan, plate.
class Roast : public ::testing::Test {
  protected:
    void SetUp() override {
        made_.burner("left");
        made_.oven("oven");
        made_.ware("pan", "saute-pan").cleaning.takes = 4_min;
        Step& sear = made_.step("sear", {hands(2_min), watch(8_min)});
        sear.heat = onBurner();
        sear.wares = {fresh("saute-pan")};
        Step& roast = made_.step("roast", {hands(1_min), away(29_min)});
        roast.heat = inOven(400_F, 425_F);
        roast.wares = {carryOn("saute-pan", "sear")};
        roast.wares.front().turnedOut = true;
        made_.step("plate", {hands(3_min)}).plates = true;
        made_.uses("roast", "sear");
        made_.uses("plate", "roast");
        Placement& searing = made_.place("sear", -50);
        searing.burners = {BurnerId{"left"}};
        searing.wares = {{WareId{"pan"}, 0}};
        assign(searing, "ann", 1);
        Placement& roasting = made_.place("roast", -35);
        roasting.oven = spot("oven", 400_F, 1);
        assign(roasting, "ann");
        made_.placeWash("sear", -5, "ann");
        assign(made_.place("plate", -3), "ann");
        made_.placeTurnOn("oven", minute(-60), 400_F, "ann");
    }

    LessonBuilder made_;
};

TEST_F(Roast, StepsOnABurnerEchoInTheirPanAndWithTheirCook) {
    EXPECT_THAT(blocksOf(timelineOf(made_.lesson), key("sear")),
                UnorderedElementsAre("Left:work:-50:-40*", "Pan:work:-50:-40", "Pan:wait:-40:-35",
                                     "Ann:work:-50:-40"));
}

TEST_F(Roast, StepsInTheOvenStandInTheirSlot) {
    EXPECT_THAT(blocksOf(timelineOf(made_.lesson), key("roast")),
                UnorderedElementsAre("Slot 2:work:-35:-5*", "Pan:work:-35:-5", "Ann:work:-35:-34"));
}

TEST_F(Roast, AWashStandsInItsWare) {
    EXPECT_THAT(blocksOf(timelineOf(made_.lesson), washAfter("sear")),
                UnorderedElementsAre("Pan:wash:-5:-1*", "Ann:wash:-5:-1"));
}

TEST_F(Roast, HandworkStandsWithItsCook) {
    EXPECT_THAT(blocksOf(timelineOf(made_.lesson), key("plate")), ElementsAre("Ann:work:-3:0*"));
}

TEST_F(Roast, TurningOnReachesToTheEndOfWarmingUp) {
    const TimelineModel model = timelineOf(made_.lesson);
    const std::vector<std::string> blocks = blocksOf(model, turningOn("oven"));
    ASSERT_EQ(blocks.size(), 2U);
    EXPECT_THAT(blocks, Contains("Oven:on:-60:-49*"));  // 30 s and 10 min, from -60
    ASSERT_EQ(model.heat.size(), 2U);
    EXPECT_EQ(model.heat[0].interval.begin, minute(-60) + 30_s);
    EXPECT_EQ(model.heat[0].interval.end, minute(-50) + 30_s);
    EXPECT_EQ(model.heat[1].label, "400 °F");
    EXPECT_EQ(model.heat[1].interval.end, minute(-5));
}

TEST_F(Roast, NumbersFollowTheClock) {
    const TimelineModel model = timelineOf(made_.lesson);
    std::vector<int> numbers;
    for (const TimelineItem& item : model.items) {
        numbers.push_back(item.number);
    }
    EXPECT_THAT(numbers, ElementsAre(1, 2, 3, 4, 5));
    EXPECT_EQ(itemOf(model, turningOn("oven"))->number, 1);
    EXPECT_EQ(itemOf(model, key("plate"))->number, 5);
}

TEST_F(Roast, FindingsAndPlatingMarkTheirItems) {
    const TimelineModel model = timelineOf(made_.lesson);
    // Ann washes the pan until -1 and plates from -3 on.
    EXPECT_TRUE(itemOf(model, washAfter("sear"))->collides);
    EXPECT_TRUE(itemOf(model, key("plate"))->collides);
    EXPECT_FALSE(itemOf(model, key("roast"))->collides);
    EXPECT_TRUE(itemOf(model, key("plate"))->decides);
    EXPECT_FALSE(itemOf(model, turningOn("oven"))->decides);
}

TEST_F(Roast, UnplacedStepsAreNotThere) {
    made_.lesson.placements.erase(key("roast"));
    const TimelineModel model = timelineOf(made_.lesson);
    EXPECT_EQ(itemOf(model, key("roast")), nullptr);
    EXPECT_THAT(blocksOf(model, key("plate")), ElementsAre("Ann:work:-3:0*"));
}

TEST_F(Roast, AnOvenChangesOverAfterTheLastLoad) {
    Step& crisp = made_.step("crisp", {away(3_min)});
    crisp.heat = inOven(450_F, 450_F);
    std::get<OvenHeat>(crisp.heat).slots = 1;
    made_.place("crisp", 5).oven = spot("oven", 450_F, 0);
    const TimelineModel model = timelineOf(made_.lesson);
    // 50 °F at 10 °F a minute, from -5 on, when the roast leaves.
    EXPECT_THAT(blocksOf(model, key("crisp")),
                UnorderedElementsAre("Slot 1:work:5:8*", "Oven:change:-5:0"));
    EXPECT_EQ(model.heat.back().label, "450 °F");
    EXPECT_EQ(model.heat.back().interval, minutes(0, 8));
}

TEST_F(Roast, CooksOutsideTheCrewHaveNoLane) {
    made_.cook("bo");
    made_.lesson.head.crew.pop_back();
    for (const Lane& lane : timelineOf(made_.lesson).lanes) {
        EXPECT_NE(lane.name, "Bo");
    }
}

TEST(BuildTimeline, AxisReadsLikeTheKitchensClock) {
    LessonBuilder made;
    const TimelineModel american = timelineOf(made.lesson);
    EXPECT_EQ(american.clock(Instant::serving()), "6:30");
    EXPECT_EQ(american.servingClock, 18_h + 30_min);
    made.lesson.head.units = Units::Metric;
    EXPECT_EQ(timelineOf(made.lesson).clock(minute(-30)), "18:00");
}

TEST(BuildTimeline, SharedThingsComeFirstAndOnlyOnce) {
    LessonBuilder made;
    made.oven("oven");
    made.burner("left");
    made.lesson.head.groups.count = 2;
    made.lesson.head.groups.shared = {"oven"};
    const TimelineModel model = timelineOf(made.lesson);
    std::vector<std::string> titles;
    for (const LaneSection& section : model.sections) {
        titles.push_back(section.title.toStdString());
    }
    EXPECT_THAT(titles, ElementsAre("Oven (shared)", "Group 1: burners", "Group 1: cooks",
                                    "Group 1: sink and shelves", "Group 2: burners",
                                    "Group 2: cooks", "Group 2: sink and shelves"));
}

/// Random placements, most of them colliding: the picture still holds together.
TEST(BuildTimeline, EveryPlacementHasOneMainBlockAndAllLieInTheSpan) {
    const std::uint64_t seed = seedOr(11);
    Random random(seed);
    for (int round = 0; round < 60; ++round) {
        RandomLessonSize size;
        size.groups = 1 + round % 2;
        size.choices = 0.2;
        Lesson lesson = randomLesson(random, size);
        const Expanded expanded = expand(lesson);
        for (const Task& task : expanded.tasks) {
            Placement& placement = lesson.placements[task.key];
            placement.start = minute(random.between(-200, 10));
            assign(placement, lesson.head.crew.front().text, 3);
            if (!lesson.kitchen.burners.empty()) {
                placement.burners = {lesson.kitchen.burners.front().id};
            }
        }
        const TimelineModel model = timelineOf(lesson);
        std::vector<int> mains(model.items.size());
        for (const TimelineBlock& block : model.blocks) {
            mains[static_cast<std::size_t>(block.item)] += block.main ? 1 : 0;
            EXPECT_LE(model.span.begin, block.interval.begin) << "seed " << seed;
            EXPECT_GE(model.span.end, block.interval.end) << "seed " << seed;
        }
        EXPECT_EQ(model.items.size(), lesson.placements.size()) << "seed " << seed;
        EXPECT_THAT(mains, ::testing::Each(1)) << "seed " << seed << ", round " << round;
    }
}

}  // namespace
}  // namespace rangeline
