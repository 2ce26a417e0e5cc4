#pragma once

#include "timeline/build_timeline.h"

namespace rangeline {

/// For the head of every page: when, what, for how many, who, in which units, and how many
/// collisions are left and where they are listed.
QString lessonFacts(const TimelineInput& input, const QString& whereCollisions);

/// "Pea soup for 12 and roast carrots for 4"
QString dishesText(const Lesson& lesson);
/// The names of those who are there.
QString crewText(const Lesson& lesson);

}  // namespace rangeline
