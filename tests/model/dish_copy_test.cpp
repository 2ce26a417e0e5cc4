#include "model/dish_copy.h"

#include <gtest/gtest.h>

#include "model/validate.h"
#include "support/random_lesson.h"
#include "support/rich_lesson.h"

namespace rangeline::test {
namespace {

TEST(DishCopy, ADishWithFreeIdsStaysAsItIs) {
    const Dish dish = richLesson().servings.front().dish;
    EXPECT_EQ(besideOthers(dish, {}), dish);
}

TEST(DishCopy, EveryDishCanBeServedTwiceAndThrice) {
    Lesson lesson = richLesson();
    ASSERT_TRUE(validate(lesson).empty());
    const std::vector<Serving> first = lesson.servings;
    for (int again = 0; again < 2; ++again) {
        for (const Serving& serving : first) {
            lesson.servings.push_back({besideOthers(serving.dish, lesson.servings), 4, {}});
            EXPECT_TRUE(validate(lesson).empty());
        }
    }
}

TEST(DishCopy, ReferencesStayWithinTheCopy) {
    Serving serving;
    serving.dish.id = DishId{"stew"};
    Step a, b;
    a.id = StepId{"a"};
    b.id = StepId{"b"};
    b.uses = {{a.id, false}};
    b.onlyIfAhead = a.id;
    WareNeed need;
    need.carriesOn = a.id;
    b.wares = {need};
    serving.dish.components = {
        {ComponentId{"c"}, "c", {}, {a, b}, SimplerForm{"as it is", {b.id}}}};
    serving.dish.links = {{{a.id, StepEnd::End}, {b.id, StepEnd::Start}, {}, {}, false}};
    const Dish copy = besideOthers(serving.dish, {serving});
    const Step& second = copy.components[0].steps[1];
    EXPECT_EQ(copy.id, DishId{"stew-2"});
    EXPECT_EQ(copy.components[0].id, ComponentId{"c-2"});
    EXPECT_EQ(second.id, StepId{"b-2"});
    EXPECT_EQ(second.uses[0].step, StepId{"a-2"});
    EXPECT_EQ(second.onlyIfAhead, StepId{"a-2"});
    EXPECT_EQ(second.wares[0].carriesOn, StepId{"a-2"});
    EXPECT_EQ(copy.components[0].simpler->without, std::vector{StepId{"b-2"}});
    EXPECT_EQ(copy.links[0].from.step, StepId{"a-2"});
    EXPECT_EQ(copy.links[0].to.step, StepId{"b-2"});
}

TEST(DishCopy, ChoicesGoWithTheirSteps) {
    Serving serving;
    Step step;
    step.id = StepId{"a"};
    serving.dish.components = {{ComponentId{"c"}, "c", {}, {step}}};
    Choices choices;
    choices.batches = {{StepId{"a"}, 2}, {StepId{"b"}, 3}};
    choices.swapIns = {{StepId{"b"}, {}}};
    const Choices kept = choicesFor(choices, {serving});
    ASSERT_EQ(kept.batches.size(), 1U);
    EXPECT_EQ(kept.batches[0].step, StepId{"a"});
    EXPECT_TRUE(kept.swapIns.empty());
    EXPECT_EQ(choicesFor(choices, {}), Choices());
}

}  // namespace
}  // namespace rangeline::test
