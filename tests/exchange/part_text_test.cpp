#include "exchange/part_text.h"

#include <gtest/gtest.h>

#include "model/expand.h"
#include "support/random_lesson.h"
#include "support/random_placements.h"
#include "support/rich_lesson.h"

namespace rangeline {

// Edits need no comparison outside tests.
bool operator==(const SetPlacements& a, const SetPlacements& b) {
    return a.changes == b.changes;
}
bool operator==(const SetHead& a, const SetHead& b) {
    return a.head == b.head;
}
bool operator==(const SetKitchen& a, const SetKitchen& b) {
    return a.kitchen == b.kitchen;
}
bool operator==(const SetServings& a, const SetServings& b) {
    return a.servings == b.servings;
}
bool operator==(const SetChoices& a, const SetChoices& b) {
    return a.choices == b.choices;
}

namespace {

template <class Part>
void expectRoundTrip(const Part& part) {
    const std::string text = writePart(part);
    const auto again = readPart<Part>(text);
    ASSERT_TRUE(again.ok()) << again.error().place << "\n" << text;
    EXPECT_TRUE(again.value() == part) << text;
    EXPECT_EQ(writePart(again.value()), text);
    EXPECT_EQ(text.find('\n'), std::string::npos);
}

TEST(PartText, EveryPartOfALessonWithEveryFieldComesBackEqual) {
    const Lesson lesson = test::richLesson();
    expectRoundTrip(lesson.head);
    expectRoundTrip(lesson.kitchen);
    expectRoundTrip(lesson.choices);
    for (const Serving& serving : lesson.servings) {
        expectRoundTrip(serving.dish);
    }
    for (const auto& [key, placement] : lesson.placements) {
        expectRoundTrip(PlacementPart(key, placement));
    }
}

TEST(PartText, EveryKindOfEditComesBackEqual) {
    const Lesson lesson = test::richLesson();
    expectRoundTrip(EditsPart{placementDifference({}, lesson.placements),
                              placementDifference(lesson.placements, {}), SetHead{lesson.head},
                              SetKitchen{lesson.kitchen}, SetServings{lesson.servings},
                              SetChoices{lesson.choices}});
}

TEST(PartText, RandomPlacementsAndTheirInversesComeBackEqual) {
    const std::uint64_t seed = test::seedOr(1);
    for (std::uint64_t i = 0; i < 100; ++i) {
        SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed + i));
        Random random(seed + i);
        Lesson lesson = test::randomLesson(random);
        Lesson other = lesson;
        const Expanded expanded = expand(lesson);
        test::placeAtRandom(random, lesson, expanded, 0.5);
        test::placeAtRandom(random, other, expanded, 0.5);
        const Edit edit = placementDifference(lesson.placements, other.placements);
        expectRoundTrip(EditsPart{edit, apply(lesson, edit)});
    }
}

TEST(PartText, RefusesAnEditThatIsNoneOrTwo) {
    EXPECT_FALSE(readPart<EditsPart>("[{}]").ok());
    EXPECT_FALSE(readPart<EditsPart>(R"([{"choices": {}, "placements": []}])").ok());
    EXPECT_FALSE(readPart<EditsPart>(R"([{"placements": [{"start": "0 min"}]}])").ok());
    EXPECT_FALSE(readPart<EditsPart>("{}").ok());
}

}  // namespace
}  // namespace rangeline
