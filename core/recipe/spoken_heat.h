#pragma once
// Temperatures and heat that instructions name: "375 °F", "180C", "over medium-high heat".

#include <string>
#include <string_view>
#include <vector>

#include "base/units.h"

namespace rangeline {

/// The temperatures named with their scale in a plain text, in order.
std::vector<Temperature> temperaturesNamed(std::string_view text);

/// "medium-high" of "over medium-high heat"; empty where there is none.
std::string heatNamed(std::string_view text);

}  // namespace rangeline
