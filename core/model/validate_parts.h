#pragma once
// The parts of validate(), one file each. Not for use outside core/model.

#include <unordered_map>

#include "model/validate_values.h"

namespace rangeline {

inline constexpr std::int64_t mostCovers = 1000;

/// A step and the indexes that lead to it.
struct StepAt {
    const Step* step = nullptr;
    std::size_t serving = 0, component = 0, index = 0;
};

/// All steps of a lesson by their id; of steps with the same id the first.
class StepIndex {
  public:
    explicit StepIndex(const Lesson& lesson);

    /// Null if there is no such step.
    const StepAt* find(const StepId& id) const;
    /// In lesson order.
    const std::vector<StepAt>& all() const { return all_; }

  private:
    std::vector<StepAt> all_;
    std::unordered_map<StepId, std::size_t> byId_;
};

void validateHead(ValueChecks& checks, const Lesson& lesson);
void validateKitchen(ValueChecks& checks, const Kitchen& kitchen);
void validateServings(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps);
void validateStep(ValueChecks& checks, const Place& place, const Step& step, const Kitchen& kitchen,
                  const StepIndex& steps);
/// Cycles. Requires checks.namesAreSound() after all steps and links.
void validateOrder(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps);
void validateChoices(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps);
/// Placements may name steps and equipment that are gone; their values must be sound.
void validatePlacements(ValueChecks& checks, const Placements& placements);
/// That the lesson does not come to more than can be handled.
void validateSize(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps);

/// Calls `use` with the place of a step.
template <class Use>
void atPlaceOf(const StepAt& at, Use use) {
    const Place file;
    const Place servings = file.key("servings");
    const Place serving = servings.at(at.serving);
    const Place dish = serving.key("dish");
    const Place components = dish.key("components");
    const Place component = components.at(at.component);
    const Place steps = component.key("steps");
    use(steps.at(at.index));
}

// ---- shared by several parts ------------------------------------------------------------------

void validateStepReference(ValueChecks& checks, const Place& place, const StepId& id,
                           const StepIndex& steps);
void validatePoolNeed(ValueChecks& checks, const Place& place, const PoolNeed& need,
                      const Kitchen& kitchen);

}  // namespace rangeline
