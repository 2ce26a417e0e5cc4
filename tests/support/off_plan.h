#pragma once
// Lessons in the middle of being cooked, with nothing quite as planned, for property tests.

#include "arrange/underway.h"
#include "base/random.h"
#include "check/finding.h"
#include "model/lesson.h"

namespace rangeline::test {

struct OffPlan {
    Lesson lesson;  ///< with what started marked so, as long as it took or will take
    Underway underway;
};

/// How far the cook strays from the plan.
struct Straying {
    std::int64_t late = 240;  ///< seconds; a start is later by as much at most, or half as early
    int shortest = 60;        ///< percent of the planned length that a step takes
    int longest = 150;
    double notBegun = 0.3;                    ///< of what became due lately
    Duration overdue = Duration::minutes(5);  ///< that is
    double skipped = 0.03;
    double putOff = 0.05;  ///< of what waits, by up to ten minutes
};

/// Cooks the plan until somewhere in its middle.
OffPlan cookOffPlan(Random& random, const Lesson& planned, const Straying& straying = {});

/// Whether what has begun, or was skipped, decides that finding of a lesson: no arranging of the
/// rest can be blamed for it.
bool isExcused(const Finding& finding, const Lesson& lesson, const Underway& underway);

}  // namespace rangeline::test
