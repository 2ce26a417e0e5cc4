// Deletion in chunks on abstract questions, among them the published examples of QuickXplain.

#include "arrange/explain/minimal_conflict.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>

#include "base/random.h"
#include "support/random_lesson.h"

namespace rangeline::explain {
namespace {

using testing::ElementsAre;

/// Options of a car with their costs; together at most the budget.
Question withinBudget(std::vector<int> costs, int budget) {
    return [costs = std::move(costs), budget](std::span<const int> chosen) {
        int total = 0;
        for (const int option : chosen) {
            total += costs[static_cast<std::size_t>(option - 1)];
        }
        return total <= budget ? Answer{Verdict::Possible, {}}
                               : Answer{Verdict::NotPossible, {chosen.begin(), chosen.end()}};
    };
}

// Junker, QuickXplain, AAAI 2004, tables 1 and 2: running totals 500, 1000, 1800, 2300, 4900 of the
// options 1 roof racks, 2 CD player, 3 extra seat, 4 metal colour, 5 luxury version. The budget of
// 3000 is from memory; it agrees with both tables.
const std::vector<int> junkerCosts = {500, 500, 800, 500, 2600};

TEST(MinimalConflict, JunkersOptionsInOrderLeaveTheFirstAndTheFifth) {
    const MinimalConflict found = minimalConflict({1, 2, 3, 4, 5}, withinBudget(junkerCosts, 3000));
    EXPECT_TRUE(found.irreducible);
    EXPECT_THAT(found.members, ElementsAre(1, 5));
}

TEST(MinimalConflict, JunkersOptionsBackwardsLeaveTheFifthAndTheFourth) {
    const MinimalConflict found = minimalConflict({5, 4, 3, 2, 1}, withinBudget(junkerCosts, 3000));
    EXPECT_THAT(found.members, ElementsAre(5, 4));
}

/// O'Sullivan, Papadopoulos, Faltings and Pu, AAAI 2007: c1 a budget of 3000, c2 roof rack 500, c3
/// convertible 500, c4 CD player 500, c5 leather 2600; c2 and c3 exclude each other.
Answer carOptions(std::span<const int> chosen) {
    const auto has = [&](int c) { return std::ranges::count(chosen, c) > 0; };
    const int costs = 500 * (has(2) + has(3) + has(4)) + 2600 * has(5);
    const bool broken = (has(2) && has(3)) || (has(1) && costs > 3000);
    return broken ? Answer{Verdict::NotPossible, {chosen.begin(), chosen.end()}}
                  : Answer{Verdict::Possible, {}};
}

TEST(MinimalConflict, CarOptionsGiveEachOfThePrintedConflictsInSomeOrder) {
    std::vector<int> order = {1, 2, 3, 4, 5};
    std::vector<std::vector<int>> found;
    do {
        std::vector<int> members = minimalConflict(order, carOptions).members;
        std::ranges::sort(members);
        found.push_back(members);
    } while (std::ranges::next_permutation(order).found);
    std::ranges::sort(found);
    const auto repeated = std::ranges::unique(found);
    found.erase(repeated.begin(), repeated.end());
    EXPECT_THAT(found, ElementsAre(ElementsAre(1, 2, 5), ElementsAre(1, 3, 5), ElementsAre(1, 4, 5),
                                   ElementsAre(2, 3)));
}

TEST(MinimalConflict, WhatAQuestionLeavesOpenIsNotCalledSmallest) {
    const auto ask = [](std::span<const int> chosen) {
        return chosen.size() > 2 ? Answer{Verdict::NotPossible, {chosen.begin(), chosen.end()}}
                                 : Answer{};
    };
    const MinimalConflict found = minimalConflict({1, 2, 3, 4, 5}, ask);
    EXPECT_FALSE(found.irreducible);
    EXPECT_EQ(found.members.size(), 3U);
}

TEST(MinimalConflict, NothingNeededLeavesNothing) {
    const auto ask = [](std::span<const int>) { return Answer{Verdict::NotPossible, {}}; };
    EXPECT_TRUE(minimalConflict({1, 2, 3}, ask).members.empty());
}

/// Some hidden sets are conflicts, and whatever holds one; the answer names one of them, or more.
TEST(MinimalConflict, RandomFamiliesAreLeftWithOneOfTheirSets) {
    const std::uint64_t seed = test::seedOr(20265);
    Random random(seed);
    for (int trial = 0; trial < 500; ++trial) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " trial " << trial);
        std::vector<std::vector<int>> family;
        for (std::int64_t s = random.between(1, 4); s > 0; --s) {
            auto& set = family.emplace_back();
            for (int member = 0; member < 20; ++member) {
                if (random.chance(0.3)) {
                    set.push_back(member);
                }
            }
        }
        const auto ask = [&](std::span<const int> chosen) {
            for (const auto& set : family) {
                const bool inside = std::ranges::all_of(
                    set, [&](int m) { return std::ranges::count(chosen, m) > 0; });
                if (inside) {
                    return Answer{
                        Verdict::NotPossible,
                        random.chance(0.5) ? set : std::vector<int>(chosen.begin(), chosen.end())};
                }
            }
            return Answer{Verdict::Possible, {}};
        };
        std::vector<int> all(20);
        std::iota(all.begin(), all.end(), 0);
        const MinimalConflict found = minimalConflict(all, ask);
        ASSERT_EQ(ask(found.members).verdict, Verdict::NotPossible);
        for (const int member : found.members) {
            std::vector<int> rest = found.members;
            std::erase(rest, member);
            ASSERT_EQ(ask(rest).verdict, Verdict::Possible);
        }
    }
}

}  // namespace
}  // namespace rangeline::explain
