#include "analysis/critical_path.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "analysis/use_index.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"
#include "support/random_placements.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

struct Analysed {
    explicit Analysed(const LessonBuilder& builder)
        : lesson(builder.lesson),
          expanded(expand(lesson)),
          index(lesson, expanded),
          plating(analysePlating(index)) {}

    const Spare& of(const PlacementKey& wanted) const {
        return *std::ranges::find(plating.spares, wanted, &Spare::key);
    }
    Duration spare(const PlacementKey& wanted) const { return of(wanted).spare; }
    /// What the first hold of the placement is, and what it pushes against.
    HeldBy heldBy(const PlacementKey& wanted) const { return of(wanted).holds.front().by; }
    PlacementKey next(const PlacementKey& wanted) const {
        const int i = of(wanted).holds.front().next;
        return plating.spares[static_cast<std::size_t>(i)].key;
    }
    std::vector<PlacementKey> path() const {
        std::vector<PlacementKey> keys;
        for (const int i : plating.path) {
            keys.push_back(plating.spares[static_cast<std::size_t>(i)].key);
        }
        return keys;
    }

    Lesson lesson;
    Expanded expanded;
    UseIndex index;
    PlatingAnalysis plating;
};

/// "a" for ten minutes from -40, "b" for ten minutes from -20.
LessonBuilder two() {
    LessonBuilder builder;
    builder.step("a", {away(10_min)});
    builder.step("b", {away(10_min)});
    builder.place("a", -40);
    builder.place("b", -20);
    return builder;
}

TEST(Spare, UntilServing) {
    const Analysed lesson(two());
    EXPECT_EQ(lesson.spare(key("a")), 30_min);
    EXPECT_EQ(lesson.spare(key("b")), 10_min);
    EXPECT_EQ(lesson.heldBy(key("a")), HeldBy::Deadline);
    EXPECT_THAT(lesson.path(), ElementsAre(key("b")));
}

TEST(Spare, TheOthersMoveAlong) {
    auto builder = two();
    builder.link("a", "b", 5_min);
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("a")), 15_min) << "b can slip 10 min, and waits 5 min more";
    EXPECT_EQ(lesson.heldBy(key("a")), HeldBy::Wait);
    EXPECT_EQ(lesson.next(key("a")), PlacementKey(key("b")));
}

TEST(Spare, IsLessThanNothingWhenLate) {
    auto builder = two();
    builder.link("a", "b", 10_min);
    builder.place("b", -8);
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("b")), -2_min);
    EXPECT_EQ(lesson.spare(key("a")), 10_min);
}

TEST(Spare, APinHasNothingToSpareAndHoldsWhatComesBefore) {
    auto builder = two();
    builder.link("a", "b");
    builder.lesson.placements.at(key("b")).pinned = true;
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("b")), 0_min);
    EXPECT_EQ(lesson.heldBy(key("b")), HeldBy::Pin);
    EXPECT_EQ(lesson.spare(key("a")), 10_min);
}

TEST(Spare, AMostWaitPushesTheEarlierStepAlong) {
    auto builder = two();
    builder.link("a", "b").most = 12_min;
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("b")), 10_min) << "a follows";
    builder.lesson.placements.at(key("a")).pinned = true;
    const Analysed pinned(builder);
    EXPECT_EQ(pinned.spare(key("b")), 2_min) << "a cannot follow";
    EXPECT_EQ(pinned.heldBy(key("b")), HeldBy::Wait);
}

TEST(Spare, TheOrderOnABurnerStays) {
    auto builder = two();
    builder.burner("front");
    for (const char* id : {"a", "b"}) {
        builder.get(id).heat = onBurner();
        builder.lesson.placements.at(key(id)).burners = {BurnerId{"front"}};
    }
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("a")), 20_min);
    EXPECT_EQ(lesson.heldBy(key("a")), HeldBy::Equipment);
    EXPECT_EQ(lesson.of(key("a")).holds.front().equipment,
              (EquipmentRef{EquipmentSort::Burner, 0}));
}

TEST(Spare, TheWashBetweenTwoUsesCounts) {
    auto builder = two();
    builder.ware("pan", "saute-pan").cleaning = {3_min, std::nullopt};
    for (const char* id : {"a", "b"}) {
        builder.get(id).wares = {fresh("saute-pan")};
        builder.lesson.placements.at(key(id)).wares = {{WareId{"pan"}, 0}};
    }
    builder.placeWash("a", -30, "ann");
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(washAfter("a")), 17_min);
    EXPECT_EQ(lesson.spare(key("a")), 17_min);
    EXPECT_EQ(lesson.next(key("a")), PlacementKey(washAfter("a")));
}

TEST(Spare, TheCookDoesOneThingAfterTheOther) {
    LessonBuilder builder;
    builder.step("a", {hands(10_min), away(5_min)});
    builder.step("b", {away(5_min), hands(5_min)});
    assign(builder.place("a", -40), "ann");
    assign(builder.place("b", -20), "ann");
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("b")), 10_min);
    EXPECT_EQ(lesson.spare(key("a")), 25_min) << "its hands end before those of b, at -5";
    builder.get("a").segments = {hands(10_min), away(20_min)};
    builder.get("a").time = {30_min, 30_min, 30_min};
    EXPECT_EQ(Analysed(builder).spare(key("a")), 10_min) << "it ends by serving";
}

