#include "arrange/arrange.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <limits>
#include <vector>

#include "arrange/engine/search.h"
#include "arrange/rules/formulation.h"
#include "base/random.h"
#include "model/expand.h"

namespace rangeline {
namespace {

using engine::Outcome;
using engine::Value;
using engine::View;

using Seconds = std::chrono::duration<double>;

/// Conflicts spent on each aim that only breaks ties.
constexpr std::int64_t polishConflicts = 2000;
/// Conflicts within which the old placements must lead to a plan; else they are forgotten.
constexpr std::int64_t hintConflicts = 300;

/// Conflicts of the first search for a better plan, before the neighbourhood of the best one is
/// searched for a quarter as many; then half as much again each time.
constexpr std::int64_t firstSlice = 1000;
constexpr std::int64_t neighbourhoodConflicts = 150;

constexpr std::array aimsInOrder{Aim::StartLate, Aim::Fresh, Aim::Calm, Aim::FewPans};

class Arranger {
  public:
    Arranger(const Lesson& lesson, const ArrangeOptions& options, const ArrangeCallback& progress,
             std::stop_token stop)
        : options_(options),
          progress_(progress),
          stop_(std::move(stop)),
          aim_(options.aim.value_or(lesson.head.aim)),
          expanded_(expand(lesson)),
          f_(lesson, expanded_),
          random_(options.seed) {}

