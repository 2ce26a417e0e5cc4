#include "model/fridge.h"

#include <algorithm>

#include "model/equipment_kinds.h"
#include "model/stations.h"

namespace rangeline {
namespace {

const PoolId usualShelf{"fridge-shelf"};

std::vector<PoolNeed> poolsOf(bool cold) {
    return cold ? std::vector{PoolNeed{usualShelf, 1}} : std::vector<PoolNeed>();
}

Keeping keepingOf(bool cold) {
    Keeping kept;
    if (cold) {
        kept.storage = Storage::Cold;
        kept.place = poolsOf(cold).front();
    }
    return kept;
}

}  // namespace

void keepInFridge(Step& step, bool cold) {
    if (step.pools == poolsOf(!cold)) {
        step.pools = poolsOf(cold);
    }
    if (step.after == keepingOf(!cold)) {
        step.after = keepingOf(cold);
    }
}

Dish inFridgeOf(const Kitchen& kitchen, Dish dish) {
    if (poolItem(kitchen, usualShelf) >= 0) {
        return dish;
    }
    const auto shelf = std::ranges::find_if(kitchen.pools, [](const Pool& pool) {
        const EquipmentKind* kind = findEquipmentKind(pool.kind);
        return kind != nullptr && kind->keepsCold;
    });
    const auto isUsual = [](const PoolNeed& need) { return need.pool == usualShelf; };
    for (Component& component : dish.components) {
        for (Step& step : component.steps) {
            const bool waits = step.after.place && isUsual(*step.after.place);
            if (shelf != kitchen.pools.end()) {
                for (PoolNeed& need : step.pools) {
                    need.pool = isUsual(need) ? shelf->id : need.pool;
                }
                if (waits) {
                    step.after.place->pool = shelf->id;
                }
                continue;
            }
            std::erase_if(step.pools, isUsual);
            if (waits) {
                step.after.place.reset();
                step.after.storage = Storage::Room;
            }
        }
    }
    return dish;
}

}  // namespace rangeline
