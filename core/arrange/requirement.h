#pragma once
// What a lesson asks for, one by one, so that those that cannot hold together can be named.

#include <compare>
#include <cstdint>

namespace rangeline {

enum class RequirementKind : std::uint8_t {
    // ---- clock; `index` is that of Expanded::windows, the first one alike, or 0 where there is
    // one instant for all
    KitchenOpens,     ///< nothing starts before; index 0
    CookingMayStart,  ///< nothing is on the heat before; index 0
    PlateKeeps,       ///< plates of one dish and group wait at most so long for their serving
    Serving,          ///< one dish of one group is served at its time
    AfterServing,     ///< what comes after the serving of one dish and group
    EveryoneOut,      ///< all is done by then; index 0
    // ---- waits; `index` is that of Expanded::waits
    Follows,   ///< one waits for the other, at least so long
    KeepsFor,  ///< at most so long after
    // ---- equipment and crew; `index` is that in the kitchen, of the item
    Burners,       ///< no more at once than there are; index 0
    Wares,         ///< as many of them as there are, one food at a time
    PoolCapacity,  ///< no more at once than there is room for
    OvenSlots,     ///< the rack slots and what stands in each
    OvenSettings,  ///< one temperature and mode at a time, changed at the oven's own rate
    OvenWarmUp,    ///< turned on by a cook and warm before the first load
    Hands,         ///< one pair of hands
    Watching,      ///< so many things watched at once
    ClassWatches,  ///< nobody of a group works while the class watches; index: the group
    // ---- one thing only
    Wash,          ///< what was used is washed before it is used again; index: of Expanded::chains
    WidestVessel,  ///< a vessel is no wider than its burner; index: of Expanded::burnerHolds
    DoorShut,      ///< the door stays shut; index: of Expanded::ovenLoads
    OvenFits,      ///< one oven has both the heat and the room; index: of Expanded::ovenLoads
    Pinned,        ///< a step is pinned; index: of Expanded::tasks
    PinnedWash,    ///< index: of Expanded::chains
    PinnedTurnOn,  ///< index: of Stations::ovens
    // ---- what no change of time cures: the kitchen lacks it
    NobodyCan,    ///< nobody of the crew can do the step; index: of Expanded::tasks
    NoWare,       ///< there is no vessel, board or tool that fits; index: of Expanded::chains
    NoBurner,     ///< no burner is strong enough; index: of Expanded::burnerHolds
    NoOven,       ///< no oven has the heat, or the room; index: of Expanded::ovenLoads
    HandsInside,  ///< hands are needed while the door stays shut; index: of Expanded::ovenLoads
};

/// One requirement of an expanded lesson.
struct Requirement {
    RequirementKind kind{};
    int index = 0;

    friend auto operator<=>(const Requirement&, const Requirement&) = default;
};

}  // namespace rangeline
