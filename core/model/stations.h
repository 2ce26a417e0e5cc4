#pragma once
// The single physical things of a lesson. With several groups each station has its own burners,
// wares and cooks, except those that the groups share; every one of them gets a unit number.

#include <string>
#include <vector>

#include "model/lesson.h"
#include "model/placement.h"

namespace rangeline {

/// One physical thing: which item of the kitchen's list, whose, and which of alike ones.
struct Unit {
    int item = 0;
    int group = 0;   ///< 0 for shared things
    int number = 0;  ///< for wares
};

/// The units of one sort of equipment, numbered from 0.
class UnitTable {
  public:
    /// `counts[i]` alike things of item i for each group, or in all where shared[i].
    UnitTable() = default;
    UnitTable(const std::vector<int>& counts, const std::vector<bool>& shared, int groups);

    int size() const { return static_cast<int>(units_.size()); }
    const Unit& operator[](int unit) const { return units_[static_cast<std::size_t>(unit)]; }
    /// Requires a known item, 0 <= group < groups and 0 <= number < count.
    int unitOf(int item, int group, int number = 0) const;
    int countOf(int item) const { return counts_[static_cast<std::size_t>(item)]; }

  private:
    std::vector<Unit> units_;
    std::vector<int> counts_;
    std::vector<bool> shared_;
    std::vector<int> firsts_;
};

/// All units of a lesson, and the way from the ids in placements to them (-1: no such thing).
struct Stations {
    UnitTable burners, ovens, wares, pools, cooks;  ///< cooks: only the lesson's crew has a meaning

    static Stations of(const Lesson& lesson);
};

int burnerItem(const Kitchen& kitchen, const BurnerId& id);
int ovenItem(const Kitchen& kitchen, const OvenId& id);
int wareItem(const Kitchen& kitchen, const WareId& id);
int poolItem(const Kitchen& kitchen, const PoolId& id);
int cookItem(const Kitchen& kitchen, const CookId& id);

}  // namespace rangeline
