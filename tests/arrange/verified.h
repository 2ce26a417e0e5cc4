#pragma once
// Arranging in tests: every answer goes through the independent checker.

#include <gtest/gtest.h>

#include "arrange/arrange.h"
#include "check/check.h"

namespace rangeline::test {

/// Arranges, and fails the test if the plan has a collision or a lateness that was not allowed.
ArrangeResult arrangeVerified(const Lesson& lesson, const ArrangeOptions& options = {});

/// The earliest start among the placements.
Instant earliestStart(const Placements& placements);

/// A few words for each collision, for test output.
std::string describe(const Lesson& lesson, const std::vector<Finding>& findings);

}  // namespace rangeline::test
