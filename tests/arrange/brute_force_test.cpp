// Tiny random kitchens: the planner's answer against every possible placement.

#include <gtest/gtest.h>

#include "arrange/brute_force.h"
#include "arrange/tiny_lesson.h"
#include "arrange/verified.h"
#include "base/random.h"
#include "model/validate.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

TEST(Arrange, TinyLessonsMatchBruteForce) {
    const std::uint64_t seed = seedOr(20262);
    int possible = 0;
    int impossible = 0;
    for (int i = 0; i < 120; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        const Lesson lesson = tinyLesson(random);
        if (!validate(lesson).empty()) {
            continue;  // a pan carried on from a step without one
        }
        const ArrangeResult result = arrangeVerified(lesson);
        const Instant earliest = Instant() - tinyGrains(12);
        const auto best = latestStartByBruteForce(lesson, earliest, Instant() - tinyGrains(1));
        if (result.status == ArrangeStatus::NotPossible) {
            ASSERT_FALSE(best.has_value());
            ++impossible;
        } else {
            ASSERT_EQ(result.status, ArrangeStatus::Proved);
            ASSERT_EQ(best.value_or(*result.last.best), *result.last.best);
            ASSERT_TRUE(best || *result.last.best < earliest);
            possible += best ? 1 : 0;
        }
    }
    EXPECT_GT(possible, 20);
    EXPECT_GT(impossible, 2);
}

}  // namespace
}  // namespace rangeline::test
