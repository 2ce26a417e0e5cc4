// What the cooking log teaches, worked by hand.

#include "rehearse/learned.h"

#include <gmock/gmock.h>

namespace rangeline::test {
namespace {

/// One night each.
std::vector<Logging> nights(std::initializer_list<int> minutes, const std::string& cook = {}) {
    std::vector<Logging> made;
    for (const int each : minutes) {
        made.push_back({cook + std::to_string(made.size()), cook, Duration::minutes(each)});
    }
    return made;
}

DurationRange minutes(int shortest, int likely, int longest) {
    return {Duration::minutes(shortest), Duration::minutes(likely), Duration::minutes(longest)};
}

TEST(Learned, SaysNothingAfterTwoNights) {
    EXPECT_FALSE(learnedFrom({}));
    EXPECT_FALSE(learnedFrom(nights({10, 12})));
}

TEST(Learned, OfThreeNightsIsTheirRangeAndTheMiddleOne) {
    const auto learned = learnedFrom(nights({14, 10, 12}));
    ASSERT_TRUE(learned);
    EXPECT_EQ(learned->time, minutes(10, 12, 14));
    EXPECT_EQ(learned->nights, 3);
    EXPECT_EQ(learned->odd, 0);
}

/// Median 12; distances 2, 0, 28, 1, 1: their median 1, three times 1.4826 of it 4.4 minutes.
TEST(Learned, LeavesTheOddNightOut) {
    const auto learned = learnedFrom(nights({10, 12, 40, 13, 11}));
    ASSERT_TRUE(learned);
    EXPECT_EQ(learned->time, minutes(10, 12, 13));
    EXPECT_EQ(learned->nights, 5);
    EXPECT_EQ(learned->odd, 1);
}

/// Median 12, distances 0, 1, 28: their median 1.
TEST(Learned, LeavesTheOddNightOutEvenOfThree) {
    EXPECT_EQ(learnedFrom(nights({12, 40, 11}))->time, minutes(11, 12, 12));
}

TEST(Learned, DoesNotCallASmallDifferenceOddWhereAllOthersAreEqual) {
    const auto learned = learnedFrom(nights({20, 20, 20, 24}));
    EXPECT_EQ(learned->time, minutes(20, 20, 24));
    EXPECT_EQ(learned->odd, 0);
    EXPECT_EQ(learnedFrom(nights({20, 20, 20, 26}))->odd, 1);
}

TEST(Learned, TakesTheMiddleBetweenTwoOfAnEvenNumber) {
    EXPECT_EQ(learnedFrom(nights({10, 20, 12, 18}))->time, minutes(10, 15, 20));
}

TEST(Learned, CountsTheLoadsOfOneNightOnce) {
    std::vector<Logging> loads = nights({10, 12});
    for (const int each : {30, 31, 32}) {
        loads.push_back({"busy", {}, Duration::minutes(each)});
    }
    const auto learned = learnedFrom(loads);
    EXPECT_EQ(learned->nights, 3);
    EXPECT_EQ(learned->time.likely, Duration::minutes(12));
}

TEST(Learned, IsRoundedAsACardSaysIt) {
    const auto of = [](std::initializer_list<int> seconds) {
        std::vector<Logging> made;
        for (const int each : seconds) {
            made.push_back({std::to_string(made.size()), {}, Duration::seconds(each)});
        }
        return learnedFrom(made)->time;
    };
    EXPECT_EQ(of({715, 742, 790}), minutes(11, 12, 14));
    EXPECT_EQ(of({200, 221, 226}), (DurationRange{Duration::seconds(195), Duration::seconds(225),
                                                  Duration::seconds(240)}));
    EXPECT_EQ(of({1, 1, 2}),
              (DurationRange{Duration::seconds(5), Duration::seconds(5), Duration::seconds(5)}));
}

TEST(LearnedByCook, SaysNothingWhereCooksTakeAboutAsLong) {
    std::vector<Logging> both = nights({10, 11, 12}, "ann");
    for (const Logging& logging : nights({12, 13, 13}, "bo")) {
        both.push_back(logging);
    }
    EXPECT_TRUE(cooksWhoDiffer(both).empty());
}

TEST(LearnedByCook, TellsOfEachWhereTheyDiffer) {
    std::vector<Logging> all = nights({10, 11, 12}, "ann");
    for (const Logging& logging : nights({20, 21, 25}, "bo")) {
        all.push_back(logging);
    }
    for (const Logging& logging : nights({40, 41}, "too seldom")) {
        all.push_back(logging);
    }
    for (const Logging& logging : nights({5, 5, 5})) {
        all.push_back(logging);
    }
    const auto cooks = cooksWhoDiffer(all);
    ASSERT_EQ(cooks.size(), 2U);
    EXPECT_EQ(cooks[0], (LearnedOfCook{"ann", {minutes(10, 11, 12), 3, 0}}));
    EXPECT_EQ(cooks[1], (LearnedOfCook{"bo", {minutes(20, 21, 25), 3, 0}}));
}

}  // namespace
}  // namespace rangeline::test
