#include "arrange/lanes/lane.h"

#include <algorithm>
#include <array>
#include <vector>

namespace rangeline::lanes {
namespace {

/// Conflicts spent on each aim that only breaks ties.
constexpr std::int64_t polishConflicts = 2000;
/// Conflicts within which the old placements must lead to a plan; else they are forgotten.
constexpr std::int64_t hintConflicts = 300;

/// Conflicts of the first search for a better plan, before the neighbourhood of the best one is
/// searched for a quarter as many; then half as much again each time.
constexpr std::int64_t firstSlice = 1000;
constexpr std::int64_t neighbourhoodConflicts = 150;

constexpr std::array aimsInOrder{Aim::StartLate, Aim::Fresh, Aim::Calm, Aim::FewPans};

}  // namespace

Lane::Lane(const Lesson& lesson, const ArrangeOptions& options, LaneKind kind, Board& board,
           const ArrangeCallback& progress, std::stop_token stop)
    : options_(options),
      kind_(kind),
      board_(board),
      stop_(std::move(stop)),
      report_(progress, std::chrono::steady_clock::now()),
      aim_(options.aim.value_or(lesson.head.aim)),
      expanded_(expand(lesson)),
      f_(lesson, expanded_),
      search_(f_.engine, f_.groups, f_.choices, options.seed + (kind == LaneKind::Raises ? 1 : 0),
              [this] { return keepGoing(); }),
      random_(options.seed) {
    search_.raiseAtEachRestart(kind == LaneKind::Raises);
}

ArrangeResult Lane::run() {
    if (!f_.possible || !f_.engine.propagate()) {
        result_.status = ArrangeStatus::NotPossible;
        return finish();
    }
    const bool proved = findPlan() && approach();
    if (found_) {
        result_.status = proved ? ArrangeStatus::Proved : ArrangeStatus::Found;
    }
    return finish();
}

bool Lane::inTime() const {
    return !stop_.stop_requested() &&
           !(options_.secondsLimit && report_.seconds() > *options_.secondsLimit);
}

std::optional<std::int64_t> Lane::conflictsLeft(std::optional<std::int64_t> budget) const {
    if (!options_.conflictLimit) {
        return budget;
    }
    const auto left = std::max<std::int64_t>(*options_.conflictLimit - search_.conflicts(), 0);
    return std::min(left, budget.value_or(left));
}

/// The least lateness, beginning where the lesson's placements stand; then, where asked for, the
/// least movement. True if proved least.
bool Lane::findPlan() {
    const rules::Previous previous = rules::previousPlan(f_);
    objective_ = f_.lateness;
    for (const auto& hints : {previous.starts, previous.hints}) {
        for (const auto& hint : hints) {
            search_.suggest(hint.view, hint.value);
        }
    }
    for (const engine::Literal chosen : previous.chosen) {
        search_.suggest(chosen.view, 1);
    }
    if (!previous.starts.empty() && !solve({f_.lateness}, hintConflicts)) {
        search_.forgetValues();
    }
    if (!minimise(f_.lateness, std::nullopt)) {
        return false;
    }
    return !options_.stayClose || previous.starts.empty() ||
           minimise(rules::addMovement(f_, previous), std::nullopt);
}

/// The aim, and the others to break its ties. True if the aim is proved.
bool Lane::approach() {
    const View aim = rules::addAim(f_, aim_);
    report_.aimIs(aim_);
    aimView_ = aim;
    const bool proved = minimise(aim, std::nullopt);
    if (kind_ == LaneKind::Raises || !proved) {
        return proved;
    }
    for (const Aim other : aimsInOrder) {
        if (other != aim_ && keepGoing()) {
            minimise(rules::addAim(f_, other), polishConflicts);
        }
    }
    return proved;
}

/// One search; true if it came to an end, with a plan kept if there is one.
bool Lane::solve(const engine::Goal& goal, std::optional<std::int64_t> budget) {
    const auto left = conflictsLeft(budget);
    outcome_ = left && *left == 0 ? Outcome::Interrupted : search_.solve(goal, left);
    if (outcome_ == Outcome::Solution) {
        keep();
    }
    return outcome_ != Outcome::Interrupted;
}

/// Finds plans with ever less of the objective until none is left. True if proved least.
bool Lane::minimise(View objective, std::optional<std::int64_t> budget) {
    if (!f_.engine.propagate()) {
        return settle(true);  // only before there is a plan
    }
    if (found_) {
        const std::optional<Value> value = valueInBest(objective);
        if (!value) {
            return false;
        }
        best_ = *value;
    }
    objective_ = objective;
    shares_ = !budget;
    tellPlan();
    return settle(searchOn({objective, std::nullopt, !budget}, budget));
}

/// True if it is proved that there is no better plan.
bool Lane::searchOn(const engine::Goal& goal, std::optional<std::int64_t> budget) {
    engine::Goal better = goal;
    std::int64_t slice = firstSlice;
    while (true) {
        if (takeNews()) {
            return true;
        }
        if (found_) {
            better.atMost = best_ - 1;
        }
        if (!solve(better, budget ? budget : std::optional(slice)) && !news_) {
            if (budget || !mayGoOn()) {
                return takeNews();
            }
            slice += slice / 2;
            if (kind_ == LaneKind::Lowers) {
                searchAround(objective_ == f_.earliestStart ? slice / 4 : 3 * slice);
            }
        }
        if (outcome_ == Outcome::Contradiction) {
            return true;
        }
    }
}

/// Most of the best plan is held; a stretch of time and what must follow from it is open.
void Lane::holdAllButAStretch() {
    std::vector<Value> starts = search_.preferredStarts();
    std::ranges::sort(starts);
    const auto count = static_cast<std::int64_t>(starts.size());
    const std::int64_t width = random_.between(count / 6, count / 2);
    const std::int64_t first = random_.between(0, std::max<std::int64_t>(count - width - 1, 0));
    search_.keepOutside(starts[static_cast<std::size_t>(first)],
                        starts[static_cast<std::size_t>(first + width)] + 1,
                        objective_ == f_.earliestStart);
}

/// Large-neighbourhood search (Shaw, 1998): such stretches are planned anew, again and again, for
/// as many conflicts.
void Lane::searchAround(std::int64_t conflicts) {
    if (!found_ || objective_ == f_.lateness) {
        return;
    }
    const std::int64_t end = search_.conflicts() + conflicts;
    while (search_.conflicts() < end && mayGoOn()) {
        holdAllButAStretch();
        const std::int64_t before = search_.conflicts();
        solve({objective_, best_ - 1, false}, neighbourhoodConflicts);
        search_.keepNothing();
        if (outcome_ == Outcome::Contradiction) {
            return;  // whatever is held: no better plan is left
        }
        if (search_.conflicts() == before && outcome_ != Outcome::Solution) {
            return;
        }
    }
    outcome_ = Outcome::Interrupted;
}

/// Holds the objective at the best found for those that follow.
bool Lane::settle(bool proved) {
    if (shares_ && proved) {
        board_.close(stage_, found_ ? std::optional(best_) : std::nullopt);
    }
    stage_ += shares_ ? 1 : 0;
    shares_ = false;
    if (!found_) {
        result_.status = proved ? ArrangeStatus::NotPossible : ArrangeStatus::Stopped;
        return false;
    }
    f_.engine.backtrackTo(0);
    if (proved && objective_ == aimView_) {
        report_.boundAim(best_);
    }
    f_.engine.fix({engine::opposite(objective_), -best_});
    report();
    return proved;
}

ArrangeResult Lane::finish() {
    result_.last = report_.known();
    result_.statistics.conflicts = search_.conflicts();
    result_.statistics.decisions = search_.decisions();
    result_.statistics.restarts = search_.restarts();
    result_.statistics.seconds = report_.seconds();
    return std::move(result_);
}

}  // namespace rangeline::lanes
