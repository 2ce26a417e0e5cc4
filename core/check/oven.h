#pragma once
// What the checks of ovens have in common.

#include <string>

#include "analysis/use_index.h"

namespace rangeline {

/// The step whose load it is.
PlacementKey keyOfLoad(const UseIndex& index, const OvenUse& use);

/// "bake" | "convection" | "broil"
std::string modeKey(OvenMode mode);

}  // namespace rangeline
