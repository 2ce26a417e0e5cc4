#pragma once
// Which instant of a service it is. What runs is measured by a clock that counts through sleep and
// that nobody can set; the wall clock is asked only where the machine was started anew in between.

#include <chrono>
#include <cstdint>
#include <string>

#include "base/result.h"
#include "base/units.h"

namespace rangeline::live {

using std::chrono::milliseconds;

/// The clocks of the machine at one instant.
struct ClockReading {
    std::string boot;        ///< names this run of the machine; empty where it is not known
    milliseconds sinceBoot;  ///< sleep included
    milliseconds utc;        ///< since 1970-01-01T00:00Z, as the wall clock says

    friend bool operator==(const ClockReading&, const ClockReading&) = default;
};

class ClockSource {
  public:
    virtual ~ClockSource() = default;
    virtual ClockReading read() const = 0;
};

/// The machine's own: CLOCK_BOOTTIME, the kernel's name of the boot, and UTC.
class SystemClock : public ClockSource {
  public:
    SystemClock();
    ClockReading read() const override;

  private:
    std::string boot_;
};

/// What the clocks said at an instant of the service.
struct ClockAnchor {
    ClockReading reading;
    milliseconds at{};  ///< after the main serving instant; before it negative

    friend bool operator==(const ClockAnchor&, const ClockAnchor&) = default;
};

/// Why the clocks cannot tell; the cook is asked.
enum class ClockDoubt : std::uint8_t {
    Backwards,  ///< earlier than what was written down before
    LongAway    ///< a wall clock that is more than longestAway later
};

inline constexpr milliseconds longestAway = std::chrono::hours(24);

/// The instant of the service at which the clocks say `now`.
Result<milliseconds, ClockDoubt> serviceTime(const ClockAnchor& anchor, const ClockReading& now);

/// The last whole second not after it.
Instant instantOf(milliseconds at);
milliseconds millisecondsOf(Instant instant);

}  // namespace rangeline::live
