#pragma once
// When plating will be done as things stand (see course.h).

#include "live/course.h"

namespace rangeline::live {

struct Outlook {
    Duration behind;  ///< of the serving that is latest; zero or below: on time, with so much left
    bool plated = true;  ///< nothing that has to be plated is left to do
    Instant plating;     ///< when that serving is plated: its time, or so much later
};

/// What is behind by less is on time, as far as a cook would say.
inline constexpr Duration behindFrom = Duration::minutes(1);

Outlook outlook(const Service& service, Instant now);
Outlook outlook(const Service& service, const Course& course);

}  // namespace rangeline::live
