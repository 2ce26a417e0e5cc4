#include "analysis/cook_stretches.h"

#include <algorithm>
#include <utility>

namespace rangeline {

std::vector<CookStretch> cookStretches(const UseIndex& index, int cook) {
    std::vector<std::pair<CookUse, bool>> uses;
    for (const CookUse& use : index.handsUses(cook)) {
        uses.emplace_back(use, true);
    }
    for (const CookUse& use : index.watchUses(cook)) {
        uses.emplace_back(use, false);
    }
    std::ranges::stable_sort(uses, {}, [](const auto& use) { return use.first; });
    std::vector<CookStretch> stretches;
    for (const auto& [use, hands] : uses) {
        if (stretches.empty() || stretches.back().node != use.node) {
            const bool before =
                std::ranges::find(stretches, use.node, &CookStretch::node) != stretches.end();
            stretches.push_back({use.node, use.interval, {}, {}, before});
        }
        CookStretch& last = stretches.back();
        (hands ? last.hands : last.watching) += use.interval.length();
        last.interval.end = std::max(last.interval.end, use.interval.end);
    }
    return stretches;
}

}  // namespace rangeline
