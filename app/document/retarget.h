#pragma once

#include "document/changes.h"
#include "document/placing.h"

namespace rangeline {

/// Puts a task, whose placement is among the changes, on the target. Requires that the task accepts
/// it.
void retarget(const UseIndex& index, int task, const DropTarget& target, Changes& changes);

}  // namespace rangeline
