// Fridge shelves, counter, sockets: so many at once.

#include "arrange/rules/formulation.h"

namespace rangeline::rules {

void addPools(Formulation& f) {
    for (const PoolHold& hold : f.expanded.poolHolds) {
        if (hold.owner >= 0 && f.allLeftOut({hold.owner})) {
            continue;
        }
        const Taken taken = f.taken(hold.span);
        f.poolUse[static_cast<std::size_t>(hold.unit)].push_back(
            {taken.begin, taken.end, hold.amount, f.yes()});
    }
    for (std::size_t unit = 0; unit < f.poolUse.size(); ++unit) {
        const int item = f.expanded.stations.pools[static_cast<int>(unit)].item;
        const int capacity = f.lesson.kitchen.pools[static_cast<std::size_t>(item)].capacity;
        f.limit(f.poolUse[unit], capacity, f.asked(RequirementKind::PoolCapacity, item));
    }
}

}  // namespace rangeline::rules
