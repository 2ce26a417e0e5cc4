// After an edit the plan changes as little as it must.

#include <gtest/gtest.h>

#include "arrange/verified.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

/// Three things that one cook does, any order of which would do.
Lesson threeJobs() {
    LessonBuilder builder;
    builder.step("a", {hands(5_min)});
    builder.step("b", {hands(5_min)});
    builder.step("c", {hands(5_min)});
    return builder.lesson;
}

PlacementKey keyOf(const Lesson& lesson, const char* step) {
    const Expanded expanded = expand(lesson);
    for (const Task& task : expanded.tasks) {
        if (stepOf(lesson, task).id.text == step) {
            return task.key;
        }
    }
    return {};
}

ArrangeOptions close() {
    ArrangeOptions options;
    options.stayClose = true;
    return options;
}

TEST(ArrangeStayingClose, PlanThatWorksIsLeftAsItIs) {
    Lesson lesson = threeJobs();
    lesson.placements = arrangeVerified(lesson).placements;
    for (auto& [key, placement] : lesson.placements) {
        placement.start = placement.start - 30_min;  // earlier than it need be
    }
    const ArrangeResult result = arrangeVerified(lesson, close());
    EXPECT_EQ(result.status, ArrangeStatus::Proved);
    EXPECT_EQ(result.placements, lesson.placements);
}

TEST(ArrangeStayingClose, LongerStepMovesOnlyWhatIsInItsWay) {
    Lesson lesson = threeJobs();
    const PlacementKey a = keyOf(lesson, "a");
    const PlacementKey b = keyOf(lesson, "b");
    const PlacementKey c = keyOf(lesson, "c");
    lesson.placements = arrangeVerified(lesson).placements;
    lesson.placements[a].start = Instant() - 60_min;
    lesson.placements[b].start = Instant() - 40_min;
    lesson.placements[c].start = Instant() - 34_min;
    Step& longer = lesson.servings.front().dish.components.front().steps.front();
    ASSERT_EQ(longer.id.text, "a");
    longer.time.likely = longer.time.longest = 22_min;
    longer.segments.front().length = 22_min;
    const ArrangeResult result = arrangeVerified(lesson, close());
    EXPECT_EQ(result.status, ArrangeStatus::Proved);
    // Two minutes must be made; of the ways to do so, one that starts late.
    EXPECT_EQ(result.placements.at(a).start, Instant() - 61_min);
    EXPECT_EQ(result.placements.at(b).start, Instant() - 39_min);
    EXPECT_EQ(result.placements.at(c).start, Instant() - 34_min);
}

}  // namespace
}  // namespace rangeline::test
