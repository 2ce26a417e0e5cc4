#pragma once
// What takes a piece of equipment or a cook, and when. Indexes are those of Expanded; a "node" is
// the number of a placement in the UseIndex.

#include <algorithm>
#include <compare>
#include <span>
#include <vector>

#include "base/units.h"
#include "model/kitchen.h"

namespace rangeline {

struct BurnerUse {
    Interval interval;
    int hold = 0;  ///< index into Expanded::burnerHolds

    friend auto operator<=>(const BurnerUse&, const BurnerUse&) = default;
};

struct OvenUse {
    Interval interval;
    int load = 0;  ///< index into Expanded::ovenLoads
    int firstSlot = 0;
    int slots = 1;
    Temperature setTo;
    OvenMode mode = OvenMode::Bake;

    friend auto operator<=>(const OvenUse&, const OvenUse&) = default;
};

/// A chain in the ware, or the wash that follows the chain.
struct WareUse {
    Interval interval;
    int chain = 0;  ///< index into Expanded::chains
    bool wash = false;

    friend auto operator<=>(const WareUse&, const WareUse&) = default;
};

struct PoolUse {
    Interval interval;
    int node = -1;  ///< who takes it; -1: food stored since before the lesson
    int hold = -1;  ///< index into Expanded::poolHolds; -1: a wash
    int amount = 1;

    friend auto operator<=>(const PoolUse&, const PoolUse&) = default;
};

/// A stretch of one cook's hands or watching.
struct CookUse {
    Interval interval;
    int node = 0;
    int segment = 0;  ///< index into the node's timing

    friend auto operator<=>(const CookUse&, const CookUse&) = default;
};

/// The uses of each unit of one sort of equipment, sorted by time and then by what uses it, so that
/// the order does not depend on the history of edits.
template <class Use>
class UnitUses {
  public:
    explicit UnitUses(int units) : lists_(static_cast<std::size_t>(units)) {}

    std::span<const Use> of(int unit) const { return lists_[static_cast<std::size_t>(unit)]; }

    void add(int unit, const Use& use) {
        auto& list = lists_[static_cast<std::size_t>(unit)];
        list.insert(std::ranges::upper_bound(list, use), use);
    }
    /// Requires that the use was added to that unit.
    void remove(int unit, const Use& use) {
        auto& list = lists_[static_cast<std::size_t>(unit)];
        list.erase(std::ranges::lower_bound(list, use));
    }

  private:
    std::vector<std::vector<Use>> lists_;
};

}  // namespace rangeline
