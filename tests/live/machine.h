#pragma once
// A machine whose clocks, sleep and crashes the test decides.

#include <random>
#include <string>
#include <vector>

#include "live/session.h"

namespace rangeline::test {

using live::milliseconds;

/// Thrown where the power goes.
struct PowerGone {};

class Machine : public live::ClockSource {
  public:
    live::ClockReading read() const override {
        return {"boot " + std::to_string(boots_), sinceBoot_, wall_};
    }
    /// Awake or asleep: both clocks go on.
    void pass(milliseconds time) {
        sinceBoot_ += time;
        wall_ += time;
    }
    /// Somebody, or a time server, sets the wall clock.
    void setWall(milliseconds by) { wall_ += by; }
    void startAnew(milliseconds off) {
        ++boots_;
        sinceBoot_ = milliseconds(0);
        wall_ += off;
    }
    milliseconds wall() const { return wall_; }

    /// What a session writes down. `loseBefore` and `loseAfter`: the power goes before or after
    /// that many more writes.
    live::WriteDown disk() {
        return [this](const std::vector<live::Entry>& entries) {
            if (loseBefore-- == 0) {
                throw PowerGone();
            }
            written.insert(written.end(), entries.begin(), entries.end());
            if (loseAfter-- == 0) {
                throw PowerGone();
            }
            return true;
        };
    }
    std::vector<live::Entry> written;
    int loseBefore = -1;
    int loseAfter = -1;

  private:
    int boots_ = 1;
    milliseconds sinceBoot_ = std::chrono::hours(3);
    milliseconds wall_ = std::chrono::hours(500'000);
};

}  // namespace rangeline::test
