#pragma once
// Where each load may sit: an oven, what it is set to, and the slots.

#include "arrange/rules/formulation.h"

namespace rangeline::rules {

/// Where the load has to sit, if its placement is pinned; null if it is free.
const OvenSpot* statedSpot(const Formulation& f, const OvenLoad& load);

/// Fills `ovenOfLoad`: every setting and every place of each load, one of each to be chosen, both
/// in one oven. Says what a load lacks that no oven can take.
void addOvenChoices(Formulation& f);

}  // namespace rangeline::rules
