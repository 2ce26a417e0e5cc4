#include "arrange/engine/search.h"

#include <algorithm>
#include <limits>

namespace rangeline::engine {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

constexpr std::int64_t restartUnit = 100;   // conflicts
constexpr Value littleRoom = 4;             // of what it was at first, a part
constexpr std::int64_t latestFirstFor = 3;  // restarts that follow the latest-first order

/// The i-th (from 1) element of 1 1 2 1 1 2 4 1 1 2 ... (Luby, Sinclair and Zuckerman, 1993).
std::int64_t luby(std::int64_t i) {
    std::int64_t size = 1;
    while (size < i + 1) {
        size = 2 * size;
    }
    while (size - 1 != i) {
        size /= 2;
        if (i >= size) {
            i -= size - 1;
        }
    }
    return size / 2;
}

}  // namespace

Search::Search(Engine& engine, std::vector<Group> groups, std::vector<Choice> rest,
               std::uint64_t seed, std::function<bool()> keepGoing)
    : engine_(engine),
      groups_(std::move(groups)),
      choices_(std::move(rest)),
      random_(seed),
      keepGoing_(std::move(keepGoing)) {
    for (const Group& group : groups_) {
        choices_.push_back(group.start);
    }
    const std::size_t count = engine.variables();
    choiceOf_.assign(count, -1);
    order_.grow(count);
    saved_.resize(count);
    for (std::size_t i = 0; i < choices_.size(); ++i) {
        const int variable = choices_[i].view / 2;
        if (choiceOf_[at(variable)] < 0) {
            choiceOf_[at(variable)] = static_cast<int>(i);
            // A touch of chance, so that seeds differ where activity says nothing.
            order_.add(variable, static_cast<double>(random_.between(0, 999)) * 1e-6);
        }
    }
}

/// Null if the choice is already made or does not matter.
std::optional<Literal> Search::decisionFor(const Choice& choice) const {
    if (engine_.fixed(choice.view) || !relevant(choice)) {
        return std::nullopt;
    }
    const View view = choice.high ? choice.view : opposite(choice.view);
    return Literal{view, engine_.high(view)};
}

/// Tries each of the open literals and names the one after which the group can start latest.
std::optional<Literal> Search::leavesLatest(const Group& group, const std::vector<Literal>& open) {
    Literal best = open.front();
    const Value latestPossible = engine_.high(group.start.view);
    Value latest = std::numeric_limits<Value>::min();
    for (const Literal literal : open) {
        if (open.size() == 1 || latest == latestPossible) {
            break;
        }
        const int level = engine_.level();
        engine_.decide(literal);
        const bool fits = engine_.propagate();
        const Value start = engine_.high(group.start.view);
        engine_.backtrackTo(level);
        if (fits && start > latest) {
            latest = start;
            best = literal;
        }
    }
    return best;
}

std::optional<Literal> Search::bestOfSets(const Group& group) {
    std::vector<Literal> open;
    for (const std::vector<Literal>& set : group.sets) {
        open.clear();
        bool made = false;
        for (const Literal literal : set) {
            made = made || engine_.isTrue(literal);
            if (!engine_.isTrue(literal) && !engine_.isFalse(literal)) {
                open.push_back(literal);
            }
        }
        if (!made && !open.empty()) {
            return leavesLatest(group, open);
        }
    }
    return std::nullopt;
}

/// Else its place might go to others: something is held up until what stands already, or what
/// stands already has left it little room. Not asking, and two ways of judging the room, take turns
/// from restart to restart, since each leads to a plan where the others do not.
bool Search::isUrgent(std::size_t group) const {
    const auto turn = restarts_ % 3;
    if (turn == 0) {
        return false;
    }
    const Group& here = groups_[group];
    const auto [first, last] = roomAtFirst_[group];
    const Value low = engine_.low(here.time);
    const bool hasLittle =
        turn == 1 ? littleRoom * (engine_.high(here.time) - low) <= last - first : low > first;
    return hasLittle ||
           std::ranges::any_of(here.heldUntil, [this](View view) { return engine_.fixed(view); });
}

/// What is urgent comes before what is not; of either, the latest.
std::optional<Literal> Search::latestFirst() {
    const Group* latest = nullptr;
    std::pair<bool, Value> latestRank;
    for (std::size_t i = 0; i < groups_.size(); ++i) {
        const Group& group = groups_[i];
        if (!relevant(group.start) || engine_.fixed(group.start.view)) {
            continue;
        }
        const std::pair rank(isUrgent(i), engine_.high(group.time));
        if (latest == nullptr || rank > latestRank) {
            latest = &group;
            latestRank = rank;
        }
    }
    if (latest == nullptr) {
        return std::nullopt;
    }
    const auto choice = bestOfSets(*latest);
    return choice ? choice : decisionFor(latest->start);
}

/// The latest-first order at first, and now and then as long as there is no plan.
bool Search::followsOrder() const {
    return (restarts_ < latestFirstFor && !suggested_) || (!found_ && restarts_ % 2 == 0);
}

