#include "arrange/arrange.h"

#include <algorithm>
#include <chrono>
#include <limits>
#include <vector>

#include "arrange/engine/search.h"
#include "arrange/rules/formulation.h"
#include "model/expand.h"

namespace rangeline {
namespace {

using engine::Outcome;
using engine::Value;
using engine::View;

using Seconds = std::chrono::duration<double>;

/// Conflicts spent on making a plan fresher once its start is settled.
constexpr std::int64_t polishConflicts = 3000;

class Arranger {
  public:
    Arranger(const Lesson& lesson, const ArrangeOptions& options, const ArrangeCallback& progress,
             std::stop_token stop)
        : options_(options),
          progress_(progress),
          stop_(std::move(stop)),
          expanded_(expand(lesson)),
          f_(lesson, expanded_) {}

    ArrangeResult run() {
        if (!f_.possible || !f_.engine.propagate()) {
            result_.status = ArrangeStatus::NotPossible;
            return finish();
        }
        engine::Search search(f_.engine, f_.groups, f_.choices, options_.seed,
                              [this] { return keepGoing(); });
        search_ = &search;
        bool proved = true;
        for (const View objective : objectives()) {
            proved = proved && minimise(objective, !isPolish(objective));
        }
        if (found_) {
            result_.status = proved ? ArrangeStatus::Proved : ArrangeStatus::Found;
        }
        return finish();
    }

  private:
    double seconds() const { return Seconds(std::chrono::steady_clock::now() - begun_).count(); }

    bool keepGoing() const {
        return !stop_.stop_requested() &&
               !(options_.secondsLimit && seconds() > *options_.secondsLimit);
    }

    /// In order of importance; all but the last of them are proved.
    std::vector<View> objectives() const { return {f_.lateness, f_.earliestStart, f_.waiting}; }
    bool isPolish(View objective) const { return objective == f_.waiting; }

    std::optional<std::int64_t> conflictsLeft(bool prove) const {
        std::optional<std::int64_t> left;
        if (options_.conflictLimit) {
            left = std::max<std::int64_t>(*options_.conflictLimit - search_->conflicts(), 0);
        }
        return prove ? left : std::min(left.value_or(polishConflicts), polishConflicts);
    }

    /// Finds plans with ever less of the objective until none is left. True if proved least.
    bool minimise(View objective, bool prove) {
        engine::Goal goal{objective, std::nullopt, prove};
        if (found_) {
            goal.atMost = values_[static_cast<std::size_t>(objective)] - 1;
        }
        while (true) {
            const auto left = conflictsLeft(prove);
            const Outcome outcome =
                left && *left == 0 ? Outcome::Interrupted : search_->solve(goal, left);
            if (outcome == Outcome::Interrupted) {
                return settle(objective, !prove);
            }
            if (outcome == Outcome::Contradiction) {
                return settle(objective, true);
            }
            keep();
            goal.atMost = values_[static_cast<std::size_t>(objective)] - 1;
        }
    }

    /// Holds the objective at the best found for those that follow.
    bool settle(View objective, bool proved) {
        if (!found_) {
            result_.status = proved ? ArrangeStatus::NotPossible : ArrangeStatus::Stopped;
            return false;
        }
        f_.engine.backtrackTo(0);
        f_.engine.fix({engine::opposite(objective), -values_[static_cast<std::size_t>(objective)]});
        report();
        return proved;
    }

    /// Takes the solution the engine stands at and goes back to level 0.
    void keep() {
        if (!found_) {
            result_.statistics.secondsToFirst = seconds();
        }
        found_ = true;
        result_.statistics.secondsToBest = seconds();
        result_.placements = readPlacements(f_);
        values_.resize(2 * f_.engine.variables());
        for (const View objective : objectives()) {
            values_[static_cast<std::size_t>(objective)] = f_.engine.low(objective);
        }
        search_->rememberValues();
        f_.engine.backtrackTo(0);
        report();
    }

    void report() {
        if (found_) {
            result_.last.best =
                Instant::atSeconds(-values_[static_cast<std::size_t>(f_.earliestStart)]);
        }
        Value bound = f_.engine.low(f_.earliestStart);
        if (search_->boundOf() == f_.earliestStart) {
            bound = std::max(bound, search_->bound());
        }
        earliestBound_ = std::max(earliestBound_, bound);
        result_.last.bound = Instant::atSeconds(-earliestBound_);
        result_.last.conflicts = search_->conflicts();
        result_.last.seconds = seconds();
        if (progress_) {
            progress_(result_.last);
        }
    }

    ArrangeResult finish() {
        if (search_ != nullptr) {
            result_.statistics.conflicts = search_->conflicts();
            result_.statistics.decisions = search_->decisions();
            result_.statistics.restarts = search_->restarts();
        }
        result_.statistics.seconds = seconds();
        return std::move(result_);
    }

    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
    const ArrangeOptions& options_;
    const ArrangeCallback& progress_;
    std::stop_token stop_;
    Expanded expanded_;
    rules::Formulation f_;
    engine::Search* search_ = nullptr;
    ArrangeResult result_;
    bool found_ = false;
    Value earliestBound_ = std::numeric_limits<Value>::min();
    std::vector<Value> values_;  ///< of the objectives in the best plan, by view
};

}  // namespace

ArrangeResult arrange(const Lesson& lesson, const ArrangeOptions& options,
                      const ArrangeCallback& progress, std::stop_token stop) {
    return Arranger(lesson, options, progress, std::move(stop)).run();
}

}  // namespace rangeline
