#include "model/validate_alone.h"

#include <algorithm>

#include "model/validate.h"

namespace rangeline {
namespace {

void addPool(Kitchen& kitchen, const PoolNeed& need, const char* kind) {
    for (const Pool& pool : kitchen.pools) {
        if (pool.id == need.pool) {
            return;
        }
    }
    Pool pool;
    pool.id = need.pool;
    pool.kind = kind;
    kitchen.pools.push_back(std::move(pool));
}

/// Where the food of cold storage stands must keep cold; the other pools may be of any kind.
Kitchen kitchenFor(const Dish& dish) {
    Kitchen kitchen;
    const auto forEachStep = [&dish](const auto& visit) {
        for (const Component& component : dish.components) {
            std::ranges::for_each(component.steps, visit);
        }
    };
    forEachStep([&kitchen](const Step& step) {
        if (step.after.place && step.after.storage == Storage::Cold) {
            addPool(kitchen, *step.after.place, "fridge-shelf");
        }
    });
    forEachStep([&kitchen](const Step& step) {
        if (step.after.place) {
            addPool(kitchen, *step.after.place, "counter");
        }
        for (const PoolNeed& need : step.pools) {
            addPool(kitchen, need, "counter");
        }
    });
    return kitchen;
}

}  // namespace

Lesson lessonIn(Kitchen kitchen) {
    Lesson lesson;
    lesson.head.servingTime = "2000-01-01T12:00";
    lesson.head.zone = "UTC";
    if (kitchen.cooks.empty()) {
        kitchen.cooks.emplace_back().id = {"cook"};
    }
    lesson.head.crew = {kitchen.cooks.front().id};
    lesson.kitchen = std::move(kitchen);
    return lesson;
}

Lesson lessonOf(const Dish& dish) {
    Lesson lesson = lessonIn(kitchenFor(dish));
    lesson.servings.push_back({dish, 1, {}});
    return lesson;
}

std::vector<Fault> validateDish(const Dish& dish, std::size_t limit) {
    return validate(lessonOf(dish), limit);
}

std::vector<Fault> validateKitchenAlone(const Kitchen& kitchen, std::size_t limit) {
    return validate(lessonIn(kitchen), limit);
}

}  // namespace rangeline
