// More shelf, sink, counter or socket wanted than there is.

#include <algorithm>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"
#include "check/overload.h"

namespace rangeline {
namespace {

/// Food stored since before the lesson is named by the first step that uses it.
PlacementKey keyOfUse(const UseIndex& index, const PoolUse& use) {
    if (use.node >= 0) {
        return index.keyOf(use.node);
    }
    return index.keyOf(at(index.expanded().poolHolds, use.hold).span.untilStartOf.front());
}

}  // namespace

void checkPool(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    const auto uses = index.poolUses(unit);
    const int capacity = index.poolOf(unit).capacity;
    const auto amount = [](const PoolUse& use) { return use.amount; };
    for (const Overload& overload : overloads(uses, capacity, amount)) {
        std::vector<PlacementKey> keys;
        for (const int use : overload.uses) {
            keys.push_back(keyOfUse(index, at(uses, use)));
        }
        findings.push_back(collision(FindingCode::PoolOver, std::move(keys),
                                     {EquipmentSort::Pool, unit}, overload.interval,
                                     {overload.most, std::int64_t{capacity}}));
    }
}

}  // namespace rangeline
