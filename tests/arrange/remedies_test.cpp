// What would help: each change is applied and planned.

#include "arrange/remedies.h"

#include <gtest/gtest.h>

#include "arrange/verified.h"
#include "base/random.h"
#include "model/turn_out.h"
#include "model/validate.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

/// Two things of ten minutes for one pan, in a kitchen that opens a quarter of an hour before
/// serving: five minutes short.
LessonBuilder twoInOnePan() {
    LessonBuilder builder;
    builder.lesson.head.kitchenOpens = minute(-15);
    builder.ware("pan", "saute-pan", 1);
    for (const char* id : {"leeks", "mushrooms"}) {
        builder.step(id, {away(10_min)}).wares = {fresh("saute-pan")};
        builder.get(id).wares.front().turnedOut = true;
    }
    return builder;
}

const Remedy* find(const std::vector<Remedy>& remedies, RemedyKind kind) {
    const auto found = std::ranges::find(remedies, kind, &Remedy::kind);
    return found == remedies.end() ? nullptr : &*found;
}

Lesson withEdits(Lesson lesson, const Remedy& remedy) {
    for (const Edit& edit : remedy.edits) {
        apply(lesson, edit);
    }
    return lesson;
}

TEST(Remedies, OnePanForTwoIsHelpedByAnotherAndByFiveMinutes) {
    const Lesson lesson = twoInOnePan().lesson;
    const Explanation explanation = explainNotPossible(lesson);
    ASSERT_EQ(explanation.status, ExplainStatus::Smallest);
    const std::vector<Remedy> remedies = whatMakesItPossible(lesson, explanation);
    const Remedy* pan = find(remedies, RemedyKind::AnotherWare);
    ASSERT_NE(pan, nullptr);
    EXPECT_EQ(pan->start, minute(-10));
    for (const RemedyKind kind : {RemedyKind::ServeLater, RemedyKind::OpenEarlier}) {
        const Remedy* time = find(remedies, kind);
        ASSERT_NE(time, nullptr);
        EXPECT_EQ(time->by, 5_min);
        EXPECT_TRUE(time->least);
        EXPECT_EQ(time->start, minute(-20));
    }
}

TEST(Remedies, ThreeThatWaitInOnePanForThePlateAreTurnedOut) {
    LessonBuilder builder;
    builder.ware("pan", "saute-pan", 1);
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    for (const char* id : {"leeks", "mushrooms", "eggs"}) {
        builder.step(id, {away(10_min)}).wares = {fresh("saute-pan")};
        builder.uses("plate", id);
    }
    const Explanation explanation = explainNotPossible(builder.lesson);
    ASSERT_EQ(explanation.status, ExplainStatus::Smallest);
    const std::vector<Remedy> remedies = whatMakesItPossible(builder.lesson, explanation);
    ASSERT_EQ(remedies.size(), 1U) << "one more pan is not enough for three";
    EXPECT_EQ(remedies.front().kind, RemedyKind::TurnOut);
    const Lesson changed = withEdits(builder.lesson, remedies.front());
    EXPECT_TRUE(changed.servings[0].dish.components[0].steps[1].wares[0].turnedOut);
    EXPECT_EQ(arrangeVerified(changed).status, ArrangeStatus::Proved);
}

TEST(Remedies, FoodThatGoesOnInItsPanOrIsKeptHotThereIsNotTurnedOut) {
    LessonBuilder builder;
    builder.ware("pan", "saute-pan", 1);
    builder.step("fry", {away(10_min)}).wares = {fresh("saute-pan")};
    Step& braise = builder.step("braise", {away(10_min)});
    braise.wares = {fresh("saute-pan")};
    braise.wares.front().carriesOn = builder.get("fry").id;
    braise.after.storage = Storage::HotOnBurner;
    builder.step("plate", {hands(5_min)}).plates = true;
    builder.uses("braise", "fry");
    builder.uses("plate", "braise");
    EXPECT_FALSE(turnedOut(builder.lesson, "saute-pan"));
    builder.get("braise").after.storage = Storage::Room;
    EXPECT_TRUE(turnedOut(builder.lesson, "saute-pan"));
    EXPECT_FALSE(turnedOut(builder.lesson, "pot"));
}

