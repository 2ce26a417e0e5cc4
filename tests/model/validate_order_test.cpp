// Circles among steps: what each waits for, in the order of time.

#include <gtest/gtest.h>

#include <chrono>

#include "model/validate.h"
#include "support/lesson_builder.h"

namespace rangeline {
namespace {

using namespace test;

/// Steps of ten minutes called "a", "b", "c".
LessonBuilder threeSteps() {
    LessonBuilder b;
    for (const char* id : {"a", "b", "c"}) {
        b.step(id, {hands(10_min)});
    }
    return b;
}

Fault circle(std::size_t step, const char* steps) {
    return {FaultCode::CycleInSteps,
            "servings[0].dish.components[0].steps[" + std::to_string(step) + "]",
            {steps}};
}

TEST(ValidateOrder, AnOrderWithoutCirclesIsGood) {
    LessonBuilder b = threeSteps();
    b.uses("b", "a");
    b.uses("c", "b");
    b.uses("c", "a");
    b.link("a", "c", 5_min);
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>());
}

TEST(ValidateOrder, FoodThatGoesRoundIsNamed) {
    LessonBuilder b = threeSteps();
    b.uses("b", "a");
    b.uses("c", "b");
    b.uses("a", "c");
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(0, "a > b > c > a")});
}

TEST(ValidateOrder, AStepThatUsesItselfIsNamed) {
    LessonBuilder b = threeSteps();
    b.uses("b", "b");
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(1, "b > b")});
}

TEST(ValidateOrder, FoodOfStepsWithoutLengthMayNotGoRoundEither) {
    LessonBuilder b;
    b.step("a", {});
    b.step("b", {});
    b.uses("a", "b");
    b.uses("b", "a");
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(0, "a > b > a")});
}

TEST(ValidateOrder, CarryingOnInACircleIsNamed) {
    LessonBuilder b = threeSteps();
    b.get("b").wares = {carryOn("bowl", "c")};
    b.get("c").wares = {carryOn("bowl", "b")};
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(1, "b > c > b")});
}

TEST(ValidateOrder, ACircleIsNamedBesideOtherFaults) {
    LessonBuilder b = threeSteps();
    b.uses("b", "a");
    b.uses("a", "b");
    b.get("c").heat = BurnerHeat{};
    const std::vector<Fault> faults = validate(b.lesson);
    ASSERT_EQ(faults.size(), 2U);
    EXPECT_EQ(faults[0].code, FaultCode::NeedsVessel);
    EXPECT_EQ(faults[1], circle(0, "a > b > a"));
}

TEST(ValidateOrder, ACircleThroughAStepThatIsNotThereIsNotLookedFor) {
    LessonBuilder b = threeSteps();
    b.uses("b", "gone");
    b.get("c").heat = BurnerHeat{};
    for (const std::size_t limit : {std::size_t{1}, std::size_t{20}}) {
        for (const Fault& fault : validate(b.lesson, limit)) {
            EXPECT_NE(fault.code, FaultCode::CycleInSteps);
        }
    }
}

TEST(ValidateOrder, LinksThatGoRoundInMoreThanNoTimeAreNamed) {
    LessonBuilder b = threeSteps();
    b.uses("b", "a");
    b.link("b", "a");
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(0, "a > b > a")});
}

TEST(ValidateOrder, NegativeWaitsMayGoRoundAsFarAsTheTimesAllow) {
    LessonBuilder b = threeSteps();
    b.uses("b", "a");
    b.link("b", "a", -20_min);  // together a and b take 20 min
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>());
    b.lesson.servings[0].dish.links[0].least = -20_min + 1_s;
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(0, "a > b > a")});
}

TEST(ValidateOrder, StepsMayHaveToStartTogether) {
    LessonBuilder b = threeSteps();
    for (const auto& [from, to] : {std::pair{"a", "b"}, std::pair{"b", "a"}}) {
        Link& link = b.link(from, to);
        link.from.end = StepEnd::Start;
    }
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>());
}

TEST(ValidateOrder, TheShortestTimesCount) {
    LessonBuilder b = threeSteps();
    b.get("a").time = {0_min, 10_min, 10_min};
    b.get("a").segments = {away(0_min)};
    b.link("a", "a");  // its start not before its end: only with no length
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>());
    b.get("a").time.shortest = 1_s;
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(0, "a > a")});
}

TEST(ValidateOrder, BatchByBatchOnlyTheFirstAndLastCount) {
    LessonBuilder b = threeSteps();
    b.get("a").piecesPerCover = Rational(4);
    b.get("a").piecesPerBatch = 2;
    b.get("b").uses = {{StepId{"a"}, true}};
    // b's first batch starts before a's last ends, which is wrong only for the whole step.
    Link& overlap = b.link("b", "a", 1_min);
    overlap.from.end = StepEnd::Start;
    overlap.to.end = StepEnd::End;
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>());
    b.get("b").uses[0].each = false;
    EXPECT_EQ(validate(b.lesson), std::vector<Fault>{circle(0, "a > b > a")});
}

TEST(ValidateOrder, ALargeLessonWithALongCircleIsQuick) {
    LessonBuilder b;
    constexpr int count = 2000;
    for (int i = 0; i < count; ++i) {
        b.step("s" + std::to_string(i), {away(1_min)});
    }
    for (int i = 1; i < count; ++i) {
        b.link("s" + std::to_string(i), "s" + std::to_string(i - 1));
    }
    b.link("s0", "s" + std::to_string(count - 1));
    const auto begin = std::chrono::steady_clock::now();
    const std::vector<Fault> faults = validate(b.lesson);
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - begin;
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].code, FaultCode::CycleInSteps);
    EXPECT_LT(taken.count(), 5.0);
}

}  // namespace
}  // namespace rangeline