std::optional<Literal> Search::mostActive() {
    while (const auto variable = order_.take(engine_.level())) {
        const Choice& choice = choices_[at(choiceOf_[at(*variable)])];
        if (const auto decision = decisionFor(choice)) {
            const auto saved = remembered(choice.view);
            return saved ? saved : decision;
        }
    }
    return std::nullopt;
}

std::optional<Literal> Search::nextDecision() {
    if (followsOrder()) {
        if (const auto decision = latestFirst()) {
            return decision;
        }
    } else if (const auto decision = mostActive()) {
        return decision;
    }
    for (const Choice& choice : choices_) {
        if (const auto decision = decisionFor(choice)) {
            return decision;
        }
    }
    return std::nullopt;
}

bool Search::handleConflict() {
    ++conflicts_;
    --untilRestart_;
    touched_.clear();
    if (!engine_.learn(touched_)) {
        return false;
    }
    order_.putBack(engine_.level());
    for (const int variable : touched_) {
        order_.bump(variable);
    }
    order_.decay();
    return true;
}

void Search::restart() {
    engine_.backtrackTo(0);
    ++restarts_;
    halving_ = false;
    raiseBy_ = 0;
    raisedTo_ = std::numeric_limits<Value>::max();
    untilRestart_ = restartUnit * luby(restarts_);
    if (engine_.learnedClauses() > learnedLimit_) {
        engine_.forget();
        learnedLimit_ += learnedLimit_ / 10;
    }
    order_.putBack(engine_.level());
}

/// The decisions that come before all others: the goal's limit, then its least value.
std::optional<Literal> Search::goalDecision(const Goal& goal) {
    const View less = opposite(goal.objective);
    if (engine_.level() == 0 && goal.atMost && engine_.high(goal.objective) > *goal.atMost) {
        return Literal{less, -*goal.atMost};
    }
    const bool first = engine_.level() <= (goal.atMost ? 1 : 0);
    if (!first || !goal.raiseBound || engine_.fixed(goal.objective)) {
        return std::nullopt;
    }
    // Also with the limit decided: beyond the limit nothing is below the limit.
    const Value low = engine_.low(goal.objective);
    bound_ = std::max(bound_, low);
    // Without a plan half of those restarts are left free, to find one.
    if (restarts_ % raiseEvery_ == raiseEvery_ - 1 && (found_ || restarts_ % 4 != 3)) {
        // Each refutation doubles the step, so that a bound far off is soon reached.
        raiseBy_ = low > raisedTo_ ? 2 * raiseBy_ + engine_.stepOf(goal.objective) : 0;
        raisedTo_ = std::min(low + raiseBy_, engine_.high(goal.objective));
        return Literal{less, -raisedTo_};
    }
    if (halving_) {
        return Literal{less, -(low + (engine_.high(goal.objective) - low) / 2)};
    }
    return std::nullopt;
}

Outcome Search::solve(const Goal& goal, std::optional<std::int64_t> conflictLimit) {
    knowNewVariables();
    knowRoom();
    order_.putBack(engine_.level());
    const std::int64_t stopAt =
        conflictLimit ? conflicts_ + *conflictLimit : std::numeric_limits<std::int64_t>::max();
    untilRestart_ = restartUnit * luby(restarts_ + 1);
    halving_ = goal.atMost.has_value();
    core_.clear();
    if (boundOf_ != goal.objective) {
        boundOf_ = goal.objective;
        bound_ = std::numeric_limits<Value>::min();
    }
    while (true) {
        if (!engine_.propagate() || !underAssumptions(goal) || !engine_.propagate()) {
            if (refutesAssumptions(goal) || !handleConflict()) {
                return Outcome::Contradiction;
            }
            if (conflicts_ >= stopAt || (conflicts_ % 32 == 0 && !keepGoing_())) {
                engine_.backtrackTo(0);
                return Outcome::Interrupted;
            }
            if (untilRestart_ <= 0) {
                restart();
            }
            continue;
        }
        if (goal.atMost && engine_.low(goal.objective) > *goal.atMost) {
            engine_.backtrackTo(0);
            return Outcome::Contradiction;
        }
        auto decision = goalDecision(goal);
        if (!decision) {
            decision = nextDecision();
        }
        if (!decision) {
            return Outcome::Solution;
        }
        if (++decisions_ % 256 == 0 && !keepGoing_()) {
            engine_.backtrackTo(0);
            return Outcome::Interrupted;
        }
        engine_.decide(*decision);
    }
}

void Search::knowRoom() {
    for (std::size_t i = roomAtFirst_.size(); i < groups_.size(); ++i) {
        roomAtFirst_.emplace_back(engine_.low(groups_[i].time), engine_.high(groups_[i].time));
    }
}

/// Variables made since the last search follow from others; nothing is chosen about them.
void Search::knowNewVariables() {
    const std::size_t count = engine_.variables();
    choiceOf_.resize(count, -1);
    order_.grow(count);
    saved_.resize(count);
}

}  // namespace rangeline::engine
