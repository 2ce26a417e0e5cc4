#pragma once
// Rules that follow from several others, for those files that write them.

#include <cstdint>
#include <vector>

#include "arrange/engine/energy.h"
#include "arrange/rules/formulation.h"

namespace rangeline::rules {

/// No more than `rate` of work in any unit of time, if `where` is true.
void limitWork(Formulation& f, std::vector<engine::EnergyTask> work, std::int64_t rate,
               Literal where);
/// The hands of all cooks of a group together, and the washing they must do.
void addCrewTogether(Formulation& f);

}  // namespace rangeline::rules
