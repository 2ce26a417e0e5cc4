#include "library/new_lesson.h"

#include "exchange/words.h"
#include "model/dish_copy.h"
#include "model/fridge.h"

namespace rangeline {
namespace {

const std::string profileSetting = "food-safety limits";

}  // namespace

Lesson NewLesson::lesson() const {
    Lesson made;
    made.head = head;
    made.kitchen = kitchen;
    for (const ChosenDish& chosen : dishes) {
        made.servings.push_back({besideOthers(inFridgeOf(made.kitchen, chosen.dish), made.servings),
                                 chosen.covers,
                                 {}});
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

SafetyProfile profileOf(Book& book) {
    const auto kept = setting(book, profileSetting);
    return kept.ok() ? meaningOf<SafetyProfile>(kept.value()).value_or(SafetyProfile::Household)
                     : SafetyProfile::Household;
}

std::optional<BookFault> chooseProfile(Book& book, SafetyProfile profile) {
    if (profileOf(book) == profile) {
        return std::nullopt;
    }
    return setSetting(book, profileSetting, std::string(wordOf(profile)));
}

}  // namespace rangeline
