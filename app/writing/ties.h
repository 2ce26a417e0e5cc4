#pragma once
// What a step waits for, as a list that is written line by line: the step before it, whether its
// food goes in, and the wait between them.

#include <optional>
#include <string>
#include <vector>

#include "model/dish.h"

namespace rangeline {

struct Tie {
    StepId from;
    bool goesIn = true;
    bool each = false;  ///< batch by batch
    Duration least;
    std::optional<Duration> most;
    StepEnd fromEnd = StepEnd::End;  ///< that the wait is counted from
    StepEnd toEnd = StepEnd::Start;  ///< and to

    friend bool operator==(const Tie&, const Tie&) = default;
};

/// These require steps that are there.
/// In the order of the uses, then of the links.
std::vector<Tie> tiesOf(const Dish& dish, const StepId& step);
/// The step waits for just these. A tie without a step, or to the step itself, is left out.
Dish withTies(Dish dish, const StepId& step, const std::vector<Tie>& ties);

/// The food of `from` goes into `step`; already there it stays as it is.
Dish withUse(Dish dish, const StepId& step, const StepId& from);
/// `step` no longer waits for `from`, neither for its food nor by a link, nor goes on in its pans.
Dish withoutTie(Dish dish, const StepId& step, const StepId& from);
/// `step` goes on in all vessels that `from` has and leaves them to it ("the same pan"), and its
/// food goes in; its own of these kinds are no longer needed.
Dish withSamePan(Dish dish, const StepId& step, const StepId& from);

/// The steps by name, for choosing one: names that are there twice tell their component or get a
/// number.
struct StepNames {
    std::vector<StepId> ids;
    std::vector<std::string> names;

    /// Empty for an unknown one.
    std::string nameOf(const StepId& id) const;
    StepId idOf(const std::string& name) const;
};
StepNames stepNames(const Dish& dish);
/// Without that one.
StepNames otherSteps(const Dish& dish, const StepId& but);

}  // namespace rangeline
