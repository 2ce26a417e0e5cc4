#pragma once

#include <optional>

#include "model/lesson.h"

namespace rangeline::test {

/// The latest instant at which a plan without collisions and lateness can start, by trying every
/// start in [earliest, latest] on the grain, every burner, ware, oven setting and cook with the
/// checker as the only judge. For lessons of three or four steps. Nothing: there is no plan.
std::optional<Instant> latestStartByBruteForce(const Lesson& lesson, Instant earliest,
                                               Instant latest);

}  // namespace rangeline::test
