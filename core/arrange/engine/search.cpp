#include "arrange/engine/search.h"

#include <algorithm>
#include <limits>

namespace rangeline::engine {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

constexpr std::int64_t restartUnit = 100;   // conflicts
constexpr std::int64_t latestFirstFor = 3;  // restarts that follow the latest-first order
constexpr double activityDecay = 1 / 0.95;
constexpr double activityLimit = 1e100;

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
    activity_.assign(count, 0);
    heapPosition_.assign(count, -1);
    saved_.resize(count);
    for (std::size_t i = 0; i < choices_.size(); ++i) {
        const int variable = choices_[i].view / 2;
        if (choiceOf_[at(variable)] < 0) {
            choiceOf_[at(variable)] = static_cast<int>(i);
            // A touch of chance, so that seeds differ where activity says nothing.
            activity_[at(variable)] = static_cast<double>(random_.between(0, 999)) * 1e-6;
            heapInsert(variable);
        }
    }
}

std::optional<Literal> Search::remembered(View view) const {
    const std::optional<Value> value = saved_[at(view / 2)];
    if (!value) {
        return std::nullopt;
    }
    const View positive = view & ~1;
    if (*value < engine_.low(positive) || *value > engine_.high(positive)) {
        return std::nullopt;
    }
    return *value > engine_.low(positive) ? Literal{positive, *value}
                                          : Literal{opposite(positive), -*value};
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
    Value latest = std::numeric_limits<Value>::min();
    for (const Literal literal : open) {
        if (open.size() == 1) {
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

std::optional<Literal> Search::latestFirst() {
    const Group* latest = nullptr;
    Value latestTime = std::numeric_limits<Value>::min();
    for (const Group& group : groups_) {
        if (relevant(group.start) && !engine_.fixed(group.start.view) &&
            engine_.high(group.time) > latestTime) {
            latest = &group;
            latestTime = engine_.high(group.time);
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
    while (!heap_.empty()) {
        const int variable = heapPop();
        popped_.emplace_back(engine_.level(), variable);
        const Choice& choice = choices_[at(choiceOf_[at(variable)])];
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
    refillHeap();
    for (const int variable : touched_) {
        bump(variable);
    }
    bumpBy_ *= activityDecay;
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
    refillHeap();
}

/// Puts back the variables that may be open again at the level now reached.
void Search::refillHeap() {
    while (!popped_.empty() && popped_.back().first >= engine_.level()) {
        heapInsert(popped_.back().second);
        popped_.pop_back();
    }
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
    refillHeap();
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

void Search::rememberValues() {
    found_ = true;
    for (const Choice& choice : choices_) {
        const View positive = choice.view & ~1;
        if (relevant(choice)) {
            saved_[at(choice.view / 2)] = engine_.low(positive);
        }
    }
}

void Search::suggest(View view, Value value) {
    found_ = suggested_ = true;
    saved_[at(view / 2)] = view % 2 == 0 ? value : -value;
}

std::vector<Literal> Search::outside(Value from, Value to, std::optional<Value> later) const {
    std::vector<Literal> kept;
    for (const Group& group : groups_) {
        const View start = group.start.view & ~1;
        const std::optional<Value> saved = saved_[at(start / 2)];
        if (!saved || (from <= *saved && *saved < to)) {
            continue;
        }
        for (const std::vector<Literal>& set : group.sets) {
            for (const Literal literal : set) {
                if (saved_[at(literal.view / 2)] == 1 && literal.view % 2 == 0) {
                    kept.push_back(literal);
                }
            }
        }
        kept.push_back({start, *saved});
        kept.push_back({opposite(start), -*saved - (*saved < from ? later.value_or(0) : 0)});
    }
    std::erase_if(kept, [this](Literal l) { return engine_.isFalse(l); });
    return kept;
}

void Search::prefer(const std::vector<std::optional<Value>>& values) {
    found_ = true;
    std::copy_n(values.begin(), std::min(values.size(), saved_.size()), saved_.begin());
}

std::vector<Value> Search::preferredStarts() const {
    std::vector<Value> starts;
    for (const Group& group : groups_) {
        if (const auto saved = saved_[at((group.start.view & ~1) / 2)]) {
            starts.push_back(*saved);
        }
    }
    return starts;
}

void Search::forgetValues() {
    found_ = suggested_ = false;
    std::ranges::fill(saved_, std::nullopt);
}

/// Variables made since the last search follow from others; nothing is chosen about them.
void Search::knowNewVariables() {
    const std::size_t count = engine_.variables();
    choiceOf_.resize(count, -1);
    activity_.resize(count, 0);
    heapPosition_.resize(count, -1);
    saved_.resize(count);
}

// ---- activity -------------------------------------------------------------------------------

void Search::bump(int variable) {
    activity_[at(variable)] += bumpBy_;
    if (activity_[at(variable)] > activityLimit) {
        for (double& activity : activity_) {
            activity /= activityLimit;
        }
        bumpBy_ /= activityLimit;
    }
    if (choiceOf_[at(variable)] < 0) {
        return;
    }
    heapInsert(variable);
    heapUp(at(heapPosition_[at(variable)]));
}

void Search::heapUp(std::size_t position) {
    const int variable = heap_[position];
    while (position > 0) {
        const std::size_t parent = (position - 1) / 2;
        if (activity_[at(heap_[parent])] >= activity_[at(variable)]) {
            break;
        }
        heap_[position] = heap_[parent];
        heapPosition_[at(heap_[position])] = static_cast<int>(position);
        position = parent;
    }
    heap_[position] = variable;
    heapPosition_[at(variable)] = static_cast<int>(position);
}

void Search::heapDown(std::size_t position) {
    const int variable = heap_[position];
    while (2 * position + 1 < heap_.size()) {
        std::size_t child = 2 * position + 1;
        if (child + 1 < heap_.size() &&
            activity_[at(heap_[child + 1])] > activity_[at(heap_[child])]) {
            ++child;
        }
        if (activity_[at(heap_[child])] <= activity_[at(variable)]) {
            break;
        }
        heap_[position] = heap_[child];
        heapPosition_[at(heap_[position])] = static_cast<int>(position);
        position = child;
    }
    heap_[position] = variable;
    heapPosition_[at(variable)] = static_cast<int>(position);
}

void Search::heapInsert(int variable) {
    if (heapPosition_[at(variable)] < 0) {
        heap_.push_back(variable);
        heapUp(heap_.size() - 1);
    }
}

int Search::heapPop() {
    const int top = heap_.front();
    heapPosition_[at(top)] = -1;
    const int last = heap_.back();
    heap_.pop_back();
    if (!heap_.empty()) {
        heap_.front() = last;
        heapDown(0);
    }
    return top;
}

}  // namespace rangeline::engine
