// Planned against real, and what decided plating in fact; worked by hand.

#include "live/review.h"

#include <gmock/gmock.h>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using live::Review;
using live::Taken;

/// Chop, then simmer, then plate at -5 for serving at 0; a dressing beside it.
LessonBuilder threeSteps() {
    LessonBuilder builder;
    builder.step("chop", {hands(10_min)});
    builder.step("simmer", {away(20_min)});
    builder.step("dressing", {hands(5_min)});
    builder.step("plate", {hands(5_min)}).plates = true;
    builder.uses("simmer", "chop");
    builder.uses("plate", "simmer");
    builder.uses("plate", "dressing");
    for (const auto& [id, at] :
         {std::pair("chop", -40), {"simmer", -30}, {"dressing", -20}, {"plate", -5}}) {
        assign(builder.place(id, at), "ann");
    }
    return builder;
}

Taken took(const std::string& step, std::int64_t from, std::int64_t to, Duration planned) {
    return {key(step), minute(from), minute(to), planned};
}

std::vector<std::string> namesOf(const Review& review) {
    std::vector<std::string> names;
    for (const live::Decider& decider : review.deciders) {
        names.push_back(std::get<StepKey>(decider.key).step.text);
    }
    return names;
}

TEST(ReviewOfAService, SaysHowMuchLaterAndLongerThanPlanned) {
    const Review review = live::review(
        threeSteps().lesson, {took("simmer", -28, -3, 20_min), took("chop", -40, -28, 10_min)});
    ASSERT_EQ(review.steps.size(), 2U);
    EXPECT_EQ(review.steps[0].key, key("chop"));
    EXPECT_EQ(review.steps[0].later, Duration());
    EXPECT_EQ(review.steps[0].longer, 2_min);
    EXPECT_EQ(review.steps[1].later, 2_min);
    EXPECT_EQ(review.steps[1].longer, 5_min);
    EXPECT_FALSE(review.late) << "when plating was done is not known";
    EXPECT_TRUE(review.deciders.empty());
}

TEST(ReviewOfAService, FollowsWhatHeldPlatingUp) {
    const Review review = live::review(
        threeSteps().lesson, {took("chop", -40, -28, 10_min), took("simmer", -27, -1, 20_min),
                              took("dressing", -20, -14, 5_min), took("plate", 1, 6, 5_min)});
    EXPECT_EQ(review.late, 6_min);
    EXPECT_THAT(namesOf(review), testing::ElementsAre("chop", "simmer", "plate"));
    EXPECT_EQ(review.deciders[0].longer, 2_min);
    EXPECT_EQ(review.deciders[1].longer, 6_min);
    EXPECT_EQ(review.deciders[1].idle, 1_min);
    EXPECT_EQ(review.deciders[2].idle, 2_min) << "the simmered food was there at -1";
}

TEST(ReviewOfAService, TakesWhatIsNotKnownToHaveGoneAsPlanned) {
    const Review review = live::review(
        threeSteps().lesson, {took("chop", -35, -20, 10_min), took("plate", 0, 5, 5_min)});
    EXPECT_EQ(review.late, 5_min);
    EXPECT_THAT(namesOf(review), testing::ElementsAre("chop", "simmer", "plate"));
    EXPECT_FALSE(review.deciders[1].known);
    EXPECT_EQ(review.deciders[0].idle, 5_min);
}

TEST(ReviewOfAService, OnTimeWasDecidedByThePlanAlone) {
    const Review review = live::review(
        threeSteps().lesson, {took("simmer", -30, -12, 20_min), took("plate", -5, -1, 5_min)});
    EXPECT_EQ(review.late, -(1_min));
    EXPECT_THAT(namesOf(review), testing::ElementsAre("plate"));
}

}  // namespace
}  // namespace rangeline::test