    ArrangeResult run() {
        if (!f_.possible || !f_.engine.propagate()) {
            result_.status = ArrangeStatus::NotPossible;
            return finish();
        }
        engine::Search search(f_.engine, f_.groups, f_.choices, options_.seed,
                              [this] { return keepGoing(); });
        search_ = &search;
        const bool proved = findPlan() && approach();
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

    std::optional<std::int64_t> conflictsLeft(std::optional<std::int64_t> budget) const {
        if (!options_.conflictLimit) {
            return budget;
        }
        const auto left = std::max<std::int64_t>(*options_.conflictLimit - search_->conflicts(), 0);
        return std::min(left, budget.value_or(left));
    }

    /// The least lateness, beginning where the lesson's placements stand. True if proved least.
    bool findPlan() {
        const rules::Previous previous = rules::previousPlan(f_);
        objective_ = f_.lateness;
        for (const auto& hints : {previous.starts, previous.hints}) {
            for (const auto& hint : hints) {
                search_->suggest(hint.view, hint.value);
            }
        }
        for (const engine::Literal chosen : previous.chosen) {
            search_->suggest(chosen.view, 1);
        }
        if (!previous.starts.empty() && !solve({f_.lateness}, hintConflicts)) {
            search_->forgetValues();
        }
        if (!minimise(f_.lateness, std::nullopt)) {
            return false;
        }
        return !options_.stayClose || previous.starts.empty() ||
               minimise(rules::addMovement(f_, previous), std::nullopt);
    }

    /// The aim, and the others to break its ties. True if the aim is proved.
    bool approach() {
        const View aim = rules::addAim(f_, aim_);
        result_.last.aim = aim_;
        aimView_ = aim;
        const bool proved = minimise(aim, std::nullopt);
        for (const Aim other : aimsInOrder) {
            if (other != aim_ && proved && keepGoing()) {
                minimise(rules::addAim(f_, other), polishConflicts);
            }
        }
        return proved;
    }

    /// One search; true if it came to an end, with a plan kept if there is one.
    bool solve(const engine::Goal& goal, std::optional<std::int64_t> budget) {
        const auto left = conflictsLeft(budget);
        outcome_ = left && *left == 0 ? Outcome::Interrupted : search_->solve(goal, left);
        if (outcome_ == Outcome::Solution) {
            keep();
        }
        return outcome_ != Outcome::Interrupted;
    }

    /// Finds plans with ever less of the objective until none is left. True if proved least.
    bool minimise(View objective, std::optional<std::int64_t> budget) {
        if (!f_.engine.propagate()) {
            return settle(true);  // only before there is a plan
        }
        engine::Goal goal{objective, std::nullopt, !budget};
        if (found_) {
            const std::optional<Value> value = valueInBest(objective);
            if (!value) {
                return false;
            }
            best_ = *value;
            goal.atMost = best_ - 1;
        }
        objective_ = objective;
        std::int64_t slice = firstSlice;
        do {
            const auto left = budget ? budget : std::optional(slice);
            if (!solve(goal, left)) {
                if (budget || !mayGoOn()) {
                    return settle(false);
                }
                slice += slice / 2;
                searchAround(objective_ == f_.earliestStart ? slice / 4 : 3 * slice);
            }
            if (found_) {
                goal.atMost = best_ - 1;
            }
        } while (outcome_ != Outcome::Contradiction);
        return settle(true);
    }

    bool mayGoOn() const { return keepGoing() && conflictsLeft(1) != 0; }

    /// Large-neighbourhood search (Shaw, 1998): most of the best plan is held, a stretch of time
    /// and what must follow from it is planned anew; again and again for as many conflicts.
    void searchAround(std::int64_t conflicts) {
        if (!found_ || objective_ == f_.lateness) {
            return;
        }
        const std::int64_t end = search_->conflicts() + conflicts;
        while (search_->conflicts() < end && mayGoOn()) {
            std::vector<Value> starts = search_->preferredStarts();
            std::ranges::sort(starts);
            const auto count = static_cast<std::int64_t>(starts.size());
            const std::int64_t width = random_.between(count / 6, count / 2);
            const std::int64_t first =
                random_.between(0, std::max<std::int64_t>(count - width - 1, 0));
            search_->keepOutside(starts[static_cast<std::size_t>(first)],
                                 starts[static_cast<std::size_t>(first + width)] + 1,
                                 objective_ == f_.earliestStart);
            const std::int64_t before = search_->conflicts();
            solve({objective_, best_ - 1, false}, neighbourhoodConflicts);
            search_->keepNothing();
            if (outcome_ == Outcome::Contradiction) {
                return;  // whatever is held: no better plan is left
            }
            if (search_->conflicts() == before && outcome_ != Outcome::Solution) {
                return;
            }
        }
        outcome_ = Outcome::Interrupted;
    }

    /// Holds the objective at the best found for those that follow.
    bool settle(bool proved) {
        if (!found_) {
            result_.status = proved ? ArrangeStatus::NotPossible : ArrangeStatus::Stopped;
            return false;
        }
        f_.engine.backtrackTo(0);
        if (proved && objective_ == aimView_) {
            aimBound_ = std::max(aimBound_, best_);
        }
        f_.engine.fix({engine::opposite(objective_), -best_});
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
        best_ = f_.engine.low(objective_);
        earliestStart_ = f_.engine.low(f_.earliestStart);
        search_->rememberValues();
        f_.engine.backtrackTo(0);
        report();
    }

    /// What an objective that was added since comes to in the best plan: the plan is found once
    /// more, without a conflict. Nothing if it was stopped before.
    std::optional<Value> valueInBest(View objective) {
        if (objective == f_.earliestStart) {
            return earliestStart_;
        }
        if (objective == f_.lateness) {
            return best_;
        }
        const Outcome outcome =
            search_->solve({objective, std::nullopt, false}, conflictsLeft(std::nullopt));
        if (outcome != Outcome::Solution) {
            f_.engine.backtrackTo(0);
            return std::nullopt;
        }
        const Value value = f_.engine.low(objective);
        result_.placements = readPlacements(f_);
        earliestStart_ = f_.engine.low(f_.earliestStart);
        search_->rememberValues();
        f_.engine.backtrackTo(0);
        return value;
    }

    void report() {
        noteBound(f_.earliestStart, latestBound_);
        if (aimView_) {
            noteBound(*aimView_, aimBound_);
            result_.last.aimBound = aimBound_;
            if (found_ && objective_ == *aimView_) {
                result_.last.aimBest = best_;
            }
        }
        if (found_) {
            result_.last.best = Instant::atSeconds(-earliestStart_);
        }
        result_.last.bound = Instant::atSeconds(-latestBound_);
        result_.last.conflicts = search_->conflicts();
        result_.last.seconds = seconds();
        if (progress_) {
            progress_(result_.last);
        }
    }

    void noteBound(View view, Value& bound) const {
        bound = std::max(bound, f_.engine.low(view));
        if (search_->boundOf() == view) {
            bound = std::max(bound, search_->bound());
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
    Aim aim_;
    Expanded expanded_;
    rules::Formulation f_;
    engine::Search* search_ = nullptr;
    Random random_;
    ArrangeResult result_;
    bool found_ = false;
    Outcome outcome_ = Outcome::Interrupted;
    View objective_ = 0;
    Value best_ = 0;           ///< of the objective
    Value earliestStart_ = 0;  ///< of the best plan
    std::optional<View> aimView_;
    Value aimBound_ = std::numeric_limits<Value>::min();
    Value latestBound_ = std::numeric_limits<Value>::min();
};

}  // namespace

ArrangeResult arrange(const Lesson& lesson, const ArrangeOptions& options,
                      const ArrangeCallback& progress, std::stop_token stop) {
    return Arranger(lesson, options, progress, std::move(stop)).run();
}

}  // namespace rangeline
