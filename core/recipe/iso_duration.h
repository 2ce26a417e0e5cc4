#pragma once
// Durations of ISO 8601: "PT1H30M".

#include <optional>
#include <string_view>

#include "base/units.h"

namespace rangeline {

/// Weeks, days, hours, minutes and seconds; the last of them may have a fraction, of which
/// thousandths count. Cut to whole seconds. Empty for years and months, for anything else, and for
/// more than a week.
std::optional<Duration> readIsoDuration(std::string_view text);

}  // namespace rangeline
