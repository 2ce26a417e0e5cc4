#pragma once
// A first plan while cooking goes on, made like a cook would: what is due next
// is begun as planned, or as soon after as can be.

#include <functional>
#include <optional>
#include <vector>

#include "arrange/rules/formulation.h"

namespace rangeline::lanes {

/// Decides on levels of its own, from level 0, and leaves the engine at what it
/// came to. It learns nothing; where something would have to wait longer for
/// what follows than its food keeps, it begins anew with that put off.
class Dispatch {
  public:
    /// `keepGoing` is asked before each placement.
    Dispatch(rules::Formulation& formulation, const rules::Previous& previous,
             std::function<bool()> keepGoing);

    /// False if it stopped short.
    bool run();

  private:
    using Literal = engine::Literal;
    using Value = engine::Value;

    struct Due {
        std::size_t group = 0;
        Value at = 0;
    };

    std::optional<std::size_t> goThrough();
    void keepChoices();
    std::optional<Due> nextDue() const;
    bool allChosen(const engine::Group& group) const;
    bool choose(const engine::Group& group);
    bool begin(const Due& due);
    bool attempt(Literal literal);
    bool isOpen(Literal literal) const;
    bool putOffBefore(std::size_t task, Value by);

    rules::Formulation& f_;
    std::function<bool()> keepGoing_;
    std::vector<std::optional<Value>> planned_;  ///< by view
    std::vector<bool> preferred_;                ///< by view, of literals
    std::vector<std::vector<int>> keepsFor_;     ///< by task: those whose food keeps only so long
};

}  // namespace rangeline::lanes
