#include <gtest/gtest.h>

#include "exchange/lesson_file.h"
#include "model/validate.h"
#include "support/random_lesson.h"
#include "support/rich_lesson.h"

namespace rangeline {
namespace {

/// Reading back gives the same lesson, and writing that the same bytes.
void expectRoundTrip(const Lesson& lesson) {
    const std::string bytes = writeLesson(lesson);
    const auto again = readLesson(bytes);
    ASSERT_TRUE(again.ok()) << again.error().place << " fault "
                            << static_cast<int>(again.error().code) << "\n"
                            << bytes;
    EXPECT_TRUE(again.value() == lesson) << bytes;
    EXPECT_EQ(writeLesson(again.value()), bytes);
}

TEST(RoundTrip, ALessonWithEveryFieldComesBackEqual) {
    expectRoundTrip(test::richLesson());
}

TEST(RoundTrip, TheOtherUnitsComeBackEqual) {
    Lesson lesson = test::richLesson();
    lesson.head.units = Units::UsCustomary;
    expectRoundTrip(lesson);
}

TEST(RoundTrip, RandomLessonsComeBackEqual) {
    const std::uint64_t seed = test::seedOr(1);
    for (std::uint64_t i = 0; i < 200; ++i) {
        SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed + i));
        Random random(seed + i);
        test::RandomLessonSize size;
        size.dishes = static_cast<int>(random.between(1, 3));
        size.groups = static_cast<int>(random.between(1, 3));
        size.choices = 0.5;
        expectRoundTrip(test::randomLesson(random, size));
    }
}

}  // namespace
}  // namespace rangeline
