// Published scheduling problems with known least lengths, written as lessons: a machine is a pool
// of one, an activity a step that nobody attends, one time unit a minute. Read backwards from
// serving, the least length is how late the first step can start.

#include <gtest/gtest.h>

#include "arrange/published.h"
#include "arrange/verified.h"

namespace rangeline::test {
namespace {

void expectLength(const Lesson& lesson, std::int64_t minutes) {
    const ArrangeResult result = arrangeVerified(lesson);
    ASSERT_EQ(result.status, ArrangeStatus::Proved);
    EXPECT_EQ(result.last.best, Instant::atMinutes(-minutes));
    EXPECT_EQ(result.last.bound, Instant::atMinutes(-minutes));
}

// Fisher and Thompson 6 x 6, optimum 55: JSPLIB instances/ft06 and instances.json (commit eea2b60);
// also stated in GLPK's example jssp.mod.
TEST(ArrangePublished, JobShopFt06TakesFiftyFive) {
    expectLength(jobShop({{{2, 1}, {0, 3}, {1, 6}, {3, 7}, {5, 3}, {4, 6}},
                          {{1, 8}, {2, 5}, {4, 10}, {5, 10}, {0, 10}, {3, 4}},
                          {{2, 5}, {3, 4}, {5, 8}, {0, 9}, {1, 1}, {4, 7}},
                          {{1, 5}, {0, 5}, {2, 5}, {3, 3}, {4, 8}, {5, 9}},
                          {{2, 9}, {1, 3}, {4, 5}, {5, 4}, {0, 3}, {3, 1}},
                          {{1, 3}, {3, 3}, {5, 9}, {0, 10}, {4, 4}, {2, 1}}},
                         6),
                 55);
}

// Patterson's first problem, optimum 19: kobe-rcpsp data/rcpsp/patterson.rcp and its optimum file
// (commit 994fcf0).
TEST(ArrangePublished, PattersonOneTakesNineteen) {
    const std::vector<std::vector<int>> demands = {
        {0, 0, 0}, {1, 0, 0}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}, {1, 0, 1}, {1, 0, 0},
        {0, 0, 0}, {0, 1, 1}, {0, 0, 1}, {0, 0, 1}, {0, 1, 0}, {0, 0, 0}, {0, 0, 0}};
    const std::vector<int> lengths = {0, 6, 4, 3, 1, 6, 2, 1, 4, 3, 2, 3, 5, 0};
    const std::vector<std::vector<int>> followers = {{1, 2, 3}, {8, 9},  {4, 5, 6}, {7, 10}, {9},
                                                     {11},      {7, 10}, {12},      {13},    {11},
                                                     {11},      {12},    {13},      {}};
    expectLength(project({2, 1, 2}, lengths, demands, finishToStart(lengths, followers)), 19);
}

// PSP1 of the RCPSP/max set sm_j10, optimum 26: kobe-rcpsp data/rcpsp-max (commit 994fcf0).
TEST(ArrangePublished, MaximalLagsPsp1Takes26) {
    const std::vector<int> lengths = {0, 3, 10, 3, 3, 3, 5, 10, 2, 6, 1, 0};
    const std::vector<std::vector<int>> demands = {
        {0, 0, 0, 0, 0}, {4, 1, 0, 0, 0}, {1, 0, 3, 0, 0}, {4, 0, 2, 2, 3},
        {0, 0, 0, 3, 0}, {0, 1, 2, 4, 0}, {2, 3, 4, 0, 0}, {0, 4, 4, 0, 4},
        {2, 0, 0, 4, 4}, {5, 0, 0, 1, 1}, {0, 1, 0, 0, 0}, {0, 0, 0, 0, 0}};
    const std::vector<Lag> lags = {{0, 1, 0},  {0, 2, 0},   {0, 3, 0},   {0, 4, 0},   {1, 9, 9},
                                   {1, 7, 1},  {1, 8, 8},   {1, 10, 2},  {2, 8, 24},  {3, 10, 4},
                                   {3, 7, 8},  {4, 10, 0},  {4, 9, 0},   {4, 5, 7},   {5, 6, 0},
                                   {6, 11, 5}, {7, 11, 10}, {8, 1, -22}, {8, 2, -34}, {8, 11, 2},
                                   {9, 11, 6}, {10, 11, 1}};
    expectLength(project({5, 5, 5, 5, 5}, lengths, demands, lags), 26);
}

// PSP2 of the same set has no schedule at all (its file says so).
TEST(ArrangePublished, MaximalLagsPsp2IsNotPossible) {
    const std::vector<int> lengths = {0, 4, 9, 10, 1, 9, 9, 2, 9, 8, 9, 0};
    const std::vector<std::vector<int>> demands = {
        {0, 0, 0, 0, 0}, {3, 4, 5, 4, 0}, {0, 3, 0, 2, 5}, {0, 3, 4, 1, 0},
        {0, 5, 0, 0, 0}, {0, 0, 1, 0, 4}, {4, 3, 4, 3, 4}, {2, 0, 0, 4, 0},
        {0, 0, 0, 0, 5}, {1, 0, 0, 0, 2}, {3, 3, 0, 0, 0}, {0, 0, 0, 0, 0}};
    const std::vector<Lag> lags = {{0, 3, 0},   {0, 2, 0},   {0, 4, 0},   {0, 1, 0}, {0, 5, 0},
                                   {1, 7, 0},   {2, 10, 6},  {3, 8, -3},  {4, 6, 3}, {5, 8, 11},
                                   {6, 10, 2},  {7, 10, -1}, {7, 1, 0},   {8, 9, 5}, {9, 11, 8},
                                   {9, 5, -17}, {10, 11, 9}, {10, 2, -10}};
    const ArrangeResult result = arrangeVerified(project({5, 5, 5, 5, 5}, lengths, demands, lags));
    EXPECT_EQ(result.status, ArrangeStatus::NotPossible);
    EXPECT_TRUE(result.placements.empty());
}

}  // namespace
}  // namespace rangeline::test
