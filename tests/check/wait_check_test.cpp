#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Roast [-60, -40), carve for 5 min.
LessonBuilder roastAndCarve(std::int64_t carve) {
    LessonBuilder builder;
    builder.step("roast", {away(20_min)});
    builder.step("carve", {away(5_min)});
    builder.place("roast", -60);
    builder.place("carve", carve);
    return builder;
}

TEST(Wait, RestsAtLeastAndAtMost) {
    const auto count = [](std::int64_t carve, FindingCode code) {
        auto builder = roastAndCarve(carve);
        builder.link("roast", "carve", 5_min).most = 20_min;
        return findingsOf(builder.lesson, code).size();
    };
    EXPECT_EQ(count(-36, FindingCode::TooEarlyAfter), 1U);
    EXPECT_EQ(count(-35, FindingCode::TooEarlyAfter), 0U);
    EXPECT_EQ(count(-20, FindingCode::TooLateAfter), 0U);
    EXPECT_EQ(count(-19, FindingCode::TooLateAfter), 1U);
}

TEST(Wait, SaysWhatIsGivenAndWanted) {
    auto builder = roastAndCarve(-38);
    builder.link("roast", "carve", 5_min);
    const auto found = findingsOf(builder.lesson, FindingCode::TooEarlyAfter);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("roast"), key("carve")));
    EXPECT_EQ(found[0].interval, minutes(-40, -38));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(2_min), Figure(5_min)));
}

TEST(Wait, ABatchedStepBeginsWithItsFirstAndEndsWithItsLast) {
    auto builder = roastAndCarve(-40);
    builder.get("roast").piecesPerCover = Rational(2);
    builder.get("roast").piecesPerBatch = 1;
    builder.place(key("roast", 1), minute(-55));
    builder.link("roast", "carve");
    Link& from = builder.link("roast", "carve");
    from.from.end = StepEnd::Start;
    from.least = 21_min;
    const auto found = findingsOf(builder.lesson, FindingCode::TooEarlyAfter);
    ASSERT_THAT(found, SizeIs(2));
    for (const Finding& finding : found) {
        const bool fromEnd = finding.figures[1] == Figure(0_min);
        EXPECT_EQ(finding.keys[0], PlacementKey(key("roast", fromEnd ? 1 : 0)));
        EXPECT_EQ(finding.figures[0], Figure(fromEnd ? -5_min : 20_min));
    }
}

TEST(Wait, NothingIsSaidWhileAStepIsNotPlaced) {
    auto builder = roastAndCarve(-50);
    builder.link("roast", "carve", 5_min);
    builder.lesson.placements.erase(key("roast"));
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::TooEarlyAfter), IsEmpty());
}

TEST(Keeping, FoodKeepsOnlySoLong) {
    auto builder = roastAndCarve(-20);
    builder.uses("carve", "roast");
    builder.get("roast").after.atRoom = 20_min;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::KeptTooLong), IsEmpty());
    builder.get("roast").after.atRoom = 19_min;
    const auto found = findingsOf(builder.lesson, FindingCode::KeptTooLong);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("roast"), key("carve")));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(20_min), Figure(19_min), Figure("room")));
}

TEST(Keeping, FoodMadeBeforeTheLessonToo) {
    auto builder = roastAndCarve(-60);
    builder.uses("carve", "roast");
    builder.get("roast").after.atRoom = 1_h;
    builder.get("roast").after.mayBeDoneAhead = true;
    builder.lesson.choices.doneAhead = {{StepId{"roast"}, 2_h, Storage::Room, std::nullopt, {}}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::StoredTooLong), IsEmpty());
    builder.lesson.choices.doneAhead[0].before = 2_h + 1_min;
    const auto found = findingsOf(builder.lesson, FindingCode::StoredTooLong);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("carve")));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(1_h + 1_min), Figure(1_h), Figure("roast")));
}

TEST(Window, PlatingWaitsNoLongerThanThePlateHolds) {
    auto builder = roastAndCarve(-10);
    builder.get("carve").plates = true;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::PlatedTooEarly), IsEmpty());
    builder.place("carve", -11);
    const auto found = findingsOf(builder.lesson, FindingCode::PlatedTooEarly);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(6_min), Figure(5_min)));
}

TEST(Window, LateIsAFindingOfItsOwn) {
    auto builder = roastAndCarve(-5);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::PlatingLate), IsEmpty());
    builder.place("carve", -3);
    const auto found = findingsOf(builder.lesson, FindingCode::PlatingLate);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].severity, Severity::Late);
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(2_min)));
    EXPECT_EQ(found[0].interval, minutes(0, 2));
}

TEST(Window, OpeningCookingAndEveryoneOut) {
    auto builder = roastAndCarve(-10);
    builder.oven("oven");
    builder.get("roast").heat = inOven(350_F, 425_F);
    builder.lesson.head.kitchenOpens = minute(-60);
    builder.lesson.head.cookingMayStart = minute(-60);
    builder.lesson.head.everyoneOut = minute(-5);
    builder.placeTurnOn("oven", minute(-60), 425_F, "ann");
    for (const auto code :
         {FindingCode::BeforeOpening, FindingCode::BeforeCooking, FindingCode::NotFinished}) {
        EXPECT_THAT(findingsOf(builder.lesson, code), IsEmpty());
    }
    builder.lesson.head.kitchenOpens = minute(-59);
    builder.lesson.head.cookingMayStart = minute(-59);
    builder.lesson.head.everyoneOut = minute(-6);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::BeforeOpening), SizeIs(2))
        << "the roast and turning the oven on";
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::BeforeCooking), SizeIs(1));
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::NotFinished), SizeIs(1));
}

TEST(Window, WashingUpComesAfterServing) {
    auto builder = roastAndCarve(-1);
    builder.get("carve").afterServing = true;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AfterServingTooEarly), SizeIs(1));
    builder.place("carve", 0);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AfterServingTooEarly), IsEmpty());
}

}  // namespace
}  // namespace rangeline::test
