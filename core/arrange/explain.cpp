#include "arrange/explain.h"

#include <algorithm>

#include "arrange/explain/earliest_start.h"
#include "arrange/explain/explainer.h"

namespace rangeline {
namespace {

/// When a placed task ends.
Instant endOf(const Lesson& lesson, const Task& task, const Placement& placement) {
    std::vector<HandShare> shares;
    for (const Share& share : placement.hands) {
        const int item = cookItem(lesson.kitchen, share.cook);
        const auto& cooks = lesson.kitchen.cooks;
        shares.push_back(
            {item < 0 ? 100 : cooks[static_cast<std::size_t>(item)].pacePercent, share.pieces});
    }
    return placement.start + timingOf(task, shares, placement.lasts).length;
}

/// Summed over all that is due at a serving.
Duration latenessOf(const Lesson& lesson, const Expanded& expanded) {
    Duration total;
    for (const Window& window : expanded.windows) {
        const Task& task = expanded.tasks[static_cast<std::size_t>(window.task)];
        const auto placed = lesson.placements.find(task.key);
        if (window.origin == WindowOrigin::Serving && placed != lesson.placements.end()) {
            const Duration late = endOf(lesson, task, placed->second) - *window.latest;
            total += std::max(late, Duration());
        }
    }
    return total;
}

}  // namespace

Explanation explainNotPossible(const Lesson& lesson, const ExplainOptions& options,
                               std::stop_token stop) {
    return explain::Explainer(lesson, options, std::move(stop)).explain();
}

Explanation explainPlating(const Lesson& placed, const ExplainOptions& options,
                           std::stop_token stop) {
    explain::Explainer explainer(placed, options, std::move(stop));
    const Duration late =
        placed.head.lateAllowed ? latenessOf(placed, explainer.expanded()) : Duration();
    if (late > Duration()) {
        explainer.lateAtMost(late - Duration::seconds(1));
    } else {
        explainer.lateAtMost(Duration());
        explainer.startNoEarlier(earliestStart(placed.placements, explainer.expanded()) +
                                 placed.head.grain);
    }
    return explainer.explain();
}

}  // namespace rangeline
