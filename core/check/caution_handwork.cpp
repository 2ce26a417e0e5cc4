// Handwork that is timed for fewer covers than are served.

#include "check/cautions.h"
#include "model/handwork.h"

namespace rangeline {
namespace {

/// From half as many again it is worth a word (common practice, no source).
bool manyMore(const Serving& serving) {
    return 2 * serving.covers >= 3 * serving.dish.writtenFor;
}

}  // namespace

void cautionHandwork(const UseIndex& index, int, std::vector<Finding>& findings) {
    for (const Serving& serving : index.lesson().servings) {
        Finding found{FindingCode::HandworkUnchanged, Severity::Caution, {}, {}, {}, {}};
        for (const Component& component : serving.dish.components) {
            for (const Step& step : component.steps) {
                const PlacementKey key = StepKey{step.id, 0, 0};
                if (manyMore(serving) && isHandworkOfAllCovers(step) && index.nodeOf(key) >= 0) {
                    found.keys.push_back(key);
                }
            }
        }
        if (!found.keys.empty()) {
            found.figures = {std::int64_t{serving.dish.writtenFor}, std::int64_t{serving.covers}};
            findings.push_back(std::move(found));
        }
    }
}

}  // namespace rangeline
