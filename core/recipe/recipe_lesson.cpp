#include "recipe/recipe_lesson.h"

#include "model/dish_copy.h"
#include "model/fridge.h"

namespace rangeline {

Lesson lessonOf(std::span<const Dish> dishes, Kitchen kitchen, std::string servingTime,
                std::string zone, Units units) {
    Lesson lesson;
    lesson.head.name = dishes.front().name;
    lesson.head.servingTime = std::move(servingTime);
    lesson.head.zone = std::move(zone);
    lesson.head.units = units;
    for (const Cook& cook : kitchen.cooks) {
        lesson.head.crew.push_back(cook.id);
    }
    lesson.kitchen = std::move(kitchen);
    for (const Dish& dish : dishes) {
        Serving serving;
        serving.dish = besideOthers(inFridgeOf(lesson.kitchen, dish), lesson.servings);
        serving.covers = dish.writtenFor;
        lesson.servings.push_back(std::move(serving));
    }
    return lesson;
}

}  // namespace rangeline
