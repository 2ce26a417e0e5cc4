#pragma once
// Durations of ISO 8601: "PT1H30M".

#include <optional>
#include <string_view>

#include "base/units.h"

namespace rangeline {

/// Days, hours, minutes and seconds, the last with a fraction that is cut off; weeks alone. Empty
/// for years and months, for anything else, and for more than a week.
std::optional<Duration> readIsoDuration(std::string_view text);

}  // namespace rangeline
