#pragma once
// The functions of all checks, one file each; the registry in checks.cpp lists them.

#include "check/check.h"

namespace rangeline {

// placement_check.cpp
void checkNotPlaced(const UseIndex& index, int task, std::vector<Finding>& findings);

}  // namespace rangeline
