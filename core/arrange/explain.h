#pragma once
// Why a lesson is not possible, and what keeps a plan from being better: a smallest set of
// requirements that cannot hold together.

#include <cstdint>
#include <optional>
#include <stop_token>
#include <vector>

#include "arrange/requirement.h"
#include "model/lesson.h"

namespace rangeline {

struct ExplainOptions {
    std::uint64_t seed = 1;
    /// Conflicts spent on finding a first set; and on each question that makes it smaller, of which
    /// there are about as many as the answer has members.
    std::int64_t conflictsForFirst = 50'000;
    std::int64_t conflictsPerQuestion = 2'000;
    std::optional<double> secondsLimit = 10;  ///< for all questions together; may stop anywhere
};

enum class ExplainStatus : std::uint8_t {
    Smallest,        ///< these cannot hold together, and without any one of them they could
    NotProvedSmall,  ///< these cannot hold together; a limit stopped the rest
    Possible,        ///< nothing to explain: it can be done
    Stopped          ///< limit or stop before it was known
};

struct Explanation {
    ExplainStatus status = ExplainStatus::Stopped;
    /// With Smallest and NotProvedSmall, in the order of RequirementKind. Indexes are those of
    /// expand(lesson). Empty with Smallest only if the lesson cannot hold whatever is asked of it.
    std::vector<Requirement> requirements;
    double seconds = 0;
    std::int64_t questions = 0;
    std::int64_t conflicts = 0;
};

/// Which requirements leave no plan at all. Requires validate(lesson) to be empty; placements that
/// are pinned or started count, others do not.
Explanation explainNotPossible(const Lesson& lesson, const ExplainOptions& options = {},
                               std::stop_token stop = {});

/// What decides plating: which requirements keep every plan from starting later than the placed
/// lesson does, or, if it is late, from being less late in all. Requires validate(lesson) to be
/// empty and every step placed. Possible: there is a better plan.
Explanation explainPlating(const Lesson& placed, const ExplainOptions& options = {},
                           std::stop_token stop = {});

}  // namespace rangeline
