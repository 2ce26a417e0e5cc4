#include "model/stations.h"

#include <algorithm>
#include <cassert>

namespace rangeline {
namespace {

template <class Items, class IdType>
int itemOf(const Items& items, const IdType& id) {
    const auto found = std::ranges::find_if(items, [&](const auto& item) { return item.id == id; });
    return found == items.end() ? -1 : static_cast<int>(found - items.begin());
}

template <class Items, class Count>
UnitTable tableOf(const Items& items, const Groups& groups, Count count) {
    std::vector<int> counts;
    std::vector<bool> shared;
    for (const auto& item : items) {
        counts.push_back(count(item));
        shared.push_back(std::ranges::find(groups.shared, item.id.text) != groups.shared.end());
    }
    return UnitTable(counts, shared, groups.count);
}

}  // namespace

UnitTable::UnitTable(const std::vector<int>& counts, const std::vector<bool>& shared, int groups)
    : counts_(counts), shared_(shared) {
    for (std::size_t item = 0; item < counts.size(); ++item) {
        firsts_.push_back(size());
        for (int group = 0; group < (shared[item] ? 1 : groups); ++group) {
            for (int number = 0; number < counts[item]; ++number) {
                units_.push_back({static_cast<int>(item), group, number});
            }
        }
    }
}

int UnitTable::unitOf(int item, int group, int number) const {
    const auto i = static_cast<std::size_t>(item);
    assert(i < counts_.size() && number >= 0 && number < counts_[i]);
    return firsts_[i] + (shared_[i] ? 0 : group * counts_[i]) + number;
}

Stations Stations::of(const Lesson& lesson) {
    const Kitchen& kitchen = lesson.kitchen;
    const Groups& groups = lesson.head.groups;
    const auto one = [](const auto&) { return 1; };
    return {tableOf(kitchen.burners, groups, one), tableOf(kitchen.ovens, groups, one),
            tableOf(kitchen.wares, groups, [](const Ware& ware) { return ware.count; }),
            tableOf(kitchen.pools, groups, one), tableOf(kitchen.cooks, groups, one)};
}

int burnerItem(const Kitchen& kitchen, const BurnerId& id) {
    return itemOf(kitchen.burners, id);
}
int ovenItem(const Kitchen& kitchen, const OvenId& id) {
    return itemOf(kitchen.ovens, id);
}
int wareItem(const Kitchen& kitchen, const WareId& id) {
    return itemOf(kitchen.wares, id);
}
int poolItem(const Kitchen& kitchen, const PoolId& id) {
    return itemOf(kitchen.pools, id);
}
int cookItem(const Kitchen& kitchen, const CookId& id) {
    return itemOf(kitchen.cooks, id);
}

}  // namespace rangeline
