#pragma once
// What may fall away where time runs short.

#include "model/dish.h"

namespace rangeline {

/// For which of its fields the step is never left out: "plates", "afterServing", "target" or "raw";
/// null where it may be. Common practice, no source: what is half cooked is not served.
const char* keptFor(const Step& step);

}  // namespace rangeline
