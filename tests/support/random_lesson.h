#pragma once
// Small random lessons that validate() accepts, for property tests. The same seed and size give the
// same lesson everywhere.

#include "base/random.h"
#include "model/lesson.h"

namespace rangeline::test {

/// How much there is of everything, and how often (0 to 1) the rarer things occur.
struct RandomLessonSize {
    int dishes = 1;
    int components = 3;         ///< of each dish; one more step plates them
    int stepsPerComponent = 3;  ///< at most; at least one
    int covers = 4;
    int burners = 2;
    int ovens = 1;
    int cooks = 2;
    int groups = 1;
    double burnerSteps = 0.4;  ///< the share of steps on a burner, if there is any
    double ovenSteps = 0.2;    ///< the share of steps in the oven, if there is any
    double carriesOn = 0.5;    ///< of the steps that could go on in the vessel before
    double batches = 0.2;      ///< of the steps with a vessel
    double links = 0.3;        ///< for each step, one to a later step
    double keeps = 0.3;        ///< food with a keeping limit
    double uncertain = 0.5;    ///< durations that are a range
    double choices = 0.0;      ///< steps done ahead, swapped in or with stated batches
};

/// No placements. Not always possible to arrange: hard cases are wanted too.
Lesson randomLesson(Random& random, const RandomLessonSize& size = {});

/// The seed from the environment (RANGELINE_SEED), or else this one. Print it when a test fails.
std::uint64_t seedOr(std::uint64_t usual);

}  // namespace rangeline::test
