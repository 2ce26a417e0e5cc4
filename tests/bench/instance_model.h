#pragma once
// An instance as variables and constraints of the planner's core. Time is negated, so that the
// core's latest-first order places the earliest first.

#include <vector>

#include "arrange/engine/engine.h"
#include "arrange/engine/search.h"
#include "bench/instances.h"

namespace rangeline::bench {

struct InstanceModel {
    explicit InstanceModel(const Instance& instance);

    engine::Engine engine;
    std::vector<engine::View> starts;  ///< of the tasks
    engine::View span = 0;             ///< end of the last task
    engine::View waiting = 0;          ///< weighted minutes of the hot food; 0 where there is none
    std::vector<engine::Group> groups;
    std::vector<engine::Choice> choices;
    bool possible = true;
};

/// The least span, or the first sentence of what the starts break; empty if they keep everything
/// but pans and oven settings, which are not part of the starts.
std::string brokenBy(const Instance& instance, const std::vector<int>& starts);

}  // namespace rangeline::bench
