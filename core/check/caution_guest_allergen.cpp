// What a guest must not eat: the ingredients that contain it, and the steps that say so where none
// of their component's ingredients does.

#include <algorithm>
#include <iterator>
#include <span>

#include "check/cautions.h"
#include "safety/allergens.h"

namespace rangeline {

namespace {

using Keys = std::vector<std::string>;

/// Those of `contained` that one of the guests must not eat.
Keys avoidedAmong(const Keys& contained, const Keys& guests) {
    Keys avoided;
    std::ranges::copy_if(contained, std::back_inserter(avoided), [&](const std::string& key) {
        return std::ranges::any_of(
            guests, [&](const std::string& guest) { return allergenCovers(guest, key); });
    });
    return avoided;
}

bool anyIngredientHas(const Component& component, const std::string& allergen) {
    return std::ranges::any_of(component.ingredients, [&](const Ingredient& ingredient) {
        return std::ranges::find(ingredient.allergens, allergen) != ingredient.allergens.end();
    });
}

void judge(const Component& component, const Keys& guests, std::vector<Finding>& findings) {
    const auto add = [&](std::vector<PlacementKey> keys, const std::string& allergen,
                         const std::string& name) {
        findings.push_back({FindingCode::GuestAllergen,
                            Severity::Caution,
                            std::move(keys),
                            {},
                            {},
                            {allergen, name, component.name}});
    };
    for (const Ingredient& ingredient : component.ingredients) {
        for (const std::string& allergen : avoidedAmong(ingredient.allergens, guests)) {
            add({}, allergen, ingredient.name);
        }
    }
    for (const Step& step : component.steps) {
        for (const std::string& allergen : avoidedAmong(step.hazards.allergens, guests)) {
            if (!anyIngredientHas(component, allergen)) {
                add({StepKey{step.id, 0, 0}}, allergen, step.name);
            }
        }
    }
}

}  // namespace

void cautionGuestAllergen(const UseIndex& index, int, std::vector<Finding>& findings) {
    const Lesson& lesson = index.lesson();
    if (lesson.head.guestAllergens.empty()) {
        return;
    }
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            judge(component, lesson.head.guestAllergens, findings);
        }
    }
}

}  // namespace rangeline
