#pragma once
// Which equipment and which cook suit a task at a time. Better choices have lower ranks.

#include <vector>

#include "analysis/use_index.h"

namespace rangeline {

/// A task as it would lie in time.
struct Proposed {
    int task = 0;
    Interval interval;
};

/// The wares that a chain may use, as units, best first: free and clean, free, taken, too small.
std::vector<int> wareUnitsFor(const UseIndex& index, int chain, const Proposed& proposed);

/// Burner units, best first: free and fit for these wares, taken, unfit.
std::vector<int> burnerUnitsFor(const UseIndex& index, int hold, const Proposed& proposed,
                                const std::vector<const Ware*>& wares);

/// Oven spots for a load, best first: free slots at the setting that agrees with its neighbours.
std::vector<OvenSpot> ovenSpotsFor(const UseIndex& index, int load, const Proposed& proposed,
                                   const std::vector<const Ware*>& wares);

/// The setting for a load that goes into that oven: its neighbours', else `now` if the oven offers
/// it, else the lowest accepted one.
Temperature settingFor(const UseIndex& index, int oven, int load, const Interval& interval,
                       Temperature now);

/// Cooks of the crew who can do the task, by how long their hands are taken meanwhile.
std::vector<CookId> cooksFor(const UseIndex& index, int task, const Interval& interval);
/// The same for any work of that group: a wash, turning an oven on.
std::vector<CookId> cooksOfGroup(const UseIndex& index, int group, const Interval& interval);

/// Whether that unit is one that the group uses.
bool belongsTo(const UnitTable& table, int unit, int group);

}  // namespace rangeline
