#pragma once

#include <vector>

#include "arrange/rules/formulation.h"

namespace rangeline::explain {

/// Waits, instants of the clock and pins that cannot hold together whatever equipment there is;
/// empty if there are none. Looks at the times alone, so it takes no search.
std::vector<Requirement> conflictingTimes(const rules::Formulation& f);

}  // namespace rangeline::explain
