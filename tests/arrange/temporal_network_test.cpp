#include "arrange/explain/temporal_network.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rangeline::explain {
namespace {

using testing::ElementsAre;
using testing::Optional;

void between(TemporalNetwork& network, int from, int to, std::int64_t least, std::int64_t most) {
    network.atLeast(from, to, least);
    network.atLeast(to, from, -most);
}

// The two drivers of Dechter, Meiri and Pearl, Artificial Intelligence 49 (1991) 61-95: data from
// memory, the answer computed anew. T0 is 7:00; the first driver leaves at T1 and arrives at T2,
// the second leaves at T3 and arrives at T4.
TemporalNetwork twoDrivers(std::int64_t secondLeast, std::int64_t secondMost) {
    TemporalNetwork network(5);
    between(network, 0, 1, 10, 20);
    between(network, 1, 2, 30, 40);
    between(network, 3, 2, 10, 20);
    between(network, 3, 4, 40, 50);
    between(network, 0, 4, secondLeast, secondMost);
    return network;
}

TEST(TemporalNetwork, TwoDriversHaveTheKnownEarliestTimes) {
    const TemporalNetwork network = twoDrivers(60, 70);
    EXPECT_FALSE(network.positiveCycle().has_value());
    EXPECT_THAT(network.leastFrom(0),
                ElementsAre(Optional(0), Optional(10), Optional(40), Optional(20), Optional(60)));
}

TEST(TemporalNetwork, TwoDriversHaveTheKnownLatestTimes) {
    const TemporalNetwork network = twoDrivers(60, 70);
    // The latest time of a point is minus the least distance from it back to the origin.
    const std::int64_t latest[] = {0, 20, 50, 30, 70};
    for (int point = 0; point < 5; ++point) {
        EXPECT_THAT(network.leastFrom(point)[0], Optional(-latest[point]));
    }
}

TEST(TemporalNetwork, SecondDriverArrivingTooSoonIsACycleOverAllFive) {
    const TemporalNetwork network = twoDrivers(30, 35);
    const auto cycle = network.positiveCycle();
    ASSERT_TRUE(cycle.has_value());
    // 0 -> 1 (10), 1 -> 2 (30), 2 -> 3 (-20), 3 -> 4 (40), 4 -> 0 (-35): 25 too many.
    std::vector<int> sorted = *cycle;
    std::ranges::sort(sorted);
    EXPECT_THAT(sorted, ElementsAre(0, 2, 5, 6, 9));
}

TEST(TemporalNetwork, PointThatNothingTiesHasNoLeastTime) {
    TemporalNetwork network(2);
    EXPECT_EQ(network.leastFrom(0)[1], std::nullopt);
    EXPECT_FALSE(network.positiveCycle().has_value());
}

}  // namespace
}  // namespace rangeline::explain
