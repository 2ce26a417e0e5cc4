#include "arrange/engine/engine.h"

#include <algorithm>
#include <cassert>

namespace rangeline::engine {
namespace {

std::size_t at(std::int32_t index) {
    return static_cast<std::size_t>(index);
}

}  // namespace

Engine::Engine() {
    trueView_ = newVariable(0, 1);
    fix(trueLiteral());
}

View Engine::newVariable(Value low, Value high, Value step) {
    const auto view = static_cast<View>(low_.size());
    low_.push_back(0);
    low_.push_back(0);
    step_.push_back(step);
    low_[at(view)] = rounded({view, low}).bound;
    low_[at(opposite(view))] = rounded({opposite(view), -high}).bound;
    assert(this->low(view) <= this->high(view));
    lastEntry_.resize(low_.size(), -1);
    clauses_.grow(low_.size());
    arcsFrom_.resize(low_.size());
    conditionWatches_.resize(low_.size());
    propagatorsOf_.resize(low_.size());
    partsOf_.resize(low_.size());
    return view;
}

Literal Engine::newBoolean() {
    return {newVariable(0, 1), 1};
}

Literal Engine::rounded(Literal l) const {
    const Value step = stepOf(l.view);
    if (step == 1) {
        return l;
    }
    const Value over = ((l.bound % step) + step) % step;
    return {l.view, over == 0 ? l.bound : l.bound + step - over};
}

Literal Engine::negated(Literal l) const {
    return {opposite(l.view), stepOf(l.view) - rounded(l).bound};
}

bool Engine::addClause(std::vector<Literal> literals) {
    assert(level() == 0);
    for (Literal& literal : literals) {
        literal = rounded(literal);
    }
    std::erase_if(literals, [this](Literal l) { return isFalse(l); });
    if (std::ranges::any_of(literals, [this](Literal l) { return isTrue(l); })) {
        return true;
    }
    std::ranges::sort(literals);
    const auto repeated = std::ranges::unique(literals);
    literals.erase(repeated.begin(), repeated.end());
    if (literals.empty()) {
        return conflict({});
    }
    if (literals.size() == 1) {
        return fix(literals.front());
    }
    const std::uint32_t clause = clauses_.add(literals, false, 0);
    clauses_.watch(negated(literals[0]), clause, literals[1]);
    clauses_.watch(negated(literals[1]), clause, literals[0]);
    return true;
}

void Engine::addDifference(View from, Value offset, View to, Literal condition) {
    assert(level() == 0);
    for (const Arc& arc :
         {Arc{from, to, offset, condition}, Arc{opposite(to), opposite(from), offset, condition}}) {
        const auto index = static_cast<std::uint32_t>(arcs_.size());
        arcs_.push_back(arc);
        arcsFrom_[at(arc.from)].push_back(index);
        conditionWatches_[at(condition.view)].push_back({condition.bound, index});
    }
    // The bounds so far must take effect too: as if both ends had just moved.
    for (const std::size_t back : {std::size_t{2}, std::size_t{1}}) {
        if (conflict_.empty()) {
            propagateArc(static_cast<std::uint32_t>(arcs_.size() - back));
        }
    }
}

void Engine::addPropagator(std::unique_ptr<Propagator> propagator, std::span<const View> watched) {
    const auto index = static_cast<std::uint32_t>(propagators_.size());
    propagators_.push_back(std::move(propagator));
    for (const View view : watched) {
        watch(view, index);
    }
    isScheduled_.push_back(false);
    schedulePropagator(index);
}

void Engine::addPropagator(std::unique_ptr<Propagator> propagator,
                           std::span<const Watched> watched) {
    addPropagator(std::move(propagator), std::span<const View>());
    const auto index = static_cast<std::uint32_t>(propagators_.size() - 1);
    for (const Watched& each : watched) {
        watch(each.view, index);
        partsOf_[at(each.view)].push_back({index, each.part});
    }
}

void Engine::watch(View view, std::uint32_t propagator) {
    auto& list = propagatorsOf_[at(view)];
    if (list.empty() || list.back() != propagator) {
        list.push_back(propagator);
    }
}

void Engine::tellParts(View view) {
    for (const PartWatch& watch : partsOf_[at(view)]) {
        propagators_[watch.propagator]->moved(watch.part);
    }
}

Reason Engine::list(std::span<const Literal> because) {
    const Reason reason{Reason::Kind::Listed, static_cast<std::uint32_t>(explanations_.size()),
                        static_cast<std::uint32_t>(because.size())};
    explanations_.insert(explanations_.end(), because.begin(), because.end());
    return reason;
}

bool Engine::conflict(std::span<const Literal> because) {
    conflict_.assign(because.begin(), because.end());
    if (conflict_.empty()) {
        conflict_.push_back(trueLiteral());  // contradictory by itself
    }
    return false;
}

bool Engine::enqueueBecause(Literal literal, std::span<const Literal> because) {
    literal = rounded(literal);
    return isTrue(literal) || enqueue(literal, list(because));
}

bool Engine::enqueue(Literal literal, Reason reason) {
    literal = rounded(literal);
    if (isTrue(literal)) {
        return true;
    }
    if (isFalse(literal)) {
        scratch_.clear();
        antecedents(literal, reason, scratch_);
        scratch_.push_back(negated(literal));
        return conflict(scratch_);
    }
    const std::size_t view = at(literal.view);
    trail_.push_back({literal.view, literal.bound, low_[view], lastEntry_[view], level(), reason});
    lastEntry_[view] = static_cast<std::int32_t>(trail_.size() - 1);
    low_[view] = literal.bound;
    return true;
}

void Engine::decide(Literal literal) {
    levelStarts_.push_back(trail_.size());
    levelExplanations_.push_back(explanations_.size());
    assert(!isTrue(rounded(literal)) && !isFalse(literal));
    enqueue(literal, Reason{});
}

void Engine::backtrackTo(int target) {
    if (level() <= target) {
        return;
    }
    conflict_.clear();
    const std::size_t keep = levelStarts_[at(target)];
    while (trail_.size() > keep) {
        const TrailEntry& entry = trail_.back();
        low_[at(entry.view)] = entry.previousBound;
        lastEntry_[at(entry.view)] = entry.previousEntry;
        tellParts(entry.view);
        trail_.pop_back();
    }
    explanations_.resize(levelExplanations_[at(target)]);
    levelStarts_.resize(at(target));
    levelExplanations_.resize(at(target));
    queueHead_ = std::min(queueHead_, trail_.size());
}

// ---- propagation ----------------------------------------------------------------------------

bool Engine::propagate() {
    if (!conflict_.empty()) {
        return false;
    }
    while (true) {
        while (queueHead_ < trail_.size()) {
            const TrailEntry entry = trail_[queueHead_++];
            if (!propagateClauses(entry) || !propagateArcs(entry.view) ||
                !propagateConditions(entry)) {
                clearQueues();
                return false;
            }
            schedule(entry.view);
        }
        const auto next = nextScheduled();
        if (!next) {
            return true;
        }
        if (!propagators_[*next]->propagate(*this)) {
            clearQueues();
            return false;
        }
    }
}

void Engine::clearQueues() {
    // Only conflicts above level 0 are survived, and then everything below was at rest.
    while (nextScheduled()) {
    }
    queueHead_ = trail_.size();
}

std::optional<std::uint32_t> Engine::nextScheduled() {
    auto& list = scheduled_.empty() ? scheduledLast_ : scheduled_;
    if (list.empty()) {
        return std::nullopt;
    }
    const std::uint32_t next = list.back();
    list.pop_back();
    isScheduled_[next] = false;
    return next;
}

void Engine::schedulePropagator(std::uint32_t index) {
    if (!isScheduled_[index]) {
        isScheduled_[index] = true;
        (propagators_[index]->runsLast() ? scheduledLast_ : scheduled_).push_back(index);
    }
}

void Engine::schedule(View view) {
    tellParts(view);
    for (const std::uint32_t index : propagatorsOf_[at(view)]) {
        schedulePropagator(index);
    }
}

bool Engine::propagateClauses(const TrailEntry& entry) {
    const auto& bounds = clauses_.boundsOf(entry.view);
    // Watches that are added meanwhile are of literals that are not true, beyond this bound.
    for (std::size_t i = clauses_.firstAbove(entry.view, entry.previousBound);
         i < bounds.size() && bounds[i].bound <= entry.bound; ++i) {
        if (!wakeClauses(negated({entry.view, bounds[i].bound}), clauses_.list(bounds[i].list))) {
            return false;
        }
    }
    return true;
}

/// The watched literal has become false: each clause watches another, or its last one is true.
bool Engine::wakeClauses(Literal watched, WatchList& watches) {
    std::size_t kept = 0;
    bool fine = true;
    std::size_t i = 0;
    for (; i < watches.size() && fine; ++i) {
        const ClauseWatch watch = watches[i];
        watches[kept++] = watch;
        if (isTrue(watch.blocker)) {
            continue;
        }
        const std::span<Literal> clause = clauses_.literals(watch.clause);
        if (clause[0] == watched) {
            std::swap(clause[0], clause[1]);
        }
        if (isTrue(clause[0])) {
            watches[kept - 1].blocker = clause[0];
            continue;
        }
        const auto other = std::find_if(clause.begin() + 2, clause.end(),
                                        [this](Literal l) { return !isFalse(l); });
        if (other != clause.end()) {
            std::swap(clause[1], *other);
            clauses_.watch(negated(clause[1]), watch.clause, clause[0]);
            --kept;
            continue;
        }
        fine = enqueue(clause[0], {Reason::Kind::Clause, watch.clause, 0});
    }
    for (; i < watches.size(); ++i) {
        watches[kept++] = watches[i];
    }
    watches.resize(kept);
    return fine;
}

bool Engine::propagateArc(std::uint32_t index) {
    const Arc& arc = arcs_[index];
    const Value bound = low(arc.from) + arc.offset;
    if (bound <= low(arc.to)) {
        return true;
    }
    if (isTrue(arc.condition)) {
        return enqueue({arc.to, bound}, {Reason::Kind::Difference, index, 0});
    }
    if (bound > high(arc.to) && !isFalse(arc.condition)) {
        // The weakest bound of the far end that still contradicts.
        const Literal far = rounded({opposite(arc.to), 1 - bound});
        const Literal because[] = {{arc.from, low(arc.from)}, far};
        return enqueueBecause(negated(arc.condition), because);
    }
    return true;
}

bool Engine::propagateArcs(View view) {
    return std::ranges::all_of(arcsFrom_[at(view)],
                               [this](std::uint32_t arc) { return propagateArc(arc); });
}

bool Engine::propagateConditions(const TrailEntry& entry) {
    for (const ConditionWatch& watch : conditionWatches_[at(entry.view)]) {
        if (watch.bound <= entry.bound && watch.bound > entry.previousBound &&
            !propagateArc(watch.arc)) {
            return false;
        }
    }
    return true;
}

}  // namespace rangeline::engine
