// One cook watches no more things at once than the kitchen's limit, also while his hands work.

#include <algorithm>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"
#include "check/overload.h"

namespace rangeline {

void checkWatches(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    const auto uses = index.watchUses(unit);
    const int limit = index.kitchen().watchLimit;
    for (const Overload& overload : overloads(uses, limit, [](const CookUse&) { return 1; })) {
        std::vector<PlacementKey> keys;
        for (const int use : overload.uses) {
            const PlacementKey key = index.keyOf(at(uses, use).node);
            if (std::ranges::count(keys, key) == 0) {
                keys.push_back(key);
            }
        }
        findings.push_back(collision(FindingCode::WatchesTooMuch, std::move(keys),
                                     {EquipmentSort::Cook, unit}, overload.interval,
                                     {overload.most, std::int64_t{limit}}));
    }
}

}  // namespace rangeline
