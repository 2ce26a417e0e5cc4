#pragma once
// Times that instructions name: "20 to 25 minutes", "1 hour 20 minutes", "4 minutes per side".

#include <string_view>
#include <vector>

#include "model/dish.h"

namespace rangeline {

/// Each time named in a plain text (plainLine), in order; likely is halfway. Times of repetition
/// ("every 10 minutes", "after 5 minutes") are no durations and are left out. At most a week.
std::vector<DurationRange> timesNamed(std::string_view text);

/// The text without the one time it names, if it ends in it: "Sweat the leeks" of "Sweat the leeks
/// for about 8 minutes". Otherwise all of it.
std::string_view withoutClosingTime(std::string_view text);

}  // namespace rangeline
