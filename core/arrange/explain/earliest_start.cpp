#include "arrange/explain/earliest_start.h"

#include <algorithm>
#include <optional>
#include <variant>

namespace rangeline {
namespace {

bool isThere(const Expanded& expanded, const PlacementKey& key) {
    if (const auto* step = std::get_if<StepKey>(&key)) {
        return expanded.taskOf(*step) >= 0;
    }
    const auto* wash = std::get_if<WashKey>(&key);
    return wash == nullptr ||
           std::ranges::find(expanded.chains, *wash, &Chain::key) != expanded.chains.end();
}

}  // namespace

Instant earliestStart(const Placements& placements, const Expanded& expanded) {
    std::optional<Instant> earliest;
    for (const auto& [key, placement] : placements) {
        if (isThere(expanded, key) && (!earliest || placement.start < *earliest)) {
            earliest = placement.start;
        }
    }
    return earliest.value_or(Instant::serving());
}

}  // namespace rangeline
