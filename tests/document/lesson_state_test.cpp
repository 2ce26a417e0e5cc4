#include "document/lesson_state.h"

#include <gtest/gtest.h>

#include "document/placing.h"
#include "document/small_supper.h"
#include "model/validate.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

bool has(const std::vector<Finding>& findings, FindingCode code) {
    return std::ranges::find(findings, code, &Finding::code) != findings.end();
}

TEST(SmallSupper, IsUsableAndWithoutCollisions) {
    const Lesson lesson = placedSupper().lesson;
    ASSERT_TRUE(validate(lesson).empty());
    for (const Finding& finding : checkLesson(lesson, expand(lesson))) {
        EXPECT_EQ(finding.severity, Severity::Caution) << static_cast<int>(finding.code);
    }
}

TEST(LessonState, TryingOutFindsWhatWouldCollideAndChangesNothing) {
    LessonState state(placedSupper().lesson);
    const Lesson before = state.lesson();
    const std::vector<Finding> findings = state.findings();
    const PlacementKey trim = key("trim");
    Instant seen;
    const auto found = state.tryOut(
        moveBy(state.index(), {&trim, 1}, 8_min),
        [&](const UseIndex& index) { seen = index.placed(index.nodeOf(trim)).interval.begin; });
    EXPECT_EQ(seen, minute(-52));
    EXPECT_TRUE(has(found, FindingCode::HandsTwice));     // char at -50 wants the same hands
    EXPECT_TRUE(has(found, FindingCode::TooEarlyAfter));  // and what was trimmed
    EXPECT_EQ(state.lesson(), before);
    EXPECT_EQ(state.findings(), findings);
    EXPECT_EQ(state.index().placed(state.index().nodeOf(trim)).interval.begin, minute(-60));
}

TEST(LessonState, TryingOutLeavesOutWhatIsWrongElsewhere) {
    LessonBuilder builder = placedSupper();
    builder.lesson.placements.at(key("roast")).oven->setTo = 300_F;
    LessonState state(builder.lesson);
    const PlacementKey trim = key("trim");
    EXPECT_TRUE(state.tryOut(moveBy(state.index(), {&trim, 1}, -5_min)).empty());
}

TEST(LessonState, CountsCollisionsThatAnEditAddsAndTakesAway) {
    LessonState state(placedSupper().lesson);
    const PlacementKey trim = key("trim");
    const SetPlacements later = moveBy(state.index(), {&trim, 1}, 8_min);
    const int added = state.collisionsAdded(later);
    EXPECT_GT(added, 0);
    Edit edit = later;
    state.exchange(edit);
    EXPECT_EQ(state.collisionsAdded(std::get<SetPlacements>(edit)), -added);
}

TEST(LessonState, AnalysisFollowsTheEdits) {
    LessonState state(placedSupper().lesson);
    const auto spareOf = [&](const PlacementKey& wanted) {
        const auto& spares = state.analysis().spares;
        return std::ranges::find(spares, wanted, &Spare::key)->spare;
    };
    EXPECT_EQ(spareOf(key("roast")), 7_min);  // ends at -10, plate starts at -3
    const PlacementKey roast = key("roast");
    Edit edit = moveBy(state.index(), {&roast, 1}, 5_min);
    state.exchange(edit);
    EXPECT_EQ(spareOf(key("roast")), 2_min);
}

/// Random edits keep findings equal to those from scratch, and their inverses lead back.
TEST(LessonState, RandomEditsAgreeWithALessonFromScratch) {
    const std::uint64_t seed = seedOr(7);
    SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed);
    Random random(seed);
    for (int round = 0; round < 10; ++round) {
        LessonState state(randomLesson(random));
        const Lesson start = state.lesson();
        std::vector<Edit> inverses;
        for (int step = 0; step < 15; ++step) {
            const auto task = static_cast<int>(random.between(0, state.index().tasks() - 1));
            Edit edit = placeTask(state.index(), task, minute(random.between(-120, 0)), {});
            state.tryOut(std::get<SetPlacements>(edit));
            state.exchange(edit);
            inverses.push_back(edit);
            ASSERT_EQ(state.findings(), checkLesson(state.lesson(), state.expanded()));
        }
        for (; !inverses.empty(); inverses.pop_back()) {
            state.exchange(inverses.back());
        }
        ASSERT_EQ(state.lesson(), start);
        ASSERT_EQ(state.findings(), checkLesson(start, expand(start)));
    }
}

}  // namespace
}  // namespace rangeline::test
