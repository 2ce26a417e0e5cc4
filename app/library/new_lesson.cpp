#include "library/new_lesson.h"

#include "model/dish_copy.h"

namespace rangeline {

Lesson NewLesson::lesson() const {
    Lesson made;
    made.head = head;
    made.kitchen = kitchen;
    for (const ChosenDish& chosen : dishes) {
        made.servings.push_back({besideOthers(chosen.dish, made.servings), chosen.covers, {}});
    }
    return made;
}

Origins NewLesson::origins() const {
    Origins origins{kitchenItem, {}};
    for (const ChosenDish& chosen : dishes) {
        origins.dishes.emplace_back(chosen.item);
    }
    return origins;
}

}  // namespace rangeline
