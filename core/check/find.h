#pragma once
// What the checks have in common.

#include <span>
#include <string>
#include <vector>

#include "analysis/use_index.h"
#include "check/finding.h"

namespace rangeline {

Finding collision(FindingCode code, std::vector<PlacementKey> keys, EquipmentRef equipment,
                  Interval interval, std::vector<Figure> figures = {});

/// Calls f(a, b) for each two uses that overlap, a before b. The uses are sorted by begin.
template <class Use, class F>
void forOverlaps(std::span<const Use> uses, F f) {
    for (std::size_t i = 0; i < uses.size(); ++i) {
        for (std::size_t j = i + 1; j < uses.size(); ++j) {
            if (uses[j].interval.begin >= uses[i].interval.end) {
                break;
            }
            f(uses[i], uses[j]);
        }
    }
}

/// The name of a step that may have no task.
std::string stepName(const Lesson& lesson, const StepId& id);

/// The last of the tasks that has begun by then; if none has, `otherwise`.
int taskThen(const UseIndex& index, const std::vector<int>& tasks, Instant then, int otherwise);

/// The step whose food is in the ware then.
PlacementKey keyInWare(const UseIndex& index, int chain, Instant then);

}  // namespace rangeline
