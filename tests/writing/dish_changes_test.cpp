#include "writing/dish_changes.h"

#include <gmock/gmock.h>

#include "base/random.h"
#include "book/judge.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

/// Three steps, each using the one before.
struct Chain {
    Chain() {
        a = addStep(dish, {0, 0}, "a");
        b = addStep(dish, {0, 1}, "b");
        c = addStep(dish, {0, 2}, "c");
    }
    const Step& step(const StepId& id) const { return *findStep(dish, id); }

    Dish dish = newDish("Leeks");
    StepId a, b, c;
};

TEST(DishChanges, ANewStepStandsBetweenItsNeighbours) {
    Chain chain;
    const StepId between = addStep(chain.dish, {0, 1}, "between");
    EXPECT_EQ(chain.step(between).uses.at(0).step, chain.a);
    EXPECT_EQ(chain.step(chain.b).uses.at(0).step, between);
    EXPECT_FALSE(judgeDish(chain.dish));
}

TEST(DishChanges, ARemovedStepIsBridgedAndForgotten) {
    Chain chain;
    Step& c = chain.dish.components[0].steps[2];
    c.wares = {{"saute-pan", {}, {}, 1, chain.b, false}};
    chain.dish.links = {{{chain.b, StepEnd::End}, {chain.c, StepEnd::Start}, {}, {}, false}};
    removeStep(chain.dish, chain.b);
    EXPECT_EQ(chain.step(chain.c).uses.at(0).step, chain.a);
    EXPECT_FALSE(chain.step(chain.c).wares.at(0).carriesOn);
    EXPECT_THAT(chain.dish.links, IsEmpty());
}

TEST(DishChanges, AMovedStepGoesOnIntoTheNextComponent) {
    Chain chain;
    addComponent(chain.dish, 1, "Sauce");
    EXPECT_TRUE(moveStep(chain.dish, chain.c, 1));
    EXPECT_EQ(placeOf(chain.dish, chain.c), (StepPlace{1, 0}));
    EXPECT_FALSE(moveStep(chain.dish, chain.c, 1));
    EXPECT_TRUE(moveStep(chain.dish, chain.c, -1));
    EXPECT_EQ(placeOf(chain.dish, chain.c), (StepPlace{0, 2}));
    EXPECT_FALSE(moveStep(chain.dish, chain.a, -1));
}

TEST(DishChanges, ASimplerFormForgetsStepsThatAreGoneOrElsewhere) {
    Chain chain;
    const auto simpler = [&]() -> auto& {
        return chain.dish.components[0].simpler;
    };
    simpler() = SimplerForm{"as they are", {chain.a, chain.b, chain.c}};
    removeStep(chain.dish, chain.a);
    EXPECT_THAT(simpler()->without, ElementsAre(chain.b, chain.c));
    addComponent(chain.dish, 1, "Sauce");
    moveStep(chain.dish, chain.c, 1);
    EXPECT_THAT(simpler()->without, ElementsAre(chain.b));
    moveStepTo(chain.dish, chain.b, {1, 0});
    EXPECT_FALSE(simpler());
    EXPECT_FALSE(judgeDish(chain.dish));
}

TEST(DishChanges, AStepMayUseWhatDoesNotUseIt) {
    const Chain chain;
    EXPECT_THAT(mayUse(chain.dish, chain.a), IsEmpty());
    EXPECT_THAT(mayUse(chain.dish, chain.b), ElementsAre(chain.a));
    EXPECT_THAT(mayUse(chain.dish, chain.c), UnorderedElementsAre(chain.a, chain.b));
}

TEST(DishChanges, OfAnyKindLeaveADishThatCanBeKept) {
    const std::uint64_t seed = seedOr(1);
    SCOPED_TRACE("RANGELINE_SEED=" + std::to_string(seed));
    Random random(seed);
    Dish dish = newDish("Any");
    const auto pick = [&](std::size_t count) {
        return static_cast<std::size_t>(random.between(0, static_cast<std::int64_t>(count) - 1));
    };
    for (int change = 0; change < 2000; ++change) {
        const std::size_t component = pick(dish.components.size());
        const std::vector<Step>& steps = dish.components[component].steps;
        const std::int64_t what = random.between(0, 9);
        if (what < 4 || steps.empty()) {
            addStep(dish, {component, pick(steps.size() + 1)}, "step");
        } else if (what < 6) {
            removeStep(dish, StepId(steps[pick(steps.size())].id));
        } else if (what < 8) {
            moveStep(dish, StepId(steps[pick(steps.size())].id), what == 6 ? 1 : -1);
        } else if (what == 8 && dish.components.size() < 5) {
            addComponent(dish, component, "part");
        } else if (dish.components.size() > 1) {
            removeComponent(dish, component);
        }
        const auto fault = judgeDish(dish);
        ASSERT_FALSE(fault) << "change " << change << ": " << fault->place;
    }
}

}  // namespace
}  // namespace rangeline::test
