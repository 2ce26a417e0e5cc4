#include "check/covers_change.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "analysis/at.h"
#include "check/check.h"
#include "model/scaled_amount.h"

namespace rangeline {
namespace {

const Serving* servingOfDish(const Lesson& lesson, const DishId& dish) {
    const auto it = std::ranges::find(lesson.servings, dish,
                                      [](const Serving& serving) { return serving.dish.id; });
    return it == lesson.servings.end() ? nullptr : &*it;
}

void addAmounts(const Serving& before, const Serving& after, int serving,
                std::vector<AmountChange>& changes) {
    const auto& components = after.dish.components;
    for (int component = 0; component < std::ssize(components); ++component) {
        const auto& ingredients = at(components, component).ingredients;
        for (int number = 0; number < std::ssize(ingredients); ++number) {
            const Ingredient& ingredient = at(ingredients, number);
            if (!ingredient.amount) {
                continue;
            }
            const AmountChange change{serving, component, number,
                                      measuredAmount(ingredient, before),
                                      measuredAmount(ingredient, after)};
            if (!(change.before == change.after)) {
                changes.push_back(change);
            }
        }
    }
}

/// By step, in one group.
std::map<StepId, StepLoads> loadsOf(const Expanded& expanded) {
    std::map<StepId, StepLoads> loads;
    for (const Task& task : expanded.tasks) {
        if (task.key.group == 0) {
            StepLoads& of = loads[task.key.step];
            ++of.count;
            of.time = of.time + task.time.likely;
        }
    }
    return loads;
}

void addLoads(const Expanded& before, const Expanded& after, std::vector<LoadsChange>& changes) {
    const auto earlier = loadsOf(before);
    const auto later = loadsOf(after);
    for (int task = 0; task < std::ssize(after.tasks); ++task) {
        const StepKey& key = at(after.tasks, task).key;
        const auto old = earlier.find(key.step);
        if (key.group == 0 && key.batch == 0 && old != earlier.end() &&
            !(old->second == later.at(key.step))) {
            changes.push_back({task, old->second, later.at(key.step)});
        }
    }
}

/// What a finding is about; its time and figures may change without it being another.
auto subjectOf(const Finding& finding) {
    return std::tuple(finding.code, finding.keys, finding.equipment);
}

std::vector<Finding> onlyInFirst(const std::vector<Finding>& first,
                                 const std::vector<Finding>& second) {
    std::set<decltype(subjectOf(first.front()))> known;
    for (const Finding& finding : second) {
        known.insert(subjectOf(finding));
    }
    std::vector<Finding> only;
    std::ranges::copy_if(first, std::back_inserter(only), [&](const Finding& finding) {
        return !known.contains(subjectOf(finding));
    });
    return only;
}

}  // namespace

CoversChange coversChange(const UseIndex& before, const UseIndex& after) {
    CoversChange change;
    const auto& servings = after.lesson().servings;
    for (int number = 0; number < std::ssize(servings); ++number) {
        const Serving& now = at(servings, number);
        const Serving* old = servingOfDish(before.lesson(), now.dish.id);
        if (old != nullptr && old->covers != now.covers) {
            change.covers.push_back({number, old->covers, now.covers});
            addAmounts(*old, now, number, change.amounts);
        }
    }
    addLoads(before.expanded(), after.expanded(), change.loads);
    const std::vector<Finding> earlier = Findings(before).all();
    const std::vector<Finding> later = Findings(after).all();
    change.arisen = onlyInFirst(later, earlier);
    change.settled = static_cast<int>(onlyInFirst(earlier, later).size());
    return change;
}

}  // namespace rangeline
