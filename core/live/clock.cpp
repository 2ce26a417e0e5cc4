#include "live/clock.h"

#include <time.h>
#include <unistd.h>

#include <fstream>
#include <string>

namespace rangeline::live {
namespace {

milliseconds readClock(clockid_t clock) {
    timespec now{};
    if (clock_gettime(clock, &now) != 0) {
        return milliseconds(0);
    }
    return std::chrono::duration_cast<milliseconds>(std::chrono::seconds(now.tv_sec) +
                                                    std::chrono::nanoseconds(now.tv_nsec));
}

}  // namespace

SystemClock::SystemClock() {
    std::ifstream file("/proc/sys/kernel/random/boot_id");
    file >> boot_;
    if (boot_.empty()) {
        // Unknown, but the same for as long as this process lives.
        boot_ = "process " + std::to_string(::getpid()) + " since " +
                std::to_string(readClock(CLOCK_REALTIME).count());
    }
}

ClockReading SystemClock::read() const {
    return {boot_, readClock(CLOCK_BOOTTIME), readClock(CLOCK_REALTIME)};
}

Result<milliseconds, ClockDoubt> serviceTime(const ClockAnchor& anchor, const ClockReading& now) {
    const bool sameBoot = !now.boot.empty() && now.boot == anchor.reading.boot;
    const milliseconds passed =
        sameBoot ? now.sinceBoot - anchor.reading.sinceBoot : now.utc - anchor.reading.utc;
    if (passed < milliseconds(0)) {
        return ClockDoubt::Backwards;
    }
    if (!sameBoot && passed > longestAway) {
        return ClockDoubt::LongAway;
    }
    return anchor.at + passed;
}

Instant instantOf(milliseconds at) {
    return Instant::atSeconds(std::chrono::floor<std::chrono::seconds>(at).count());
}

milliseconds millisecondsOf(Instant instant) {
    return std::chrono::seconds(instant.inSeconds());
}

}  // namespace rangeline::live