TEST(Remedies, ServingLaterMovesTheClockAndNothingElse) {
    LessonBuilder builder = twoInOnePan();
    builder.lesson.head.servingTime = "2027-12-31T23:57";
    builder.place("leeks", -15).pinned = true;
    const std::vector<Remedy> remedies =
        whatMakesItPossible(builder.lesson, explainNotPossible(builder.lesson));
    const Remedy* later = find(remedies, RemedyKind::ServeLater);
    ASSERT_NE(later, nullptr);
    const Lesson changed = withEdits(builder.lesson, *later);
    EXPECT_EQ(changed.head.servingTime, "2028-01-01T00:02");
    EXPECT_EQ(changed.head.kitchenOpens, minute(-20));
    EXPECT_EQ(changed.placements.at(key("leeks")).start, minute(-20));
}

TEST(Remedies, APinInTheWayIsTakenOff) {
    LessonBuilder builder = twoInOnePan();
    builder.lesson.head.kitchenOpens = minute(-60);
    builder.place("leeks", -5).pinned = true;
    builder.place("mushrooms", -60);
    const Explanation explanation = explainNotPossible(builder.lesson);
    const auto remedies = whatMakesItPossible(builder.lesson, explanation);
    ASSERT_NE(find(remedies, RemedyKind::Unpin), nullptr);
    EXPECT_EQ(find(remedies, RemedyKind::Unpin)->start, minute(-20));
}

TEST(Remedies, AnotherPanLetsAPlacedLessonStartLater) {
    LessonBuilder builder = twoInOnePan();
    builder.lesson.head.kitchenOpens.reset();
    const ArrangeResult plan = arrangeVerified(builder.lesson);
    ASSERT_EQ(plan.status, ArrangeStatus::Proved);
    builder.lesson.placements = plan.placements;
    const Explanation explanation = explainPlating(builder.lesson);
    ASSERT_EQ(explanation.status, ExplainStatus::Smallest);
    const auto has = [&](RequirementKind kind) {
        return std::ranges::count(explanation.requirements, kind, &Requirement::kind) > 0;
    };
    EXPECT_TRUE(has(RequirementKind::Wares));
    EXPECT_TRUE(has(RequirementKind::Serving));
    const auto remedies = whatStartsLater(builder.lesson, explanation);
    ASSERT_EQ(remedies.size(), 1U);
    EXPECT_EQ(remedies.front().kind, RemedyKind::AnotherWare);
    EXPECT_EQ(remedies.front().start, minute(-10));
}

TEST(Remedies, ALessonThatStartsTooEarlyCanBeBetter) {
    LessonBuilder builder = twoInOnePan();
    builder.lesson.head.kitchenOpens.reset();
    builder.lesson.placements = arrangeVerified(builder.lesson).placements;
    for (auto& [where, placement] : builder.lesson.placements) {
        placement.start = placement.start - 1_min;
    }
    EXPECT_EQ(explainPlating(builder.lesson).status, ExplainStatus::Possible);
}

TEST(Remedies, RandomLessonsThatOpenTooLateArePossibleWithEachRemedy) {
    const std::uint64_t seed = seedOr(20266);
    int tried = 0;
    for (int i = 0; i < 40; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        Lesson lesson = randomLesson(random);
        const ArrangeResult open = arrangeVerified(lesson);
        if (open.status != ArrangeStatus::Proved) {
            continue;
        }
        // So many minutes too late that nothing but the opening is in the way.
        const Duration missing = Duration::minutes(random.between(1, 7));
        lesson.head.kitchenOpens = *open.last.best + missing;
        const Explanation explanation = explainNotPossible(lesson);
        ASSERT_EQ(explanation.status, ExplainStatus::Smallest);
        const auto remedies = whatMakesItPossible(lesson, explanation);
        const Remedy* earlier = find(remedies, RemedyKind::OpenEarlier);
        ASSERT_NE(earlier, nullptr);
        EXPECT_EQ(earlier->by, missing);
        EXPECT_TRUE(earlier->least);
        for (const Remedy& remedy : remedies) {
            ++tried;
            const Lesson changed = withEdits(lesson, remedy);
            ASSERT_TRUE(validate(changed).empty());
            ArrangeOptions limits;
            limits.conflictLimit = 1000;
            ASSERT_FALSE(arrangeVerified(changed, limits).placements.empty());
        }
    }
    EXPECT_GT(tried, 30);
}

TEST(Remedies, AStopLeavesOutWhatWasNotTried) {
    const Lesson lesson = twoInOnePan().lesson;
    const Explanation explanation = explainNotPossible(lesson);
    std::stop_source stopped;
    stopped.request_stop();
    EXPECT_TRUE(whatMakesItPossible(lesson, explanation, {}, stopped.get_token()).empty());
    EXPECT_EQ(explainNotPossible(lesson, {}, stopped.get_token()).status, ExplainStatus::Stopped);
}

}  // namespace
}  // namespace rangeline::test
