#include "writing/ties.h"

#include <algorithm>
#include <map>

#include "recipe/instruction.h"
#include "writing/dish_changes.h"

namespace rangeline {

namespace {

Step& stepOf(Dish& dish, const StepId& id) {
    const auto place = placeOf(dish, id);
    return dish.components[place->component].steps[place->step];
}

/// From the end of the one to the start of the other, as food goes.
bool joins(const Link& link, const StepId& from, const StepId& to) {
    return link.from == LinkPoint{from, StepEnd::End} && link.to == LinkPoint{to, StepEnd::Start};
}

Tie tieOf(const Use& use, const std::vector<Link>& links, const StepId& to) {
    Tie tie{use.step, true, use.each, {}, {}};
    const auto link =
        std::ranges::find_if(links, [&](const Link& each) { return joins(each, use.step, to); });
    if (link != links.end()) {
        tie.least = link->least;
        tie.most = link->most;
    }
    return tie;
}

bool isAsFoodGoes(const Tie& tie) {
    return tie.fromEnd == StepEnd::End && tie.toEnd == StepEnd::Start;
}

bool uses(const Step& step, const StepId& from) {
    return std::ranges::find(step.uses, from, &Use::step) != step.uses.end();
}

Link linkOf(const Tie& tie, const StepId& to) {
    Link link;
    link.from = {tie.from, tie.fromEnd};
    link.to = {to, tie.toEnd};
    link.least = tie.least;
    link.most = tie.most;
    link.each = tie.each;
    return link;
}

}  // namespace

std::vector<Tie> tiesOf(const Dish& dish, const StepId& id) {
    std::vector<Tie> ties;
    const Step& step = *findStep(dish, id);
    for (const Use& use : step.uses) {
        ties.push_back(tieOf(use, dish.links, id));
    }
    for (const Link& link : dish.links) {
        const bool told = joins(link, link.from.step, id) && uses(step, link.from.step);
        if (link.to.step == id && !told) {
            ties.push_back({link.from.step, false, link.each, link.least, link.most, link.from.end,
                            link.to.end});
        }
    }
    return ties;
}

Dish withTies(Dish dish, const StepId& id, const std::vector<Tie>& ties) {
    Step& step = stepOf(dish, id);
    step.uses.clear();
    std::erase_if(dish.links, [&](const Link& link) { return link.to.step == id; });
    for (const Tie& tie : ties) {
        if (tie.from.empty() || tie.from == id) {
            continue;
        }
        if (tie.goesIn && !uses(step, tie.from)) {
            step.uses.push_back({tie.from, tie.each});
        }
        if (!tie.goesIn || !isAsFoodGoes(tie) || tie.least != Duration() || tie.most) {
            dish.links.push_back(linkOf(tie, id));
        }
    }
    return dish;
}

Dish withUse(Dish dish, const StepId& id, const StepId& from) {
    Step& step = stepOf(dish, id);
    if (!uses(step, from)) {
        step.uses.push_back({from, false});
    }
    return dish;
}

Dish withoutTie(Dish dish, const StepId& id, const StepId& from) {
    Step& step = stepOf(dish, id);
    std::erase_if(step.uses, [&](const Use& use) { return use.step == from; });
    std::erase_if(dish.links, [&](const Link& link) { return joins(link, from, id); });
    for (WareNeed& need : step.wares) {
        if (need.carriesOn == from) {
            need.carriesOn.reset();
        }
    }
    return dish;
}

Dish withSamePan(Dish dish, const StepId& id, const StepId& from) {
    goOnInVessels(stepOf(dish, id), stepOf(dish, from));
    return withUse(std::move(dish), id, from);
}

std::string StepNames::nameOf(const StepId& id) const {
    const auto found = std::ranges::find(ids, id);
    return found == ids.end() ? std::string()
                              : names[static_cast<std::size_t>(found - ids.begin())];
}

StepId StepNames::idOf(const std::string& name) const {
    const auto found = std::ranges::find(names, name);
    return found == names.end() ? StepId() : ids[static_cast<std::size_t>(found - names.begin())];
}

StepNames stepNames(const Dish& dish) {
    std::map<std::string, int> times;
    for (const Component& component : dish.components) {
        for (const Step& step : component.steps) {
            ++times[step.name];
        }
    }
    StepNames all;
    std::map<std::string, int> met;
    for (const Component& component : dish.components) {
        for (const Step& step : component.steps) {
            std::string name = step.name;
            if (times[step.name] > 1) {
                name += " (" + component.name + ")";
            }
            if (const int number = ++met[name]; number > 1) {
                name += " " + std::to_string(number);
            }
            all.ids.push_back(step.id);
            all.names.push_back(std::move(name));
        }
    }
    return all;
}

StepNames otherSteps(const Dish& dish, const StepId& but) {
    StepNames names = stepNames(dish);
    const auto own = std::ranges::find(names.ids, but) - names.ids.begin();
    if (own < static_cast<std::ptrdiff_t>(names.ids.size())) {
        names.ids.erase(names.ids.begin() + own);
        names.names.erase(names.names.begin() + own);
    }
    return names;
}

}  // namespace rangeline
