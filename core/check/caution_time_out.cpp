// Food that needs time or temperature control, between the cold and the heat for longer than the
// profile allows: while it is worked on without heat, and while it waits at room temperature.

#include <algorithm>

#include "analysis/at.h"
#include "check/cautions.h"
#include "check/out_clock.h"
#include "safety/foods.h"
#include "safety/holding.h"

namespace rangeline {

namespace {

bool isControlled(const Step& step) {
    const Food* food = findFood(step.hazards.food);
    return food != nullptr && food->controlled;
}

void addIfTooLong(const UseIndex& index, std::vector<PlacementKey> keys, const Interval& out,
                  std::vector<Finding>& findings) {
    const HoldingLimits& limits = holdingLimits(index.lesson().head.profile);
    const Duration most = limits.outIn(index.kitchen().room);
    if (out.length() > most) {
        findings.push_back({FindingCode::OutOfTemperatureTooLong,
                            Severity::Caution,
                            std::move(keys),
                            {},
                            out,
                            {out.length(), most, std::string(limits.timeSource)}});
    }
}

}  // namespace

void cautionTimeOut(const UseIndex& index, int wait, std::vector<Finding>& findings) {
    if (const auto clock = outClock(index, wait)) {
        addIfTooLong(index, {index.keyOf(clock->made), index.keyOf(clock->until)}, clock->out,
                     findings);
    }
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
