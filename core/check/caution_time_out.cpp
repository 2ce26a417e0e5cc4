// Food that needs time or temperature control, between the cold and the heat for longer than the
// profile allows: while it is worked on without heat, and while it waits at room temperature.

#include <algorithm>

#include "analysis/at.h"
#include "check/cautions.h"
#include "model/equipment_kinds.h"
#include "safety/foods.h"
#include "safety/holding.h"

namespace rangeline {

namespace {

bool isControlled(const Step& step) {
    const Food* food = findFood(step.hazards.food);
    return food != nullptr && food->controlled;
}

/// Whether the food is neither heated nor cooled while the step runs.
bool isOutDuring(const Step& step, const Kitchen& kitchen) {
    return std::holds_alternative<std::monostate>(step.heat) &&
           std::ranges::none_of(step.pools, [&](const PoolNeed& need) {
               const int item = poolItem(kitchen, need.pool);
               const auto* kind =
                   item < 0 ? nullptr : findEquipmentKind(at(kitchen.pools, item).kind);
               return kind != nullptr && kind->keepsCold;
           });
}

void addIfTooLong(const UseIndex& index, std::vector<PlacementKey> keys, const Interval& out,
                  std::vector<Finding>& findings) {
    const HoldingLimits& limits = holdingLimits(index.lesson().head.profile);
    if (out.length() > limits.out) {
        findings.push_back({FindingCode::OutOfTemperatureTooLong,
                            Severity::Caution,
                            std::move(keys),
                            {},
                            out,
                            {out.length(), limits.out, std::string(limits.timeSource)}});
    }
}

bool arePlaced(const UseIndex& index, const std::vector<int>& tasks) {
    return std::ranges::all_of(tasks, [&](int task) { return bool(index.placed(task)); });
}

/// Of a step in batches, the one whose food is out first, and the one that takes it up last.
int firstToEnd(const UseIndex& index, const std::vector<int>& tasks) {
    return *std::ranges::min_element(tasks, {},
                                     [&](int task) { return index.placed(task).interval.end; });
}
int lastToStart(const UseIndex& index, const std::vector<int>& tasks) {
    return *std::ranges::max_element(tasks, {},
                                     [&](int task) { return index.placed(task).interval.begin; });
}

}  // namespace

void cautionTimeOut(const UseIndex& index, int wait, std::vector<Finding>& findings) {
    const Wait& uses = at(index.expanded().waits, wait);
    if (uses.origin != WaitOrigin::Uses || uses.from.tasks.empty()) {
        return;
    }
    const Step& maker = index.step(uses.from.tasks.front());
    if (!isControlled(maker) || maker.after.storage != Storage::Room ||
        !arePlaced(index, uses.from.tasks) || !arePlaced(index, uses.to.tasks)) {
        return;
    }
    const int made = firstToEnd(index, uses.from.tasks);
    const int used = lastToStart(index, uses.to.tasks);
    const Interval& making = index.placed(made).interval;
    const bool outBefore = isOutDuring(maker, index.kitchen());
    addIfTooLong(index, {index.keyOf(made), index.keyOf(used)},
                 {outBefore ? making.begin : making.end, index.placed(used).interval.begin},
                 findings);
}

void cautionAheadTimeOut(const UseIndex& index, int task, std::vector<Finding>& findings) {
    const auto& ahead = index.lesson().choices.doneAhead;
    if (ahead.empty() || !index.placed(task)) {
        return;
    }
    for (const Use& use : index.step(task).uses) {
        const auto made = std::ranges::find(ahead, use.step, &DoneAhead::step);
        if (made == ahead.end() || made->storage != Storage::Room) {
            continue;
        }
        bool controlled = false;
        forEachStep(index.lesson(), [&](const Serving&, const Component&, const Step& step) {
            controlled = controlled || (step.id == use.step && isControlled(step));
        });
        if (controlled) {
            addIfTooLong(index, {index.keyOf(task)},
                         {Instant::serving() - made->before, index.placed(task).interval.begin},
                         findings);
        }
    }
}

}  // namespace rangeline
