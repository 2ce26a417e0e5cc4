#pragma once
// A service that goes on now: what happens is stamped with the clock, written down, and only then
// counts. Whoever writes it down is given; a service that comes back is made of what was written.

#include <functional>
#include <optional>
#include <vector>

#include "live/timers.h"

namespace rangeline::live {

/// Writes the entries down so that they survive; false where it cannot now. They are then offered
/// again together with the next ones, and the service goes on.
using WriteDown = std::function<bool(const std::vector<Entry>& entries)>;

class Session {
  public:
    /// A service that begins at `at` by its own time. The clock outlives it.
    Session(Lesson lesson, milliseconds at, const ClockSource& clock, WriteDown write);
    /// The service that these entries tell of; it began as `begun` says. Where the machine was
    /// started anew since, that is written down, so that the wall clock is believed only once.
    Session(Lesson lesson, const ClockAnchor& begun, const std::vector<Entry>& entries,
            const ClockSource& clock, WriteDown write);

    const Service& service() const { return service_; }
    /// What the clocks said when it began.
    const ClockAnchor& begun() const { return begun_; }
    /// Now, by the service's time. In doubt: the last instant that was sure.
    milliseconds now() const;
    Instant instant() const { return instantOf(now()); }
    /// Why the clocks cannot tell, until setClock().
    std::optional<ClockDoubt> doubt() const;
    /// The cook says which instant it is.
    void setClock(Instant at);

    /// Whether the event means anything now; then it has been written down and counts.
    bool record(const Event& event);
    /// Rings what is due, in order; each alarm is written down before this returns it. Nothing
    /// while the clocks are in doubt. A wall clock that was set is noted, so that only what happens
    /// to it while the machine is off can mislead.
    std::vector<Timer> tick();
    /// Entries that could not be written down yet.
    const std::vector<Entry>& unwritten() const { return unwritten_; }

  private:
    void noteSetWall();
    bool recordAt(const Event& event, const ClockAnchor& when);

    Service service_;
    ClockAnchor begun_;
    ClockAnchor anchor_;  ///< the last that was sure
    const ClockSource& clock_;
    WriteDown write_;
    std::vector<Entry> unwritten_;
};

}  // namespace rangeline::live
