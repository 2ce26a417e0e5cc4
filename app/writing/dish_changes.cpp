#include "writing/dish_changes.h"

#include <algorithm>
#include <set>

#include "safety/usual_step.h"

namespace rangeline {
namespace {

template <class Change>
void forEachStep(Dish& dish, Change change) {
    for (Component& component : dish.components) {
        for (Step& step : component.steps) {
            change(step);
        }
    }
}

std::string freeId(const std::set<std::string>& taken, const std::string& stem) {
    int number = 1;
    while (taken.contains(stem + std::to_string(number))) {
        ++number;
    }
    return stem + std::to_string(number);
}

StepId freeStepId(const Dish& dish) {
    std::set<std::string> taken;
    for (const Component& component : dish.components) {
        for (const Step& step : component.steps) {
            taken.insert(step.id.text);
        }
    }
    return {freeId(taken, "step-")};
}

bool usesStep(const Step& step, const StepId& id) {
    return std::ranges::find(step.uses, id, &Use::step) != step.uses.end();
}

/// Takes away what refers to the step in other ways than using it.
void forget(Dish& dish, const StepId& id) {
    forEachStep(dish, [&](Step& step) {
        for (WareNeed& need : step.wares) {
            if (need.carriesOn == id) {
                need.carriesOn.reset();
            }
        }
        if (step.onlyIfAhead == id) {
            step.onlyIfAhead.reset();
        }
    });
    std::erase_if(dish.links,
                  [&](const Link& link) { return link.from.step == id || link.to.step == id; });
}

/// A simpler form names steps of its own component alone; one that would leave out nothing is none.
void keepSimplerForms(Dish& dish) {
    for (Component& component : dish.components) {
        if (component.simpler) {
            std::erase_if(component.simpler->without, [&](const StepId& id) {
                return std::ranges::find(component.steps, id, &Step::id) == component.steps.end();
            });
            if (component.simpler->without.empty()) {
                component.simpler.reset();
            }
        }
    }
}

void addUse(Step& step, const Use& use) {
    if (step.id != use.step && !usesStep(step, use.step)) {
        step.uses.push_back(use);
    }
}

}  // namespace

std::optional<StepPlace> placeOf(const Dish& dish, const StepId& id) {
    for (std::size_t c = 0; c < dish.components.size(); ++c) {
        const std::vector<Step>& steps = dish.components[c].steps;
        const auto found = std::ranges::find(steps, id, &Step::id);
        if (found != steps.end()) {
            return StepPlace{c, static_cast<std::size_t>(found - steps.begin())};
        }
    }
    return std::nullopt;
}

const Step* findStep(const Dish& dish, const StepId& id) {
    const auto place = placeOf(dish, id);
    return place ? &dish.components[place->component].steps[place->step] : nullptr;
}

Dish newDish(const std::string& name) {
    Dish dish;
    dish.id = {"dish"};
    dish.name = name;
    dish.writtenFor = 4;
    addComponent(dish, 0, name);
    return dish;
}

void renameDish(Dish& dish, const std::string& name) {
    if (dish.components.size() == 1 && dish.components.front().name == dish.name) {
        dish.components.front().name = name;
    }
    dish.name = name;
}

std::size_t addComponent(Dish& dish, std::size_t at, const std::string& name) {
    std::set<std::string> taken;
    for (const Component& component : dish.components) {
        taken.insert(component.id.text);
    }
    Component component;
    component.id = {freeId(taken, "part-")};
    component.name = name;
    at = std::min(at, dish.components.size());
    dish.components.insert(dish.components.begin() + static_cast<std::ptrdiff_t>(at),
                           std::move(component));
    return at;
}

void removeComponent(Dish& dish, std::size_t component) {
    while (!dish.components[component].steps.empty()) {
        removeStep(dish, dish.components[component].steps.back().id);
    }
    dish.components.erase(dish.components.begin() + static_cast<std::ptrdiff_t>(component));
}

StepId addStep(Dish& dish, const StepPlace& at, const std::string& name) {
    std::vector<Step>& steps = dish.components[at.component].steps;
    const std::size_t place = std::min(at.step, steps.size());
    Step step;
    step.id = freeStepId(dish);
    step.name = name;
    step.time = plainStart().time;
    step.segments = plainStart().segments;
    if (place > 0) {
        const StepId before = steps[place - 1].id;
        forEachStep(dish, [&](Step& other) {
            for (Use& use : other.uses) {
                use.step = use.step == before ? step.id : use.step;
            }
        });
        step.uses = {{before, false}};
    }
    const StepId id = step.id;
    steps.insert(steps.begin() + static_cast<std::ptrdiff_t>(place), std::move(step));
    return id;
}

void useAllLoose(Dish& dish, const StepId& id) {
    std::set<std::string> used;
    forEachStep(dish, [&](const Step& step) {
        for (const Use& use : step.uses) {
            used.insert(use.step.text);
        }
    });
    std::vector<Use> loose;
    forEachStep(dish, [&](const Step& step) {
        if (!used.contains(step.id.text) && !step.plates && !step.afterServing) {
            loose.push_back({step.id, false});
        }
    });
    forEachStep(dish, [&](Step& step) {
        for (const Use& use : loose) {
            if (step.id == id) {
                addUse(step, use);
            }
        }
    });
}

void removeStep(Dish& dish, const StepId& id) {
    const auto place = placeOf(dish, id);
    if (!place) {
        return;
    }
    std::vector<Step>& steps = dish.components[place->component].steps;
    const std::vector<Use> used = steps[place->step].uses;
    steps.erase(steps.begin() + static_cast<std::ptrdiff_t>(place->step));
    forEachStep(dish, [&](Step& other) {
        if (usesStep(other, id)) {
            std::erase_if(other.uses, [&](const Use& use) { return use.step == id; });
            for (const Use& use : used) {
                addUse(other, use);
            }
        }
    });
    forget(dish, id);
    keepSimplerForms(dish);
}

bool moveStep(Dish& dish, const StepId& id, int by) {
    const auto from = placeOf(dish, id);
    if (!from) {
        return false;
    }
    std::vector<Step>& steps = dish.components[from->component].steps;
    const bool atEnd = by < 0 ? from->step == 0 : from->step + 1 == steps.size();
    if (!atEnd) {
        std::swap(steps[from->step], steps[by < 0 ? from->step - 1 : from->step + 1]);
        return true;
    }
    if (by < 0 ? from->component == 0 : from->component + 1 == dish.components.size()) {
        return false;
    }
    Step step = std::move(steps[from->step]);
    steps.erase(steps.begin() + static_cast<std::ptrdiff_t>(from->step));
    std::vector<Step>& others =
        dish.components[by < 0 ? from->component - 1 : from->component + 1].steps;
    others.insert(by < 0 ? others.end() : others.begin(), std::move(step));
    keepSimplerForms(dish);
    return true;
}

void moveStepTo(Dish& dish, const StepId& id, StepPlace to) {
    const auto from = placeOf(dish, id);
    if (!from || to.component >= dish.components.size()) {
        return;
    }
    std::vector<Step>& before = dish.components[from->component].steps;
    Step step = std::move(before[from->step]);
    before.erase(before.begin() + static_cast<std::ptrdiff_t>(from->step));
    if (from->component == to.component && from->step < to.step) {
        --to.step;
    }
    std::vector<Step>& after = dish.components[to.component].steps;
    const std::size_t place = std::min(to.step, after.size());
    after.insert(after.begin() + static_cast<std::ptrdiff_t>(place), std::move(step));
    keepSimplerForms(dish);
}

std::vector<StepId> mayUse(const Dish& dish, const StepId& id) {
    std::set<StepId> users{id};
    for (bool grown = true; grown;) {
        grown = false;
        for (const Component& component : dish.components) {
            for (const Step& step : component.steps) {
                const bool uses = std::ranges::any_of(
                    step.uses, [&](const Use& use) { return users.contains(use.step); });
                grown = (uses && users.insert(step.id).second) || grown;
            }
        }
    }
    std::vector<StepId> free;
    for (const Component& component : dish.components) {
        for (const Step& step : component.steps) {
            if (!users.contains(step.id)) {
                free.push_back(step.id);
            }
        }
    }
    return free;
}

}  // namespace rangeline
