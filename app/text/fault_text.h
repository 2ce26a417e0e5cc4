#pragma once

#include <QString>

#include "model/fault.h"

namespace rangeline {

/// Where, what and what to do: "servings[0].dish.components[2].steps[0].oven: 900 °F is above this
/// oven’s 550 °F". Without a place, only what.
QString sentence(const Fault& fault);

}  // namespace rangeline
