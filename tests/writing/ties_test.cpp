// What a step waits for, written line by line.

#include "writing/ties.h"

#include <gtest/gtest.h>

#include "book/judge.h"
#include "writing/dish_changes.h"

namespace rangeline::test {
namespace {

/// Peel, boil and dress, each using the one before.
struct Ties : public ::testing::Test {
    Ties() : dish(newDish("Salad")) {
        peel = addStep(dish, {0, 0}, "Peel");
        boil = addStep(dish, {0, 1}, "Boil");
        dress = addStep(dish, {0, 2}, "Dress");
    }
    Step& step(const StepId& id) {
        const auto place = placeOf(dish, id);
        return dish.components[place->component].steps[place->step];
    }
    Dish dish;
    StepId peel, boil, dress;
};

TEST_F(Ties, FoodWaitsAndOtherLinksAreReadAndWrittenBackTheSame) {
    std::vector<Tie> ties{{boil, true, true, Duration::minutes(5), Duration::minutes(20)},
                          {peel, false, false, {}, Duration::hours(1)}};
    dish = withTies(dish, dress, ties);
    EXPECT_EQ(tiesOf(dish, dress), ties);
    EXPECT_EQ(dish.links.size(), 2U);
    EXPECT_FALSE(judgeDish(dish));
    EXPECT_EQ(withTies(dish, dress, tiesOf(dish, dress)), dish);
}

TEST_F(Ties, LinksBetweenOtherEndsAreReadAndWrittenBackTheSame) {
    Link together;
    together.from = {peel, StepEnd::Start};
    together.to = {dress, StepEnd::Start};
    dish.links = {together};
    const std::vector<Tie> ties = tiesOf(dish, dress);
    ASSERT_EQ(ties.size(), 2U);
    EXPECT_FALSE(ties[1].goesIn);
    EXPECT_EQ(ties[1].fromEnd, StepEnd::Start);
    EXPECT_EQ(withTies(dish, dress, ties), dish);
    EXPECT_TRUE(withTies(dish, dress, {ties[0]}).links.empty());
}

TEST_F(Ties, FoodGoesInThoughTheWaitIsCountedFromAnotherEnd) {
    Tie tie{boil, true, false, Duration::minutes(10), {}};
    tie.fromEnd = StepEnd::Start;
    const Dish written = withTies(dish, dress, {tie});
    EXPECT_EQ(findStep(written, dress)->uses.size(), 1U);
    ASSERT_EQ(written.links.size(), 1U);
    EXPECT_EQ(written.links[0].from, (LinkPoint{boil, StepEnd::Start}));
    EXPECT_EQ(withTies(written, dress, tiesOf(written, dress)), written);
}

TEST_F(Ties, ALineWithoutAStepOrToItselfIsNone) {
    const Dish written =
        withTies(dish, dress, {{dress, true, false, {}, {}}, {{}, true, false, {}, {}}});
    EXPECT_TRUE(tiesOf(written, dress).empty());
    EXPECT_TRUE(written.links.empty());
}

TEST_F(Ties, ATieGoesWithItsFoodItsWaitAndItsPan) {
    WareNeed pot;
    pot.kind = "pot";
    pot.turnedOut = true;
    step(boil).wares = {pot};
    dish = withSamePan(dish, dress, boil);
    dish = withTies(dish, dress, {{boil, true, false, Duration::minutes(5), {}}});
    EXPECT_FALSE(findStep(dish, boil)->wares[0].turnedOut) << "the food stays in the pan";
    ASSERT_EQ(findStep(dish, dress)->wares.size(), 1U);
    EXPECT_EQ(findStep(dish, dress)->wares[0].carriesOn, boil);
    EXPECT_FALSE(judgeDish(dish));

    dish = withoutTie(dish, dress, boil);
    EXPECT_TRUE(tiesOf(dish, dress).empty());
    EXPECT_FALSE(findStep(dish, dress)->wares[0].carriesOn);
}

TEST_F(Ties, TheSamePanTakesThePlaceOfAnOwnOneOfThatKind) {
    WareNeed pot;
    pot.kind = "pot";
    WareNeed spoon;
    spoon.kind = "tool";
    step(boil).wares = {pot};
    step(dress).wares = {pot, spoon};
    dish = withSamePan(dish, dress, boil);
    const auto& wares = findStep(dish, dress)->wares;
    ASSERT_EQ(wares.size(), 2U);
    EXPECT_EQ(wares[0].kind, "tool");
    EXPECT_EQ(wares[1].carriesOn, boil);
}

TEST_F(Ties, AUseIsThereOnceAndACircleIsFound) {
    EXPECT_EQ(withUse(dish, boil, peel), dish);
    const auto fault = judgeDish(withUse(dish, peel, dress));
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->code, FaultCode::CycleInSteps);
}

TEST_F(Ties, StepsOfOneNameAreToldApart) {
    addComponent(dish, 1, "Eggs");
    addStep(dish, {1, 0}, "Peel");
    addStep(dish, {1, 1}, "Peel");
    const StepNames names = stepNames(dish);
    EXPECT_EQ(names.names, (std::vector<std::string>{"Peel (Salad)", "Boil", "Dress", "Peel (Eggs)",
                                                     "Peel (Eggs) 2"}));
    EXPECT_EQ(names.idOf("Peel (Salad)"), peel);
    EXPECT_TRUE(names.idOf("Stir").empty());
    EXPECT_EQ(otherSteps(dish, boil).names.size(), 4U);
    EXPECT_EQ(otherSteps(dish, {"none"}).names.size(), 5U);
}

}  // namespace
}  // namespace rangeline::test
