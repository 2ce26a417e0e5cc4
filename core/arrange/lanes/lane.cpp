#include "arrange/lanes/lane.h"

#include <algorithm>
#include <array>
#include <limits>
#include <vector>

#include "arrange/lanes/dispatch.h"

namespace rangeline::lanes {
namespace {

/// Conflicts spent on each aim that only breaks ties.
constexpr std::int64_t polishConflicts = 2000;
/// Conflicts within which the old placements must lead to a plan; else they are
/// forgotten.
constexpr std::int64_t hintConflicts = 300;

/// Conflicts of the first search for a better plan, before the neighbourhood of
/// the best one is searched for four times as many; then half as much again each
/// time.
constexpr std::int64_t firstSlice = 1000;
/// The same once cooking has begun, when there is little time and the plan at
/// hand is a good one.
constexpr std::int64_t firstSliceUnderway = 100;
constexpr std::int64_t neighbourhoodConflicts = 150;
constexpr std::int64_t neighbourhoodConflictsUnderway = 60;

/// Counted for a neighbourhood even if it is done with at once.
constexpr std::int64_t leastSpent = 10;
/// Steps in a stretch that is planned anew.
constexpr std::int64_t narrowest = 8;
constexpr std::int64_t widest = 50;
/// Seconds by which steps before the stretch may move later, so that the whole begins later: they
/// all move a little, or whatever they like.
constexpr std::array<Value, 4> laterBy{120, 300, 900, 100'000};

/// Of the limits, for the least lateness; the rest is left for the least
/// movement.
constexpr double latenessShare = 0.5;

/// Conflicts within which going through the plan once must come to its end.
constexpr std::int64_t dispatchConflicts = 300;

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
      f_(lesson, expanded_, rules::Requirements::Held,
         options.underway ? &*options.underway : nullptr),
      search_(f_.engine, f_.groups, f_.choices, options.seed + (kind == LaneKind::Raises ? 1 : 0),
              [this] { return keepGoing(); }),
      random_(options.seed) {
    search_.raiseAtEachRestart(kind == LaneKind::Raises);
    if (!f_.hasAllWays) {
        report_.tellNoBound();
    }
}

ArrangeResult Lane::run() {
    if (!f_.possible || !f_.engine.propagate()) {
        result_.status = ArrangeStatus::NotPossible;
        return finish();
    }
    const bool proved = findPlan() && (options_.underway || approach());
    if (found_) {
        result_.status = proved ? ArrangeStatus::Proved : ArrangeStatus::Found;
    }
    return finish();
}

bool Lane::inTime() const {
    return !stop_.stop_requested() &&
           !(options_.secondsLimit && report_.seconds() > share_ * *options_.secondsLimit);
}

std::optional<std::int64_t> Lane::conflictsLeft(std::optional<std::int64_t> budget) const {
    if (!options_.conflictLimit) {
        return budget;
    }
    const auto limit =
        static_cast<std::int64_t>(share_ * static_cast<double>(*options_.conflictLimit));
    const auto left = std::max<std::int64_t>(limit - search_.conflicts(), 0);
    return std::min(left, budget.value_or(left));
}

void Lane::suggest(const rules::Previous& plan) {
    for (const auto& start : plan.starts) {
        search_.suggest(start.view, start.value);
        search_.suggest(start.presence.view, 1);
    }
    for (const engine::Literal chosen : plan.chosen) {
        search_.suggest(chosen.view, 1);
    }
}

/// The least lateness, beginning where the lesson's placements stand; then,
/// where asked for, the least movement. True if proved least.
bool Lane::findPlan() {
    const rules::Previous previous = rules::previousPlan(f_, f_.lesson.placements);
    const rules::Previous first =
        options_.beginWith ? rules::previousPlan(f_, *options_.beginWith) : previous;
    objective_ = f_.lateness;
    suggest(first);
    if (options_.underway) {
        dispatch(first);
    }
    // Once cooking has begun the plan is still the best guess there is.
    if (!first.starts.empty() && !solve({f_.lateness}, hintConflicts) && !options_.underway) {
        search_.forgetValues();
    }
    const bool close = options_.stayClose || options_.underway;
    share_ = options_.underway ? latenessShare : 1;
    const bool leastLate = minimise(f_.lateness, std::nullopt);
    share_ = 1;
    if (!found_ || (!leastLate && !options_.underway)) {
        return false;
    }
    return !close || previous.starts.empty() || (stayClose(previous) && leastLate);
}

/// Prefers what a cook would make of the plan.
void Lane::dispatch(const rules::Previous& previous) {
    Dispatch(f_, previous, [this] { return inTime(); }).run(dispatchConflicts);
    search_.rememberValues();
    f_.engine.backtrackTo(0);
}

/// True if the movement is proved least.
bool Lane::stayClose(const rules::Previous& previous) {
    const View moved = rules::addMovement(f_, previous);
    const std::optional<Value> best =
        options_.underway && f_.engine.propagate() ? valueInBest(moved) : std::nullopt;
    if (best) {
        // Less may move when it is done over, now that the lateness is settled.
        const auto values = search_.preferredValues();
        best_ = *best;
        objective_ = moved;
        dispatch(previous);
        solve({moved, best_ - 1, false}, hintConflicts);
        if (best_ == *best) {
            search_.prefer(values);
        }
    }
    return minimise(moved, std::nullopt);
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

/// Finds plans with ever less of the objective until none is left. True if
/// proved least.
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
    std::int64_t slice = options_.underway ? firstSliceUnderway : firstSlice;
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
                searchAround(4 * slice);
            }
        }
        if (outcome_ == Outcome::Contradiction) {
            return true;
        }
    }
}

