// Minutes to spare against published critical path tables.

#include <gtest/gtest.h>

#include "analysis/network.h"

namespace rangeline::test {
namespace {

using Table = std::map<std::string, int>;

/// A row of a printed table.
struct Row {
    Activity activity;
    int earliestStart, latestStart, slack;
};

struct Printed {
    std::vector<Row> rows;
    int length;

    std::vector<Activity> activities() const {
        std::vector<Activity> list;
        for (const Row& row : rows) {
            list.push_back(row.activity);
        }
        return list;
    }
    Table column(int Row::*value) const {
        Table table;
        for (const Row& row : rows) {
            table[row.activity.name] = row.*value;
        }
        return table;
    }
};

// B. W. Taylor, Introduction to Management Science, solutions to chapter 8, problem 1. Activities
// on arrows: "1-2" leads from event 1 to event 2.
const Printed netA{{{{"1-2", 7, {}}, 0, 2, 2},
                    {{"1-3", 10, {}}, 0, 0, 0},
                    {{"2-4", 6, {"1-2"}}, 7, 9, 2},
                    {{"3-4", 5, {"1-3"}}, 10, 10, 0},
                    {{"3-5", 4, {"1-3"}}, 10, 14, 4},
                    {{"4-5", 3, {"2-4", "3-4"}}, 15, 15, 0},
                    {{"5-6", 2, {"3-5", "4-5"}}, 18, 18, 0}},
                   20};

// The same source, problem 2; 4-5 is a dummy of no length.
const Printed netB{{{{"1-2", 8, {}}, 0, 1, 1},
                    {{"1-3", 10, {}}, 0, 0, 0},
                    {{"1-4", 9, {}}, 0, 6, 6},
                    {{"2-5", 6, {"1-2"}}, 8, 9, 1},
                    {{"2-6", 4, {"1-2"}}, 8, 16, 8},
                    {{"3-5", 5, {"1-3"}}, 10, 10, 0},
                    {{"4-5", 0, {"1-4"}}, 9, 15, 6},
                    {{"4-7", 7, {"1-4"}}, 9, 20, 11},
                    {{"5-7", 12, {"2-5", "3-5", "4-5"}}, 15, 15, 0},
                    {{"5-8", 15, {"2-5", "3-5", "4-5"}}, 15, 16, 1},
                    {{"6-9", 18, {"2-6"}}, 12, 20, 8},
                    {{"7-8", 4, {"4-7", "5-7"}}, 27, 27, 0},
                    {{"8-9", 7, {"5-8", "7-8"}}, 31, 31, 0}},
                   38};

// Hillier and Lieberman, Introduction to Operations Research, "Reliable Construction Co." (data
// from memory, the arithmetic worked out again); the length is the mean of each activity in weeks.
const Printed reliable{{{{"A", 2, {}}, 0, 0, 0},
                        {{"B", 4, {"A"}}, 2, 2, 0},
                        {{"C", 10, {"B"}}, 6, 6, 0},
                        {{"D", 6, {"C"}}, 16, 20, 4},
                        {{"E", 4, {"C"}}, 16, 16, 0},
                        {{"F", 5, {"E"}}, 20, 20, 0},
                        {{"G", 7, {"D"}}, 22, 26, 4},
                        {{"H", 9, {"E", "G"}}, 29, 33, 4},
                        {{"I", 7, {"C"}}, 16, 18, 2},
                        {{"J", 8, {"F", "I"}}, 25, 25, 0},
                        {{"K", 4, {"J"}}, 33, 34, 1},
                        {{"L", 5, {"J"}}, 33, 33, 0},
                        {{"M", 2, {"H"}}, 38, 42, 4},
                        {{"N", 6, {"K", "L"}}, 38, 38, 0}},
                       44};

class PublishedNetwork : public testing::TestWithParam<const Printed*> {};

TEST_P(PublishedNetwork, SpareAtEarliestStartsIsThePrintedSlack) {
    const Printed& net = *GetParam();
    const auto result =
        analyseNetwork(net.activities(), net.length, net.column(&Row::earliestStart));
    EXPECT_EQ(result.spare, net.column(&Row::slack));
}

TEST_P(PublishedNetwork, NothingToSpareAtLatestStarts) {
    const Printed& net = *GetParam();
    const auto result = analyseNetwork(net.activities(), net.length, net.column(&Row::latestStart));
    for (const auto& [name, spare] : result.spare) {
        EXPECT_EQ(spare, 0) << name;
    }
}

TEST_P(PublishedNetwork, LatestStartsDoNotDependOnWhereTheStepsLie) {
    const Printed& net = *GetParam();
    const auto result =
        analyseNetwork(net.activities(), net.length, oneByOne(net.activities(), net.length));
    EXPECT_EQ(result.latestStart, net.column(&Row::latestStart));
}

INSTANTIATE_TEST_SUITE_P(Printed, PublishedNetwork, testing::Values(&netA, &netB, &reliable));

TEST(CriticalPath, OfTaylorsFirstNet) {
    const auto result =
        analyseNetwork(netA.activities(), netA.length, netA.column(&Row::earliestStart));
    EXPECT_EQ(result.path, (std::vector<std::string>{"1-3", "3-4", "4-5", "5-6"}));
}

TEST(CriticalPath, OfReliableConstruction) {
    const auto result = analyseNetwork(reliable.activities(), reliable.length,
                                       reliable.column(&Row::earliestStart));
    EXPECT_EQ(result.path, (std::vector<std::string>{"A", "B", "C", "E", "F", "J", "L", "N"}));
}

// GLPK, examples/cpp.mod: "The optimal solution is 46".
TEST(CriticalPath, LengthOfTheGlpkExample) {
    const std::vector<Activity> net{
        {"A", 3, {}},        {"B", 4, {"A"}}, {"C", 3, {"B"}}, {"D", 10, {"B"}},
        {"E", 8, {"D"}},     {"F", 4, {"D"}}, {"G", 6, {"D"}}, {"H", 8, {"C", "E", "F", "G"}},
        {"I", 5, {"H"}},     {"J", 5, {"H"}}, {"K", 4, {"I"}}, {"L", 2, {"J"}},
        {"M", 4, {"K", "L"}}};
    const auto result = analyseNetwork(net, 46, oneByOne(net, 46));
    EXPECT_EQ(result.latestStart.at("A"), 0);
}

// All activities of the Reliable Construction Co. at their longest take 70 weeks, at their shortest
// 26 (worked out from the same table).
TEST(CriticalPath, LengthOfReliableConstructionAtItsExtremes) {
    const std::map<std::string, std::pair<int, int>> extremes{
        {"A", {1, 3}},  {"B", {2, 8}},  {"C", {6, 18}}, {"D", {4, 10}}, {"E", {1, 5}},
        {"F", {4, 10}}, {"G", {5, 11}}, {"H", {5, 17}}, {"I", {3, 9}},  {"J", {3, 9}},
        {"K", {4, 4}},  {"L", {1, 7}},  {"M", {1, 3}},  {"N", {5, 9}}};
    auto shortest = reliable.activities();
    auto longest = shortest;
    for (std::size_t i = 0; i < shortest.size(); ++i) {
        shortest[i].length = extremes.at(shortest[i].name).first;
        longest[i].length = extremes.at(longest[i].name).second;
    }
    EXPECT_EQ(analyseNetwork(shortest, 26, oneByOne(shortest, 26)).latestStart.at("A"), 0);
    EXPECT_EQ(analyseNetwork(longest, 70, oneByOne(longest, 70)).latestStart.at("A"), 0);
}

}  // namespace
}  // namespace rangeline::test
