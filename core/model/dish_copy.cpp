#include "model/dish_copy.h"

#include <algorithm>
#include <set>
#include <string>

namespace rangeline {
namespace {

/// Calls visit(id) for the ids the dish brings along: its own, its components', its steps'.
template <class DishType, class Visit>
void forOwnIds(DishType& dish, Visit visit) {
    visit(dish.id);
    for (auto& component : dish.components) {
        visit(component.id);
        for (auto& step : component.steps) {
            visit(step.id);
        }
    }
}

/// Calls visit(id) for every mention of a step.
template <class Visit>
void forReferences(Dish& dish, Visit visit) {
    const auto maybe = [&visit](std::optional<StepId>& id) {
        if (id) {
            visit(*id);
        }
    };
    for (Component& component : dish.components) {
        for (Step& step : component.steps) {
            maybe(step.onlyIfAhead);
            for (WareNeed& need : step.wares) {
                maybe(need.carriesOn);
            }
            for (Use& use : step.uses) {
                visit(use.step);
            }
        }
        if (component.simpler) {
            std::ranges::for_each(component.simpler->without, visit);
        }
    }
    for (Link& link : dish.links) {
        visit(link.from.step);
        visit(link.to.step);
    }
}

/// Dishes, components and steps are named apart, but one set for all is simpler and never wrong.
std::set<std::string> idsOf(const std::vector<Serving>& servings) {
    std::set<std::string> ids;
    for (const Serving& serving : servings) {
        forOwnIds(serving.dish, [&ids](const auto& id) { ids.insert(id.text); });
    }
    return ids;
}

bool isFree(const Dish& dish, const std::string& ending, const std::set<std::string>& taken) {
    bool free = true;
    forOwnIds(dish, [&](const auto& id) { free = free && !taken.contains(id.text + ending); });
    return free;
}

}  // namespace

Dish besideOthers(Dish dish, const std::vector<Serving>& servings) {
    const std::set<std::string> taken = idsOf(servings);
    std::string ending;
    for (int number = 2; !isFree(dish, ending, taken); ++number) {
        ending = '-' + std::to_string(number);
    }
    std::set<std::string> own;
    forOwnIds(dish, [&own](const auto& id) { own.insert(id.text); });
    forReferences(dish, [&](StepId& id) {
        if (own.contains(id.text)) {
            id.text += ending;
        }
    });
    forOwnIds(dish, [&ending](auto& id) { id.text += ending; });
    return dish;
}

Choices choicesFor(Choices choices, const std::vector<Serving>& servings) {
    std::set<StepId> steps;
    for (const Serving& serving : servings) {
        for (const Component& component : serving.dish.components) {
            for (const Step& step : component.steps) {
                steps.insert(step.id);
            }
        }
    }
    const auto gone = [&steps](const auto& choice) { return !steps.contains(choice.step); };
    std::erase_if(choices.doneAhead, gone);
    std::erase_if(choices.swapIns, gone);
    std::erase_if(choices.batches, gone);
    return choices;
}

}  // namespace rangeline
