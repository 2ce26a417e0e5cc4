#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// A step that needs a burner, an oven-proof pan, a cook and a watcher, with all of them placed.
LessonBuilder complete() {
    LessonBuilder builder;
    builder.burner("front");
    builder.ware("pan", "saute-pan");
    Step& fry = builder.step("fry", {hands(5_min), watch(5_min)});
    fry.heat = onBurner();
    fry.wares = {fresh("saute-pan")};
    Placement& placement = builder.place("fry", -20);
    placement.burners = {BurnerId{"front"}};
    placement.wares = {{WareId{"pan"}, 0}};
    assign(placement, "ann", 1);
    return builder;
}

Placement& placed(LessonBuilder& builder) {
    return builder.lesson.placements.at(key("fry"));
}

TEST(Placement, ACompleteOneGivesNoFinding) {
    const auto builder = complete();
    EXPECT_THAT(checkLesson(builder.lesson, expand(builder.lesson)), IsEmpty());
}

TEST(Placement, StepsNotPlaced) {
    auto builder = complete();
    builder.lesson.placements.clear();
    const auto found = findingsOf(builder.lesson, FindingCode::NotPlaced);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("fry")));
    EXPECT_EQ(found[0].severity, Severity::Open) << "nothing collides yet";
}

TEST(Placement, StartsOnTheGrain) {
    auto builder = complete();
    placed(builder).start = Instant::atSeconds(-20 * 60 + 1);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OffGrain), SizeIs(1));
    placed(builder).started = true;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::OffGrain), IsEmpty())
        << "what has begun begins when it begins";
}

TEST(Assignment, WhatIsMissing) {
    const auto missing = [](auto take) {
        auto builder = complete();
        take(placed(builder));
        const auto found = findingsOf(builder.lesson, FindingCode::MissingAssignment);
        return found.size() == 1 ? std::get<std::string>(found[0].figures.at(0)) : std::string();
    };
    EXPECT_EQ(missing([](Placement& p) { p.burners.clear(); }), "burner");
    EXPECT_EQ(missing([](Placement& p) { p.wares.clear(); }), "ware");
    EXPECT_EQ(missing([](Placement& p) { p.hands.clear(); }), "cook");
    EXPECT_EQ(missing([](Placement& p) { p.watchers.clear(); }), "watcher");
}

TEST(Assignment, WhatTheKitchenLacks) {
    const auto unknown = [](auto change) {
        auto builder = complete();
        change(placed(builder));
        const auto found = findingsOf(builder.lesson, FindingCode::UnknownEquipment);
        return found.size() == 1 ? std::get<std::string>(found[0].figures.at(0)) : std::string();
    };
    EXPECT_EQ(unknown([](Placement& p) { p.burners = {BurnerId{"rear"}}; }), "rear");
    EXPECT_EQ(unknown([](Placement& p) { p.wares = {{WareId{"pan"}, 1}}; }), "pan");
    EXPECT_EQ(unknown([](Placement& p) { p.watchers = {CookId{"eve"}}; }), "eve");
}

TEST(Assignment, ACookWhoIsNotInTheCrew) {
    auto builder = complete();
    builder.cook("ben");
    builder.lesson.head.crew.pop_back();
    placed(builder).hands = {{CookId{"ben"}, 0}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::UnknownEquipment), SizeIs(1));
}

TEST(Assignment, TurningOnNeedsACookAndASetting) {
    auto builder = complete();
    builder.oven("oven");
    builder.place(turningOn("oven"), minute(-60));
    const auto found = findingsOf(builder.lesson, FindingCode::MissingAssignment);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure("cook")));
    EXPECT_THAT(found[1].figures, ElementsAre(Figure("oven")));
}

TEST(Ahead, NeedsStorageAndItsPartsAhead) {
    auto builder = complete();
    builder.step("toss", {away(5_min)});
    builder.uses("toss", "fry");
    builder.lesson.choices.doneAhead = {{StepId{"toss"}, 2_h, std::nullopt, std::nullopt, {}}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AheadWithoutStorage), SizeIs(1));
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AheadBeforeParts), SizeIs(1));
    builder.lesson.choices.doneAhead[0].storage = Storage::Room;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AheadWithoutStorage), IsEmpty());
}

TEST(Ahead, ColdMeansAPlaceThatKeepsCold) {
    auto builder = complete();
    builder.pool("counter", "counter", 1);
    builder.pool("shelf", "fridge-shelf", 1);
    builder.lesson.choices.doneAhead = {
        {StepId{"fry"}, 2_h, Storage::Cold, PoolNeed{PoolId{"counter"}, 1}, {}}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AheadWithoutStorage), SizeIs(1));
    builder.lesson.choices.doneAhead[0].place = PoolNeed{PoolId{"shelf"}, 1};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AheadWithoutStorage), IsEmpty());
}

}  // namespace
}  // namespace rangeline::test
