#pragma once
// What decides plating, on the placed lesson: how far each placement can move later with all others
// moving later as needed, pins and assignments fixed and the order kept on every piece of equipment
// and for every cook, until the first serving deadline or most-wait breaks (total
// slack; CPM after Kelley and Walker 1959). Rules that the placements break count as they are
// given. What no deadline holds must end by the end of the lesson: everyone out, or else the end of
// the last placement or the serving, whichever is later.

#include <cstdint>
#include <vector>

#include "analysis/equipment_ref.h"
#include "base/units.h"
#include "model/expand.h"

namespace rangeline {

class UseIndex;

enum class HeldBy : std::uint8_t {
    Deadline,   ///< must end (or start) by an instant of its own: serving, everyone out
    Wait,       ///< a link, a food it goes into, or a keeping limit (`wait`)
    Equipment,  ///< what follows it on `equipment`
    Cook,       ///< what the cook does next (`equipment`)
    Pin         ///< its own pin
};

/// Why a placement cannot move later by more than its minutes to spare.
struct Hold {
    HeldBy by = HeldBy::Deadline;
    int next = -1;  ///< index into PlatingAnalysis::spares of what it pushes against, or -1
    EquipmentRef equipment;
    int wait = -1;    ///< index into Expanded::waits
    int window = -1;  ///< index into Expanded::windows

    friend bool operator==(const Hold&, const Hold&) = default;
};

struct Spare {
    PlacementKey key;
    Duration spare;  ///< minutes to spare; negative if late already
    bool pinned = false;
    std::vector<Hold> holds;  ///< those that bind, most direct first
};

struct PlatingAnalysis {
    std::vector<Spare> spares;  ///< one per placed placement, in order of start
    std::vector<int> path;      ///< what decides plating: indexes into spares, first to last
};

PlatingAnalysis analysePlating(const UseIndex& index);

}  // namespace rangeline
