#include <gtest/gtest.h>

#include "arrange/verified.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

ArrangeOptions limited() {
    ArrangeOptions options;
    options.conflictLimit = 3000;
    return options;
}

void arrangeMany(const RandomLessonSize& size, int count) {
    const std::uint64_t seed = seedOr(20261);
    for (int i = 0; i < count; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        arrangeVerified(randomLesson(random, size), limited());
        if (testing::Test::HasFailure()) {
            return;
        }
    }
}

TEST(Arrange, RandomLessonsGiveNoCollision) {
    arrangeMany({}, 300);
}

TEST(Arrange, RandomLessonsWithManyBatchesGiveNoCollision) {
    RandomLessonSize size;
    size.batches = 0.8;
    size.burnerSteps = 0.6;
    arrangeMany(size, 200);
}

TEST(Arrange, RandomLessonsWithTwoOvensAndChoicesGiveNoCollision) {
    RandomLessonSize size;
    size.ovens = 2;
    size.ovenSteps = 0.5;
    size.choices = 0.3;
    size.components = 4;
    arrangeMany(size, 200);
}

TEST(Arrange, RandomLessonsForGroupsGiveNoCollision) {
    RandomLessonSize size;
    size.groups = 3;
    size.components = 2;
    arrangeMany(size, 100);
}

}  // namespace
}  // namespace rangeline::test
