#pragma once
// What happens while a lesson is cooked. A service is what its events, in their order, make of the
// lesson; nothing else is kept.

#include <variant>

#include "live/clock.h"
#include "model/edit.h"

namespace rangeline::live {

struct Started {
    PlacementKey key;
    friend bool operator==(const Started&, const Started&) = default;
};
struct Done {
    PlacementKey key;
    friend bool operator==(const Done&, const Done&) = default;
};
/// A running step takes so much longer than its timer says, or than now where that is over. One
/// that waits is not begun before then.
struct MoreTime {
    PlacementKey key;
    Duration by;  ///< > 0
    friend bool operator==(const MoreTime&, const MoreTime&) = default;
};
/// Looked at, and the cue was not there; or what is due cannot begin yet. Asks again after `again`.
struct NotReady {
    PlacementKey key;
    Duration again;  ///< > 0
    friend bool operator==(const NotReady&, const NotReady&) = default;
};
struct Skipped {
    PlacementKey key;
    friend bool operator==(const Skipped&, const Skipped&) = default;
};
/// Written down before it is heard. An alarm of another generation is of a timer that is no more.
struct AlarmFired {
    PlacementKey key;
    int generation = 0;
    friend bool operator==(const AlarmFired&, const AlarmFired&) = default;
};
struct AlarmStopped {
    PlacementKey key;
    int generation = 0;
    friend bool operator==(const AlarmStopped&, const AlarmStopped&) = default;
};
/// What waits is placed anew. What began stays as it is whatever the change says.
struct PlanReplaced {
    SetPlacements change;
    friend bool operator==(const PlanReplaced& a, const PlanReplaced& b) {
        return a.change.changes == b.change.changes;
    }
};
/// Every plate is served so much later than planned, or than said before.
struct ServedLater {
    Duration by;  ///< > 0
    friend bool operator==(const ServedLater&, const ServedLater&) = default;
};
/// The cook says which instant it is: that of the entry.
struct ClockSet {
    friend bool operator==(const ClockSet&, const ClockSet&) = default;
};
/// What the clocks say is written down: the machine was started anew, or its wall clock was set.
struct ClockNoted {
    friend bool operator==(const ClockNoted&, const ClockNoted&) = default;
};
struct Ended {
    friend bool operator==(const Ended&, const Ended&) = default;
};

using Event = std::variant<Started, Done, MoreTime, NotReady, Skipped, AlarmFired, AlarmStopped,
                           PlanReplaced, ServedLater, ClockSet, ClockNoted, Ended>;

/// An event with the instant at which it happened and what the clocks said then.
struct Entry {
    ClockAnchor when;
    Event event;

    friend bool operator==(const Entry&, const Entry&) = default;
};

}  // namespace rangeline::live
