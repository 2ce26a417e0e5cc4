#pragma once
// What is known of the best plan and its bound, told whenever it changes.

#include <chrono>
#include <limits>
#include <optional>

#include "arrange/arrange.h"
#include "arrange/engine/literal.h"

namespace rangeline::lanes {

using engine::Value;

class Report {
  public:
    Report(const ArrangeCallback& progress, std::chrono::steady_clock::time_point begun)
        : progress_(progress), begun_(begun) {}

    double seconds() const {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun_).count();
    }

    void startsAtBest(Value earliestStart) {
        known_.best = Instant::atSeconds(-std::int64_t{earliestStart});
    }
    /// No bound is told from now on.
    void tellNoBound() { tellsBound_ = false; }
    void boundStart(Value atLeast) {
        startBound_ = std::max(startBound_, atLeast);
        if (tellsBound_) {
            known_.bound = Instant::atSeconds(-std::int64_t{startBound_});
        }
    }
    void aimIs(Aim aim) { known_.aim = aim; }
    void aimAtBest(Value value) { known_.aimBest = value; }
    void boundAim(Value atLeast) {
        aimBound_ = std::max(aimBound_, atLeast);
        if (tellsBound_) {
            known_.aimBound = aimBound_;
        }
    }
    Value aimBound() const { return aimBound_; }

    void tell(std::int64_t conflicts) {
        known_.conflicts = conflicts;
        known_.seconds = seconds();
        if (progress_) {
            progress_(known_);
        }
    }
    const ArrangeProgress& known() const { return known_; }

  private:
    const ArrangeCallback& progress_;
    std::chrono::steady_clock::time_point begun_;
    ArrangeProgress known_;
    bool tellsBound_ = true;
    Value startBound_ = std::numeric_limits<Value>::min();
    Value aimBound_ = std::numeric_limits<Value>::min();
};

}  // namespace rangeline::lanes
