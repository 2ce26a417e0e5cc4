#pragma once
// How unevenly work is spread: the sum over time of the work at once, squared.

#include <cstdint>
#include <vector>

#include "arrange/engine/engine.h"

namespace rangeline::engine {

/// One unit of work from `start` to `end` where `presence` holds; its length is fixed.
struct SquaresTask {
    TimePoint start;
    TimePoint end;
    Literal presence;
};

/// value(total) * unit >= the integral over time of (tasks at once)^2, rounded up. Bounds only:
/// what must overlap counts squared, the rest once.
class SquaresAtMost : public Propagator {
  public:
    SquaresAtMost(std::vector<SquaresTask> tasks, std::int64_t unit, View total);

    std::vector<View> watched() const;
    bool propagate(Engine& engine) override;

  private:
    struct Event {
        Value at = 0;
        int change = 0;
    };

    std::vector<SquaresTask> tasks_;
    std::int64_t unit_;
    View total_;
    std::vector<Event> events_;
    std::vector<Literal> because_;
};

void addSquaresAtMost(Engine& engine, std::vector<SquaresTask> tasks, std::int64_t unit,
                      View total);

}  // namespace rangeline::engine
