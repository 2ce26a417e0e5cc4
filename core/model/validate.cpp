#include "model/validate.h"

#include "model/stations.h"
#include "model/validate_parts.h"

namespace rangeline {

StepIndex::StepIndex(const Lesson& lesson) {
    for (std::size_t s = 0; s < lesson.servings.size(); ++s) {
        const auto& components = lesson.servings[s].dish.components;
        for (std::size_t c = 0; c < components.size(); ++c) {
            for (std::size_t i = 0; i < components[c].steps.size(); ++i) {
                const Step& step = components[c].steps[i];
                byId_.emplace(step.id, all_.size());
                all_.push_back({&step, s, c, i});
            }
        }
    }
}

const StepAt* StepIndex::find(const StepId& id) const {
    const auto found = byId_.find(id);
    return found == byId_.end() ? nullptr : &all_[found->second];
}

void validateStepReference(ValueChecks& checks, const Place& place, const StepId& id,
                           const StepIndex& steps) {
    if (steps.find(id) == nullptr) {
        checks.report(place, FaultCode::UnknownReference, {id.text, "step"});
    }
}

void validatePoolNeed(ValueChecks& checks, const Place& place, const PoolNeed& need,
                      const Kitchen& kitchen) {
    if (poolItem(kitchen, need.pool) < 0) {
        checks.report(place, FaultCode::UnknownReference, {need.pool.text, "pool"});
    }
    checks.whole(place.key("amount"), need.amount, 1, 10'000);
}

std::vector<Fault> validate(const Lesson& lesson, std::size_t limit) {
    ValueChecks checks(lesson.head.units, limit);
    const StepIndex steps(lesson);
    validateHead(checks, lesson);
    validateKitchen(checks, lesson.kitchen);
    validateServings(checks, lesson, steps);
    if (checks.namesAreSound()) {
        validateOrder(checks, lesson, steps);
    }
    validateChoices(checks, lesson, steps);
    if (checks.none()) {
        validateSize(checks, lesson, steps);
    }
    validatePlacements(checks, lesson.placements);
    return checks.take();
}

}  // namespace rangeline
