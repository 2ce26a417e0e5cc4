#include "model/turn_out.h"

#include <algorithm>

namespace rangeline {
namespace {

template <class Visit>
void eachStep(const Dish& dish, const Visit& visit) {
    for (const Component& component : dish.components) {
        std::ranges::for_each(component.steps, visit);
    }
}

/// Whether food waits in the vessel of that kind for a step that empties it.
bool waitsInIt(const Dish& dish, const Step& step, const std::string& kind) {
    bool used = false;
    bool goesOn = false;
    eachStep(dish, [&](const Step& later) {
        used = used || std::ranges::count(later.uses, step.id, &Use::step) > 0;
        goesOn = goesOn || std::ranges::any_of(later.wares, [&](const WareNeed& need) {
                     return need.kind == kind && need.carriesOn == step.id;
                 });
    });
    const bool keptHot =
        step.after.storage == Storage::HotOnBurner || step.after.storage == Storage::HotInOven;
    return used && !goesOn && !keptHot;
}

bool turnOut(const Dish& dish, Step& step, const std::string& kind) {
    if (!waitsInIt(dish, step, kind)) {
        return false;
    }
    bool changed = false;
    for (WareNeed& need : step.wares) {
        if (need.kind == kind && !need.turnedOut) {
            need.turnedOut = true;
            changed = true;
        }
    }
    return changed;
}

}  // namespace

std::optional<std::vector<Serving>> turnedOut(const Lesson& lesson, const std::string& kind) {
    std::vector<Serving> servings = lesson.servings;
    bool changed = false;
    for (std::size_t number = 0; number < servings.size(); ++number) {
        const Dish& before = lesson.servings[number].dish;
        for (Component& component : servings[number].dish.components) {
            for (Step& step : component.steps) {
                changed = turnOut(before, step, kind) || changed;
            }
        }
    }
    return changed ? std::optional(std::move(servings)) : std::nullopt;
}

}  // namespace rangeline
