#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/findings_of.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Chicken cut on the one board from -60, then salad on it from -40; each takes 10 min.
LessonBuilder chickenThenSalad() {
    LessonBuilder builder;
    builder.pool("sink", "sink", 1);
    builder.ware("board", "board").cleaning = {2_min, PoolId{"sink"}};
    const auto onBoard = [&](const char* id, std::int64_t at) {
        Step& step = builder.step(id, {hands(10_min)});
        step.wares = {fresh("board")};
        step.wares[0].turnedOut = true;
        builder.place(id, at).wares = {{WareId{"board"}, 0}};
    };
    onBoard("chicken", -60);
    onBoard("salad", -40);
    builder.get("chicken").hazards.raw = true;
    builder.get("salad").hazards.readyToEat = true;
    return builder;
}

TEST(CautionCrossContact, RawThenReadyToEatOnOneBoard) {
    const auto found = findingsOf(chickenThenSalad().lesson, FindingCode::CrossContact);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("chicken"), key("salad")));
    EXPECT_EQ(found[0].equipment, (EquipmentRef{EquipmentSort::Ware, 0}));
    EXPECT_EQ(found[0].interval, minutes(-40, -30));
}

TEST(CautionCrossContact, AWashBetweenEndsIt) {
    auto builder = chickenThenSalad();
    builder.placeWash("chicken", -50, "ann");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CrossContact), IsEmpty());
}

TEST(CautionCrossContact, AWipeIsNoWash) {
    auto builder = chickenThenSalad();
    builder.lesson.kitchen.wares[0].cleaning.sink.reset();
    builder.placeWash("chicken", -50, "ann");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CrossContact), SizeIs(1));
}

TEST(CautionCrossContact, ReadyToEatFirstIsNoContact) {
    auto builder = chickenThenSalad();
    builder.place("salad", -75).wares = {{WareId{"board"}, 0}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CrossContact), IsEmpty());
}

TEST(CautionCrossContact, ASecondBoardIsNoContact) {
    auto builder = chickenThenSalad();
    builder.lesson.kitchen.wares[0].count = 2;
    builder.place("salad", -40).wares = {{WareId{"board"}, 1}};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CrossContact), IsEmpty());
}

TEST(CautionCrossContact, FoodThatIsCookedAfterwardsIsNotToldOf) {
    auto builder = chickenThenSalad();
    builder.get("salad").hazards.readyToEat = false;
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CrossContact), IsEmpty());
}

TEST(CautionCrossContact, NotOnThingsThatAreNotCutOn) {
    auto builder = chickenThenSalad();
    builder.lesson.kitchen.wares[0].kind = "bowl";
    for (const char* id : {"chicken", "salad"}) {
        builder.get(id).wares[0].kind = "bowl";
    }
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::CrossContact), IsEmpty());
}

/// Nuts on the board and then the salad, which belongs to a component of its own.
LessonBuilder nutsThenSalad() {
    LessonBuilder builder = chickenThenSalad();
    builder.get("chicken").hazards = {};
    builder.get("chicken").hazards.allergens = {"tree-nuts"};
    auto& components = builder.lesson.servings[0].dish.components;
    Component greens;
    greens.id = ComponentId{"greens"};
    greens.name = "greens";
    greens.steps = {components[0].steps[1]};
    components[0].steps.pop_back();
    components.push_back(greens);
    return builder;
}

TEST(CautionAllergenContact, ToldWhereAGuestMustNotEatIt) {
    auto builder = nutsThenSalad();
    builder.lesson.head.guestAllergens = {"tree-nuts"};
    const auto found = findingsOf(builder.lesson, FindingCode::AllergenContact);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_THAT(found[0].keys, ElementsAre(key("chicken"), key("salad")));
    EXPECT_THAT(found[0].figures, ElementsAre(Figure(std::string("tree-nuts"))));
    builder.placeWash("chicken", -50, "ann");
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AllergenContact), IsEmpty());
}

TEST(CautionAllergenContact, NotWithinADishWhenNoGuestMinds) {
    EXPECT_THAT(findingsOf(nutsThenSalad().lesson, FindingCode::AllergenContact), IsEmpty());
}

TEST(CautionAllergenContact, NotWhereTheFoodHasItAnyway) {
    auto builder = nutsThenSalad();
    builder.lesson.head.guestAllergens = {"tree-nuts"};
    Ingredient dressing;
    dressing.name = "walnut dressing";
    dressing.allergens = {"tree-nuts"};
    builder.lesson.servings[0].dish.components[1].ingredients = {dressing};
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AllergenContact), IsEmpty());
}

TEST(CautionAllergenContact, ToldForAnotherDishThatIsFreeOfIt) {
    auto builder = nutsThenSalad();
    Serving second = builder.lesson.servings[0];
    second.dish.id = DishId{"second"};
    second.dish.components.erase(second.dish.components.begin());
    builder.lesson.servings[0].dish.components.pop_back();
    builder.lesson.servings.push_back(second);
    EXPECT_THAT(findingsOf(builder.lesson, FindingCode::AllergenContact), SizeIs(1));
}

}  // namespace
}  // namespace rangeline::test
