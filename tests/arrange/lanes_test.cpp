// Two threads on one lesson: what they tell each other, and that together they prove the same.

#include <gtest/gtest.h>

#include <thread>

#include "arrange/lanes/board.h"
#include "arrange/verified.h"
#include "support/natural_lesson.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

using lanes::Board;
using lanes::BoardPlan;

BoardPlan planWorth(engine::Value value) {
    BoardPlan plan;
    plan.value = value;
    return plan;
}

TEST(Board, OnlyABetterPlanOfTheOpenStageIsTaken) {
    Board board;
    board.offer(0, planWorth(10));
    board.offer(0, planWorth(12));
    EXPECT_EQ(board.state(0).best, 10);
    board.offer(1, planWorth(1));
    EXPECT_EQ(board.state(0).best, 10);
    board.offer(0, planWorth(7));
    EXPECT_EQ(board.state(0).best, 7);
}

TEST(Board, AClosedStageKeepsItsValueAndTheNextBeginsAnew) {
    Board board;
    board.offer(0, planWorth(10));
    board.raise(0, 10);
    board.close(0, 10);
    EXPECT_TRUE(board.state(0).closed);
    EXPECT_EQ(board.state(0).best, 10);
    EXPECT_FALSE(board.state(1).closed);
    EXPECT_EQ(board.state(1).best, std::nullopt);
    EXPECT_EQ(board.state(1).bound, Board::noBound);
    EXPECT_NE(board.state(1).plan, nullptr);
    board.close(0, 5);  // the lane that was second
    EXPECT_EQ(board.state(0).best, 10);
}

TEST(Board, TheVersionChangesOnlyWithSomethingNew) {
    Board board;
    board.raise(0, 5);
    const auto version = board.version();
    board.raise(0, 5);
    board.raise(0, 3);
    EXPECT_EQ(board.version(), version);
    board.raise(0, 6);
    EXPECT_NE(board.version(), version);
}

ArrangeOptions with(int threads, Aim aim) {
    ArrangeOptions options;
    options.threads = threads;
    options.aim = aim;
    options.conflictLimit = 1500;
    return options;
}

/// Where both prove, both prove the same; a bound of one holds for the plan of the other.
TEST(Lanes, TwoThreadsProveWhatOneProves) {
    const std::uint64_t seed = seedOr(4711);
    for (std::uint64_t i = 0; i < 6; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 100 + i);
        const Lesson lesson = naturalLesson(random, 12 + 5 * static_cast<int>(i));
        for (const Aim aim : {Aim::StartLate, Aim::Fresh}) {
            const ArrangeResult one = arrangeVerified(lesson, with(1, aim));
            const ArrangeResult two = arrangeVerified(lesson, with(2, aim));
            EXPECT_EQ(one.placements.empty(), two.placements.empty());
            if (one.last.aimBest && two.last.aimBest) {
                EXPECT_LE(one.last.aimBound, *two.last.aimBest);
                EXPECT_LE(two.last.aimBound, *one.last.aimBest);
            }
            if (one.status == ArrangeStatus::Proved && two.status == ArrangeStatus::Proved) {
                EXPECT_EQ(one.last.aimBest, two.last.aimBest);
            }
        }
    }
}

/// A contradiction among neighbours of a plan proves something only where nothing of the plan was
/// held for it. Another search looks for what such a proof rules out: the small lessons are proved,
/// of the large ones no plan is so good so soon that nothing begins later.
TEST(Lanes, WhatIsProvedBestAmongNeighboursCannotBeginAnyLater) {
    const std::uint64_t seed = seedOr(29);
    int proved = 0;
    for (std::uint64_t i = 0; i < 6; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 100 + i);
        Lesson lesson = naturalLesson(random, i % 2 == 0 ? 30 : 60);
        ArrangeOptions options = with(1, Aim::StartLate);
        options.conflictLimit = 40'000;
        const ArrangeResult best = arrangeVerified(lesson, options);
        if (best.status != ArrangeStatus::Proved) {
            continue;
        }
        ++proved;
        lesson.head.kitchenOpens = *best.last.best + lesson.head.grain;
        EXPECT_TRUE(arrangeVerified(lesson, with(1, Aim::StartLate)).placements.empty());
    }
    EXPECT_GT(proved, 0);
}

TEST(Lanes, StayingCloseMovesNothingThatStandsWell) {
    Random random(3);
    Lesson lesson = naturalLesson(random, 40);
    lesson.placements = arrangeVerified(lesson, with(2, Aim::StartLate)).placements;
    ASSERT_FALSE(lesson.placements.empty());
    ArrangeOptions options = with(2, Aim::StartLate);
    options.stayClose = true;
    const ArrangeResult again = arrangeVerified(lesson, options);
    for (const auto& [key, placement] : again.placements) {
        if (std::holds_alternative<StepKey>(key)) {
            EXPECT_EQ(placement.start, lesson.placements.at(key).start);
        }
    }
}

TEST(Lanes, OneThreadWithALimitOfConflictsGivesTheSamePlanEachTime) {
    Random random(5);
    const Lesson lesson = naturalLesson(random, 60);
    const ArrangeResult first = arrangeVerified(lesson, with(1, Aim::StartLate));
    const ArrangeResult second = arrangeVerified(lesson, with(1, Aim::StartLate));
    EXPECT_EQ(first.placements, second.placements);
    EXPECT_EQ(first.statistics.conflicts, second.statistics.conflicts);
}

TEST(Lanes, StoppingEndsBothAndKeepsThePlan) {
    Random random(8);
    const Lesson lesson = naturalLesson(random, 60);
    ArrangeOptions options;
    options.threads = 2;
    std::stop_source stop;
    const auto stopAtFirst = [&](const ArrangeProgress& progress) {
        if (progress.best) {
            stop.request_stop();
        }
    };
    const ArrangeResult result = arrange(lesson, options, stopAtFirst, stop.get_token());
    EXPECT_FALSE(result.placements.empty());
}

TEST(Lanes, WhatCannotBeIsSaidByBoth) {
    Random random(8);
    Lesson lesson = naturalLesson(random, 60);
    lesson.head.kitchenOpens = Instant::serving() - Duration::minutes(25);
    const ArrangeResult one = arrange(lesson, with(1, Aim::StartLate));
    const ArrangeResult two = arrange(lesson, with(2, Aim::StartLate));
    EXPECT_EQ(one.status, ArrangeStatus::NotPossible);
    EXPECT_EQ(two.status, ArrangeStatus::NotPossible);
}

}  // namespace
}  // namespace rangeline::test