TEST(Spare, ChangingTheOvenOverCounts) {
    auto builder = two();
    builder.oven("oven");
    builder.get("a").heat = inOven(400_F, 400_F);
    builder.get("b").heat = inOven(375_F, 375_F);
    builder.lesson.placements.at(key("a")).oven = spot("oven", 400_F);
    builder.lesson.placements.at(key("b")).oven = spot("oven", 375_F);
    builder.placeTurnOn("oven", minute(-60), 400_F, "ann");
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("a")), 15_min) << "25 °F down at 5 °F a minute take 5 min";
    EXPECT_EQ(lesson.spare(turningOn("oven")), 10_min - 30_s + 15_min)
        << "-60 + 30 s + 10 min to warm up is -49:30, a may start at -25";
}

TEST(Spare, TheOrderInARackSlotStays) {
    auto builder = two();
    builder.oven("oven").slots = 1;
    for (const char* id : {"a", "b"}) {
        builder.get(id).heat = inOven(400_F, 400_F);
        builder.lesson.placements.at(key(id)).oven = spot("oven", 400_F);
    }
    EXPECT_EQ(Analysed(builder).spare(key("a")), 20_min);
    builder.lesson.kitchen.ovens[0].slots = 2;
    builder.lesson.placements.at(key("b")).oven->firstSlot = 1;
    EXPECT_EQ(Analysed(builder).spare(key("a")), 30_min);
}

TEST(Spare, TheCookWatchesOnlySoMuch) {
    auto builder = two();
    builder.lesson.kitchen.watchLimit = 1;
    for (const char* id : {"a", "b"}) {
        builder.get(id).segments = {watch(10_min)};
        assign(builder.lesson.placements.at(key(id)), "ann", 1);
    }
    EXPECT_EQ(Analysed(builder).spare(key("a")), 20_min);
    builder.lesson.kitchen.watchLimit = 2;
    EXPECT_EQ(Analysed(builder).spare(key("a")), 30_min);
}

TEST(Spare, TheClassIsFreeBeforeATalk) {
    auto builder = two();
    builder.cook("ben");
    builder.get("a").segments = {hands(10_min)};
    builder.get("b").segments = {hands(10_min)};
    builder.get("b").classWatches = true;
    assign(builder.lesson.placements.at(key("a")), "ben");
    assign(builder.lesson.placements.at(key("b")), "ann");
    EXPECT_EQ(Analysed(builder).spare(key("a")), 20_min);
}

TEST(Spare, FoodKeptHotInTheOvenForNoTimeIsUsedAtOnceAlways) {
    auto builder = two();
    builder.oven("oven");
    builder.uses("b", "a");
    builder.get("a").after.storage = Storage::HotInOven;
    builder.get("a").after.holdingHeat = inOven(175_F, 200_F);
    builder.place("a", -30).keptIn = spot("oven", 200_F);
    EXPECT_EQ(Analysed(builder).spare(key("b")), 10_min);
    builder.lesson.placements.at(key("a")).pinned = true;
    EXPECT_EQ(Analysed(builder).spare(key("b")), 0_min);
}

/// Three cold things for ten minutes on a shelf for two: a and b from -60 and -50, c from -30.
LessonBuilder shelf() {
    LessonBuilder builder;
    builder.pool("shelf", "fridge-shelf", 2);
    const auto chill = [&](const char* id, std::int64_t at) {
        builder.step(id, {away(10_min)}).pools = {{PoolId{"shelf"}, 1}};
        builder.place(id, at);
    };
    chill("a", -60);
    chill("b", -50);
    chill("c", -30);
    return builder;
}

TEST(Spare, AfterThePlacementWhoseEndFreesThePlace) {
    const Analysed lesson(shelf());
    EXPECT_EQ(lesson.spare(key("c")), 20_min);
    EXPECT_EQ(lesson.spare(key("b")), 40_min) << "it may lie beside c";
    EXPECT_EQ(lesson.spare(key("a")), 40_min) << "it has to end before c";
    EXPECT_EQ(lesson.heldBy(key("a")), HeldBy::Equipment);
}

// c uses a at once: a takes its place on the shelf for no time, but would if c slipped.
TEST(Spare, FoodUsedAtOnceWaitsWhereThereIsRoom) {
    LessonBuilder builder;
    builder.pool("counter", "counter", 1);
    builder.step("a", {away(10_min)}).after.place = PoolNeed{PoolId{"counter"}, 1};
    builder.step("c", {away(10_min)});
    builder.step("d", {away(5_min)}).pools = {{PoolId{"counter"}, 1}};
    builder.uses("c", "a");
    builder.place("a", -40).pinned = true;
    builder.place("c", -30);
    builder.place("d", -10);
    EXPECT_EQ(Analysed(builder).spare(key("c")), 20_min) << "d moves along";
    builder.lesson.placements.at(key("d")).pinned = true;
    EXPECT_EQ(Analysed(builder).spare(key("c")), 20_min) << "a is used by -10";
    builder.place("d", -32);
    EXPECT_EQ(Analysed(builder).spare(key("c")), 0_min) << "there is no room to wait";
}

