#pragma once
// Places all steps that are not pinned, so that no collision is left and the chosen aim is met as
// well as can be. Exact on the lesson's grain; a result says whether it is proved best.

#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>

#include "arrange/underway.h"
#include "model/lesson.h"

namespace rangeline {

struct ArrangeOptions {
    std::uint64_t seed = 1;
    std::optional<Aim> aim;  ///< instead of the lesson's
    /// Least movement away from the lesson's placements comes before the aim. A step that has none
    /// moves for nothing.
    bool stayClose = false;
    /// Arranges what is left of a lesson that is being cooked: least lateness first, even where the
    /// lesson does not allow any, then least movement, and no aim.
    std::optional<Underway> underway;
    /// Where the search begins, instead of with the lesson's placements.
    std::optional<Placements> beginWith;
    /// Exact: the same plan every time. Each thread's own.
    std::optional<std::int64_t> conflictLimit;
    std::optional<double> secondsLimit;  ///< may stop anywhere
    /// 1, or 2: another thread raises the bound meanwhile. The same plan every time only with 1.
    int threads = 1;
};

/// What is known so far. Instants are those of the earliest placement of a plan.
struct ArrangeProgress {
    std::optional<Instant> best;  ///< the best plan found starts then
    Instant bound;                ///< no plan starts later than this
    Aim aim = Aim::StartLate;
    /// What the aim is about, the smaller the better: seconds from the earliest start to serving;
    /// weighted seconds of waiting, and of ovens on before serving; cook-minutes at once squared;
    /// vessels.
    std::optional<std::int64_t> aimBest;
    std::int64_t aimBound = 0;  ///< no plan has less
    std::int64_t conflicts = 0;
    double seconds = 0;
};

enum class ArrangeStatus : std::uint8_t {
    Proved,       ///< the plan is the best there is
    Found,        ///< a plan; a better one may exist
    NotPossible,  ///< proved that no plan within seven days of serving keeps all the rules
    Stopped       ///< limit or stop before a plan was found
};

struct ArrangeStatistics {
    double secondsToFirst = 0;
    double secondsToBest = 0;
    double seconds = 0;
    std::int64_t conflicts = 0;
    std::int64_t decisions = 0;
    std::int64_t restarts = 0;
};

struct ArrangeResult {
    ArrangeStatus status = ArrangeStatus::Stopped;
    /// With Proved and Found: a placement for every step, wash and turning on, pinned ones as they
    /// were. Empty otherwise.
    Placements placements;
    ArrangeProgress last;
    ArrangeStatistics statistics;
};

/// Called at every better plan and bound, from the thread that calls arrange().
using ArrangeCallback = std::function<void(const ArrangeProgress&)>;

/// Requires validate(lesson) to be empty. Placements that are pinned or started stay; the others
/// are where the search begins, and planned anew. Where cooks could share a step's pieces, or work
/// on it together, in more than 128 ways, as many are tried and nothing is proved. Least lateness
/// comes first, then the aim; both are proved. What they leave open is decided by the other aims in
/// their order, as well as a fixed number of conflicts for each allows.
ArrangeResult arrange(const Lesson& lesson, const ArrangeOptions& options = {},
                      const ArrangeCallback& progress = {}, std::stop_token stop = {});

}  // namespace rangeline
