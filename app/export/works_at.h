#pragma once

#include "analysis/use_index.h"

namespace rangeline {

/// Whether the cook's hands or eyes are in this placement. Requires that it is placed.
bool worksAt(const UseIndex& index, int node, const CookId& cook);

}  // namespace rangeline