// On a counter for two: d takes both, so there is no room for p beside it; e takes one, so there is
// room for q, whatever was found of p.
TEST(Spare, RoomToWaitIsCountedForEachFoodAlone) {
    LessonBuilder builder;
    builder.pool("counter", "counter", 2);
    const auto onCounter = [&](const char* id, std::int64_t minutes, int amount, std::int64_t at) {
        builder.step(id, {away(Duration::minutes(minutes))}).pools = {{PoolId{"counter"}, amount}};
        builder.place(id, at);
    };
    const auto usedAtOnce = [&](const char* made, const char* by, std::int64_t at) {
        builder.step(made, {away(5_min)}).after.place = PoolNeed{PoolId{"counter"}, 1};
        builder.step(by, {away(10_min)});
        builder.uses(by, made);
        builder.place(made, at - 5).pinned = true;
        builder.place(by, at);
    };
    onCounter("d", 15, 2, -60);
    onCounter("e", 35, 1, -40);
    usedAtOnce("p", "c", -50);
    usedAtOnce("q", "f", -30);
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("c")), 0_min);
    EXPECT_EQ(lesson.spare(key("f")), 20_min);
}

TEST(Spare, FoodMadeBeforeTheLessonKeepsOnlySoLong) {
    auto builder = two();
    builder.uses("b", "a");
    builder.get("a").after.atRoom = 1_h;
    builder.lesson.choices.doneAhead = {{StepId{"a"}, 75_min, Storage::Room, std::nullopt, {}}};
    const Analysed lesson(builder);
    EXPECT_EQ(lesson.spare(key("b")), 5_min) << "it must begin by -15";
    EXPECT_EQ(lesson.heldBy(key("b")), HeldBy::Wait);
}

TEST(Spare, WashingUpLastsUntilEveryoneIsOut) {
    auto builder = two();
    builder.get("b").afterServing = true;
    builder.place("b", 5);
    EXPECT_EQ(Analysed(builder).spare(key("b")), 0_min) << "the lesson ends with it";
    builder.lesson.head.everyoneOut = minute(45);
    EXPECT_EQ(Analysed(builder).spare(key("b")), 30_min);
}

TEST(PlatingPath, RunsThroughEquipmentAndCooks) {
    LessonBuilder builder;
    builder.burner("front");
    builder.step("sear", {away(10_min)}).heat = onBurner();
    builder.step("sauce", {away(10_min)}).heat = onBurner();
    builder.step("salad", {away(2_min)});
    builder.step("plate", {away(5_min)}).plates = true;
    builder.uses("plate", "sauce");
    builder.uses("plate", "salad");
    builder.place("sear", -25).burners = {BurnerId{"front"}};
    builder.place("sauce", -15).burners = {BurnerId{"front"}};
    builder.place("salad", -15);
    builder.place("plate", -5);
    const Analysed lesson(builder);
    EXPECT_THAT(lesson.path(), ElementsAre(key("sear"), key("sauce"), key("plate")));
    EXPECT_EQ(lesson.spare(key("salad")), 8_min);
}

TEST(PlatingPath, NothingPlaced) {
    auto builder = two();
    builder.lesson.placements.clear();
    const Analysed lesson(builder);
    EXPECT_THAT(lesson.plating.spares, IsEmpty());
    EXPECT_THAT(lesson.path(), IsEmpty());
}

// Whatever is placed, right or wrong: every spare is explained, and the path is one of holds.
TEST(PlatingPath, OfAnyPlacementsHangsTogether) {
    const std::uint64_t first = seedOr(1);
    for (std::uint64_t seed = first; seed < first + 100; ++seed) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed);
        Random random(seed);
        RandomLessonSize size;
        size.groups = 1 + static_cast<int>(seed % 2);
        size.choices = 0.1;
        LessonBuilder builder;
        builder.lesson = randomLesson(random, size);
        placeAtRandom(random, builder.lesson, expand(builder.lesson), 0.9);
        const Analysed lesson(builder);
        for (const Spare& spare : lesson.plating.spares) {
            EXPECT_FALSE(spare.holds.empty());
            EXPECT_TRUE(!spare.pinned || spare.spare == 0_min);
        }
        const auto& path = lesson.plating.path;
        for (std::size_t i = 1; i < path.size(); ++i) {
            const Spare& before = lesson.plating.spares[static_cast<std::size_t>(path[i - 1])];
            EXPECT_EQ(std::ranges::count(before.holds, path[i], &Hold::next) > 0, true);
        }
    }
}

}  // namespace
}  // namespace rangeline::test
