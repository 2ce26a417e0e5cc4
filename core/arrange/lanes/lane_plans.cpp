// The plans of a lane: its own and those of the others, and what it tells of them.

#include "arrange/lanes/lane.h"

namespace rangeline::lanes {

void Lane::readPlan() {
    result_.placements = readPlacements(f_);
    earliestStart_ = f_.engine.low(f_.earliestStart);
    search_.rememberValues();
}

/// Takes the solution the engine stands at and goes back to level 0.
void Lane::keep() {
    if (!found_) {
        result_.statistics.secondsToFirst = report_.seconds();
    }
    found_ = true;
    result_.statistics.secondsToBest = report_.seconds();
    best_ = f_.engine.low(objective_);
    readPlan();
    f_.engine.backtrackTo(0);
    tellPlan();
    report();
}

void Lane::tellPlan() {
    if (shares_ && found_) {
        board_.offer(stage_, {best_, earliestStart_, report_.seconds(), result_.placements,
                              search_.preferredValues()});
    }
}

/// What an objective that was added since comes to in the best plan: the plan is found once
/// more, without a conflict. Nothing if it was stopped before.
std::optional<Value> Lane::valueInBest(View objective) {
    if (objective == f_.earliestStart) {
        return earliestStart_;
    }
    if (objective == f_.lateness) {
        return best_;
    }
    const Outcome outcome =
        search_.solve({objective, std::nullopt, false}, conflictsLeft(std::nullopt));
    if (outcome != Outcome::Solution) {
        f_.engine.backtrackTo(0);
        return std::nullopt;
    }
    const Value value = f_.engine.low(objective);
    readPlan();
    f_.engine.backtrackTo(0);
    return value;
}

/// Only at level 0, where bounds hold for all plans.
void Lane::report() {
    const auto boundOf = [this](View view) {
        const Value low = f_.engine.low(view);
        return search_.boundOf() == view ? std::max(low, search_.bound()) : low;
    };
    report_.boundStart(boundOf(f_.earliestStart));
    if (aimView_) {
        report_.boundAim(boundOf(*aimView_));
        if (found_ && objective_ == *aimView_) {
            report_.aimAtBest(best_);
        }
    }
    if (found_) {
        report_.startsAtBest(earliestStart_);
    }
    report_.tell(search_.conflicts());
}

bool Lane::keepGoing() {
    if (!inTime()) {
        return false;
    }
    if (shares_) {
        if (search_.boundOf() == objective_) {
            board_.raise(stage_, search_.bound());
        }
        if (board_.version() != heard_) {
            listen();
        }
    }
    return !news_;
}

/// In the middle of a search: whether it is worth stopping for, and a higher bound.
void Lane::listen() {
    heard_ = board_.version();
    const Board::State state = board_.state(stage_);
    news_ = state.closed || (state.best && (!found_ || *state.best < best_));
    if (aimView_ && objective_ == *aimView_ && state.bound > report_.known().aimBound) {
        report_.boundAim(state.bound);
        if (objective_ == f_.earliestStart) {
            report_.boundStart(state.bound);
        }
        report_.tell(search_.conflicts());
    }
}

void Lane::adopt(const BoardPlan& plan, Value value) {
    if (!found_) {
        result_.statistics.secondsToFirst = plan.seconds;
    }
    found_ = true;
    best_ = value;
    earliestStart_ = plan.earliestStart;
    result_.placements = plan.placements;
    result_.statistics.secondsToBest = plan.seconds;
    search_.prefer(plan.values);
}

/// Between searches: takes over a better plan and a higher bound. True if the stage is closed.
bool Lane::takeNews() {
    news_ = false;
    if (!shares_) {
        return false;
    }
    const Board::State state = board_.state(stage_);
    if (state.best && (!found_ || *state.best < best_)) {
        adopt(*state.plan, *state.best);
        report();
    }
    if (state.closed) {
        return true;
    }
    if (state.bound > f_.engine.low(objective_)) {
        f_.engine.fix({objective_, state.bound});
    }
    return false;
}

}  // namespace rangeline::lanes
