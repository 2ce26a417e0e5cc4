#pragma once

#include <QString>
#include <string>
#include <vector>

#include "model/fault.h"

namespace rangeline {

/// Where, what and what to do: "servings[0].dish.components[2].steps[0].oven: 900 °F is above this
/// oven’s 550 °F". Without a place, only what.
QString sentence(const Fault& fault);

/// The pattern with the figures for its %1, %2, ...
QString filledIn(const QString& pattern, const std::vector<std::string>& figures);

}  // namespace rangeline
