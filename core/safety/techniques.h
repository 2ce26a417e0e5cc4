#pragma once
// What a technique usually takes; usual_step.h has the rest of it. Outside the range a lesson gets
// a caution, never a refusal.

#include <span>
#include <string_view>

#include "base/units.h"

namespace rangeline {

struct Technique {
    std::string_view key;  ///< as written in lesson files; other words have no usual range
    Duration least;
    Duration most;
    std::string_view danger;  ///< row of the danger table that always goes with it, or empty
};

/// Every range is common practice, no source.
std::span<const Technique> techniques();
/// Null if there is no such technique.
const Technique* findTechnique(std::string_view key);

}  // namespace rangeline
