#pragma once
// What the findings of a whole lesson come to.

#include <span>

#include "check/finding.h"

namespace rangeline {

/// Whether it can be followed at the stove: nothing collides and nothing is left to place.
bool canBeFollowed(std::span<const Finding> findings);

/// Whether it can be followed and nothing is late, unless the lesson allows that.
bool keepsRules(std::span<const Finding> findings, bool lateAllowed);

}  // namespace rangeline
