#include "check/find.h"

#include <algorithm>
#include <utility>

#include "analysis/at.h"

namespace rangeline {

Finding collision(FindingCode code, std::vector<PlacementKey> keys, EquipmentRef equipment,
                  Interval interval, std::vector<Figure> figures) {
    return {code, Severity::Collision, std::move(keys), equipment, interval, std::move(figures)};
}

std::string stepName(const Lesson& lesson, const StepId& id) {
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            const auto step = std::ranges::find(component.steps, id, &Step::id);
            if (step != component.steps.end()) {
                return step->name;
            }
        }
    }
    return id.text;
}

int taskThen(const UseIndex& index, const std::vector<int>& tasks, Instant then, int otherwise) {
    int found = otherwise;
    for (const int task : tasks) {
        if (index.placed(task) && index.placed(task).interval.begin <= then) {
            found = task;
        }
    }
    return found;
}

PlacementKey keyInWare(const UseIndex& index, int chain, Instant then) {
    const Chain& in = at(index.expanded().chains, chain);
    const int task = taskThen(index, in.tasks, then, -1);
    return task < 0 ? PlacementKey(in.key.after) : index.keyOf(task);
}

}  // namespace rangeline
