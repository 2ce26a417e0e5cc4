#pragma once
// Published scheduling problems as lessons.

#include <utility>
#include <vector>

#include "model/lesson.h"

namespace rangeline::test {

/// Jobs of {machine, minutes} in order; each machine is a pool of one.
Lesson jobShop(const std::vector<std::vector<std::pair<int, int>>>& jobs, int machines);

/// start of `to` >= start of `from` + `minutes`, which may be negative.
struct Lag {
    int from = 0;
    int to = 0;
    int minutes = 0;
};

std::vector<Lag> finishToStart(const std::vector<int>& lengths,
                               const std::vector<std::vector<int>>& followers);

/// Activities on pools; the last activity is served.
Lesson project(const std::vector<int>& capacities, const std::vector<int>& lengths,
               const std::vector<std::vector<int>>& demands, const std::vector<Lag>& lags);

}  // namespace rangeline::test
