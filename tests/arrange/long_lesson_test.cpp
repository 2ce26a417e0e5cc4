// Lessons with many more components than a range has pans: found by search, not by luck.

#include <gtest/gtest.h>

#include "arrange/verified.h"
#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

/// Plates that are put as late and as close together as they may be leave neither hands nor clean
/// pans for what goes on them: these lessons had no plan after fifty thousand conflicts.
TEST(LongLesson, OfSixtySmallPlatesIsPlanned) {
    for (const std::uint64_t seed : {6U, 8U}) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        Random random(seed);
        constexpr int steps = 240;
        ArrangeOptions options;
        options.conflictLimit = 2000;
        const ArrangeResult plan = arrangeVerified(naturalLesson(random, steps), options);
        EXPECT_FALSE(plan.placements.empty());
    }
}

}  // namespace
}  // namespace rangeline::test
