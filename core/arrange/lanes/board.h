#pragma once
// What the lanes of one arranging tell each other. All lanes have the same formulation and go
// through the same stages, one objective after the other, so that a variable and an objective mean
// the same in each.

#include <atomic>
#include <cstdint>
#include <limits>
#include <memory>
#include <mutex>
#include <optional>
#include <vector>

#include "arrange/engine/literal.h"
#include "model/lesson.h"

namespace rangeline::lanes {

using engine::Value;

struct BoardPlan {
    Value value = 0;  ///< of the objective of its stage
    Value earliestStart = 0;
    double seconds = 0;  ///< when it was found
    Placements placements;
    std::vector<std::optional<Value>> values;  ///< by variable
};

class Board {
  public:
    static constexpr Value noBound = std::numeric_limits<Value>::min();

    struct State {
        bool closed = false;                    ///< the stage is over: its plan is proved best
        std::optional<Value> best;              ///< of the stage's objective
        Value bound = noBound;                  ///< no plan of the stage has less
        std::shared_ptr<const BoardPlan> plan;  ///< the best known, of this stage or a later one
    };

    /// Taken if it is better than what is known of an open stage.
    void offer(int stage, BoardPlan plan);
    void raise(int stage, Value bound);
    /// Proved: no plan of that stage has less than `value`; without it, that there is none.
    void close(int stage, std::optional<Value> value);
    State state(int stage) const;
    /// Changes with everything that is told.
    std::uint64_t version() const { return version_.load(std::memory_order_acquire); }

  private:
    mutable std::mutex mutex_;
    std::atomic<std::uint64_t> version_ = 0;
    std::vector<std::optional<Value>> closed_;  ///< by stage
    std::optional<Value> best_;                 ///< of the first open stage
    Value bound_ = noBound;
    std::shared_ptr<const BoardPlan> plan_;
};

}  // namespace rangeline::lanes
