#pragma once

#include <vector>

#include "arrange/engine/engine.h"

namespace rangeline::engine {

/// weight * value(view); weight > 0 (a negative weight is a positive one on the opposite view).
struct Term {
    View view = 0;
    Value weight = 1;
};

/// value(total) >= constant + the sum of the terms. Bounds only; sums in 64 bits must fit a Value.
class LinearAtMost : public Propagator {
  public:
    LinearAtMost(std::vector<Term> terms, std::int64_t constant, View total);

    std::vector<View> watched() const;
    bool propagate(Engine& engine) override;

  private:
    std::vector<Term> terms_;
    std::int64_t constant_;
    View total_;
    std::vector<Literal> because_;
};

void addLinearAtMost(Engine& engine, std::vector<Term> terms, std::int64_t constant, View total);

}  // namespace rangeline::engine
