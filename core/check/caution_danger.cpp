// Heat, fat, blades: one caution for each step and danger, at the time of its first batch.

#include <algorithm>

#include "analysis/at.h"
#include "check/cautions.h"
#include "safety/foods.h"
#include "safety/techniques.h"

namespace rangeline {

namespace {

/// Those the step states, and those that always go with its technique or food, each once.
std::vector<std::string> dangersOf(const Step& step) {
    std::vector<std::string> keys = step.hazards.dangers;
    const auto add = [&](std::string_view key) {
        if (!key.empty() && std::ranges::find(keys, key) == keys.end()) {
            keys.emplace_back(key);
        }
    };
    if (const Technique* technique = findTechnique(step.technique)) {
        add(technique->danger);
    }
    if (const Food* food = findFood(step.hazards.food)) {
        add(food->danger);
    }
    return keys;
}

}  // namespace

void cautionDanger(const UseIndex& index, int task, std::vector<Finding>& findings) {
    const StepKey& key = at(index.expanded().tasks, task).key;
    if (key.batch != 0 || key.group != 0) {
        return;
    }
    for (const std::string& danger : dangersOf(index.step(task))) {
        Finding finding = caution(FindingCode::Danger, index.step(task), {danger});
        finding.interval = index.placed(task).interval;
        findings.push_back(std::move(finding));
    }
}

}  // namespace rangeline
