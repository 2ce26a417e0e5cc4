#pragma once
// What other covers change in a lesson: what is measured out, how many loads a step comes to and
// how long they take, and what is found to be wrong.

#include <vector>

#include "analysis/use_index.h"
#include "check/finding.h"
#include "model/kitchen_amount.h"

namespace rangeline {

/// Indexes into the lesson after the change.
struct CoversOfDish {
    int serving = 0;
    int before = 0;
    int after = 0;
};

struct AmountChange {
    int serving = 0;
    int component = 0;
    int ingredient = 0;
    KitchenAmount before;
    KitchenAmount after;
};

/// All loads of a step for one group.
struct StepLoads {
    int count = 0;
    Duration time;  ///< the likely times of all loads together, at pace 1

    friend bool operator==(const StepLoads&, const StepLoads&) = default;
};

struct LoadsChange {
    int task = 0;  ///< the first of the step after the change
    StepLoads before;
    StepLoads after;
};

struct CoversChange {
    std::vector<CoversOfDish> covers;
    std::vector<AmountChange> amounts;  ///< in the lesson's order, as the others
    std::vector<LoadsChange> loads;
    std::vector<Finding> arisen;  ///< found after it, but not before, of the same steps and things
    int settled = 0;              ///< found before it, but not after
};

/// Dishes are matched by their ids; those in only one of the lessons are left out of the first
/// three lists.
CoversChange coversChange(const UseIndex& before, const UseIndex& after);

}  // namespace rangeline
