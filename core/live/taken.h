#pragma once
// What a service tells of the steps: how long each really took.

#include <vector>

#include "live/service.h"

namespace rangeline::live {

struct Taken {
    StepKey key;
    Instant started;
    Instant ended;
    Duration planned;  ///< as the lesson had it before the service
};

/// The steps that were started and done, in the order of their starts. What was only said to be
/// done tells nothing of its length. `planned` is the lesson that the service began with.
std::vector<Taken> takenBy(const Lesson& planned, const Service& service);

}  // namespace rangeline::live