/// Most of the best plan is held; a stretch of time and what must follow from
/// it is open.
std::vector<engine::Literal> Lane::allButAStretch() {
    std::vector<Value> starts = search_.preferredStarts();
    if (options_.underway) {
        const Value now = rules::toValue(options_.underway->now);
        std::erase_if(starts, [now](Value start) { return start < now; });
    }
    if (starts.empty()) {
        return {};
    }
    std::ranges::sort(starts);
    const auto count = static_cast<std::int64_t>(starts.size());
    const std::int64_t width =
        random_.between(std::min(narrowest, count / 2), std::min(widest, 2 * count / 3));
    const std::int64_t first = random_.between(0, std::max<std::int64_t>(count - width - 1, 0));
    // What comes after is what is late.
    const bool toTheEnd = objective_ == f_.lateness;
    std::vector<engine::Literal> held = search_.outside(
        starts[static_cast<std::size_t>(first)],
        toTheEnd ? std::numeric_limits<Value>::max()
                 : starts[static_cast<std::size_t>(first + width)] + 1,
        objective_ == f_.earliestStart
            ? std::optional(laterBy[static_cast<std::size_t>(random_.between(0, 3))])
            : std::nullopt);
    held.push_back({engine::opposite(objective_), 1 - best_});
    return held;
}

/// Whether no better plan is left, whatever is held.
bool Lane::needsNothingHeld() const {
    const engine::View better = engine::opposite(objective_);
    return std::ranges::all_of(search_.core(),
                               [better](engine::Literal l) { return l.view == better; });
}

/// Large-neighbourhood search (Shaw, 1998): such stretches are planned anew,
/// again and again, for as many conflicts.
void Lane::searchAround(std::int64_t conflicts) {
    if (!found_ || (objective_ == f_.lateness && !options_.underway)) {
        return;
    }
    const std::int64_t each =
        options_.underway ? neighbourhoodConflictsUnderway : neighbourhoodConflicts;
    for (std::int64_t spent = 0; spent < conflicts && mayGoOn();) {
        const std::vector<engine::Literal> held = allButAStretch();
        if (held.empty()) {
            break;
        }
        const std::int64_t before = search_.conflicts();
        solve({objective_, std::nullopt, false, held}, each);
        if (outcome_ == Outcome::Contradiction && needsNothingHeld()) {
            return;
        }
        spent += std::max(search_.conflicts() - before, leastSpent);
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
    if (!f_.hasAllWays) {
        ArrangeStatus& status = result_.status;
        status = status == ArrangeStatus::Proved        ? ArrangeStatus::Found
                 : status == ArrangeStatus::NotPossible ? ArrangeStatus::Stopped
                                                        : status;
    }
    result_.last = report_.known();
    result_.statistics.conflicts = search_.conflicts();
    result_.statistics.decisions = search_.decisions();
    result_.statistics.restarts = search_.restarts();
    result_.statistics.seconds = report_.seconds();
    return std::move(result_);
}

}  // namespace rangeline::lanes
