#pragma once
// A first plan while cooking goes on, made like a cook would: what is due next is begun as planned,
// or as soon after as can be. Where that leads nowhere, what is learned of it moves what came
// before.

#include <functional>
#include <optional>
#include <vector>

#include "arrange/rules/formulation.h"

namespace rangeline::lanes {

class Dispatch {
  public:
    /// `keepGoing` is asked before each decision.
    Dispatch(rules::Formulation& formulation, const rules::Previous& previous,
             std::function<bool()> keepGoing);

    /// Decides from level 0, and leaves the engine where it came to: at a plan if true.
    bool run(std::int64_t conflictLimit);

  private:
    using Literal = engine::Literal;
    using Value = engine::Value;

    std::optional<Literal> next() const;
    const engine::Group* nextDue() const;
    Value timeFor(const engine::Group& group) const;
    std::optional<Literal> choiceOf(const engine::Group& group) const;
    bool isOpen(Literal literal) const;
    bool isTrue(Literal literal) const { return f_.engine.isTrue(literal); }

    rules::Formulation& f_;
    std::function<bool()> keepGoing_;
    std::vector<std::optional<Value>> planned_;  ///< by view
    std::vector<Literal> chosen_;                ///< who, where and in what, as planned
};

}  // namespace rangeline::lanes
