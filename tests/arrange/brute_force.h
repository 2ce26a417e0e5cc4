#pragma once

#include <functional>
#include <optional>

#include "check/finding.h"
#include "model/expand.h"
#include "model/lesson.h"

namespace rangeline::test {

/// The latest instant at which a plan without collisions and lateness can start, by trying every
/// start in [earliest, latest] on the grain, every burner, ware, oven setting and cook with the
/// checker as the only judge. For lessons of three or four steps. Nothing: there is no plan.
std::optional<Instant> latestStartByBruteForce(const Lesson& lesson, Instant earliest,
                                               Instant latest);

/// What a plan costs; the lesson is placed as a whole.
using Measure = std::function<std::int64_t(const Lesson&, const Expanded&)>;

/// The least cost of any such plan, among placements within [earliest, latest].
std::optional<std::int64_t> leastByBruteForce(const Lesson& lesson, Instant earliest,
                                              Instant latest, const Measure& measure);

/// Findings that are not to count.
using Overlook = std::function<bool(const Finding&)>;

/// Whether there is a plan among the same placements without any finding that counts.
bool possibleByBruteForce(const Lesson& lesson, Instant earliest, Instant latest,
                          const Overlook& overlook);

}  // namespace rangeline::test
