#include "model/edit.h"

#include <gtest/gtest.h>

#include "support/lesson_builder.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

Edit randomEdit(Random& random, const Lesson& lesson) {
    switch (random.between(0, 4)) {
        case 0: {
            SetHead edit{lesson.head};
            edit.head.name += "x";
            return edit;
        }
        case 1: {
            SetServings edit{lesson.servings};
            edit.servings.front().covers += 1;
            return edit;
        }
        case 2: {
            SetKitchen edit{lesson.kitchen};
            edit.kitchen.watchLimit += 1;
            return edit;
        }
        default: {
            SetPlacements edit;
            for (int i = 0; i < 3; ++i) {
                Placement placement;
                placement.start = Instant::atMinutes(random.between(-90, 0));
                const StepKey where = key("step" + std::to_string(random.between(0, 4)));
                edit.changes.push_back(
                    {where, random.chance(0.3) ? std::nullopt : std::optional(placement)});
            }
            return edit;
        }
    }
}

TEST(Edit, FollowedByItsInverseGivesTheSameLesson) {
    const std::uint64_t seed = seedOr(7);
    Random random(seed);
    Lesson lesson = randomLesson(random);
    std::vector<Lesson> before;
    std::vector<Edit> inverses;
    for (int i = 0; i < 200; ++i) {
        before.push_back(lesson);
        inverses.push_back(apply(lesson, randomEdit(random, lesson)));
    }
    while (!inverses.empty()) {
        apply(lesson, inverses.back());
        ASSERT_EQ(lesson, before.back()) << "RANGELINE_SEED=" << seed;
        inverses.pop_back();
        before.pop_back();
    }
}

TEST(Edit, TheDifferenceTurnsOnePlanIntoTheOther) {
    Random random(seedOr(8));
    Lesson lesson = randomLesson(random);
    for (int i = 0; i < 10; ++i) {
        apply(lesson, randomEdit(random, lesson));
    }
    const Placements old = lesson.placements;
    for (int i = 0; i < 10; ++i) {
        apply(lesson, randomEdit(random, lesson));
    }
    const Placements later = lesson.placements;
    lesson.placements = old;
    apply(lesson, placementDifference(old, later));
    EXPECT_EQ(lesson.placements, later);
    EXPECT_TRUE(placementDifference(later, later).changes.empty());
}

}  // namespace
}  // namespace rangeline::test
