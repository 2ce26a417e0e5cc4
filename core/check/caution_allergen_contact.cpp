// An allergen on a ware that then takes food without it, with no wash between. Told for what a
// guest must not eat; otherwise only where the food belongs to a dish that is free of the allergen.

#include <algorithm>
#include <map>

#include "analysis/at.h"
#include "check/cautions.h"
#include "check/ware_history.h"
#include "safety/allergens.h"

namespace rangeline {

namespace {

bool lists(const std::vector<std::string>& keys, const std::string& allergen) {
    return std::ranges::find(keys, allergen) != keys.end();
}

bool contains(const Component& component, const std::string& allergen) {
    return std::ranges::any_of(component.ingredients,
                               [&](const Ingredient& ingredient) {
                                   return lists(ingredient.allergens, allergen);
                               }) ||
           std::ranges::any_of(component.steps, [&](const Step& step) {
               return lists(step.hazards.allergens, allergen);
           });
}

/// Whether it matters that this allergen gets into the food of this task.
bool matters(const Lesson& lesson, const Task& task, const std::string& allergen) {
    const Dish& dish = at(lesson.servings, task.serving).dish;
    const auto& component = at(dish.components, task.component);
    const auto& guests = lesson.head.guestAllergens;
    if (std::ranges::any_of(guests,
                            [&](const auto& guest) { return allergenCovers(guest, allergen); })) {
        return !contains(component, allergen);
    }
    return std::ranges::none_of(dish.components,
                                [&](const Component& part) { return contains(part, allergen); });
}

}  // namespace

void cautionAllergenContact(const UseIndex& index, int wareUnit, std::vector<Finding>& findings) {
    const Expanded& expanded = index.expanded();
    std::map<std::string, int> left;  // allergen -> the task that left it
    walkWare(
        index, wareUnit, [&] { left.clear(); },
        [&](int task, const Interval& interval) {
            for (const auto& [allergen, from] : left) {
                if (matters(index.lesson(), at(expanded.tasks, task), allergen)) {
                    findings.push_back({FindingCode::AllergenContact,
                                        Severity::Caution,
                                        {index.keyOf(from), index.keyOf(task)},
                                        {EquipmentSort::Ware, wareUnit},
                                        interval,
                                        {allergen}});
                }
            }
            for (const std::string& allergen : index.step(task).hazards.allergens) {
                left[allergen] = task;
            }
        });
}

}  // namespace rangeline
