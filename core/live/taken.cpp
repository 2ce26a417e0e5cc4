#include "live/taken.h"

#include <algorithm>

namespace rangeline::live {

std::vector<Taken> takenBy(const Lesson& planned, const Service& service) {
    const Expanded expanded = expand(planned);
    const UseIndex index(planned, expanded);
    std::vector<Taken> found;
    for (const auto& [key, work] : service.works()) {
        const auto* step = std::get_if<StepKey>(&key);
        const int node = index.nodeOf(key);
        if (step != nullptr && node >= 0 && work.stage == Stage::Done && work.started &&
            *work.ended > *work.started) {
            found.push_back({*step, *work.started, *work.ended, index.placed(node).timing.length});
        }
    }
    std::ranges::stable_sort(found, {}, &Taken::started);
    return found;
}

}  // namespace rangeline::live
