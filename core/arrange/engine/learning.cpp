// Conflict analysis: from the literals that contradict each other back to the first single literal
// of the current level that, with older ones, is enough.

#include <algorithm>
#include <cassert>

#include "arrange/engine/engine.h"

namespace rangeline::engine {
namespace {

std::size_t at(std::int32_t index) {
    return static_cast<std::size_t>(index);
}

constexpr int reasonsDeep = 20;  // further back there is hardly anything to gain

}  // namespace

void Engine::antecedents(Literal literal, const Reason& reason, std::vector<Literal>& out) const {
    switch (reason.kind) {
        case Reason::Kind::None:
            return;
        case Reason::Kind::Clause:
            for (const Literal other : clauses_.literals(reason.index)) {
                if (other.view != literal.view || other.bound < literal.bound) {
                    out.push_back(negated(other));
                }
            }
            return;
        case Reason::Kind::Difference: {
            // The least start of the arc that, rounded at its end, still gives the bound.
            const Arc& arc = arcs_[reason.index];
            const Value least = literal.bound - (stepOf(arc.to) - 1) - arc.offset;
            out.push_back(rounded({arc.from, least}));
            out.push_back(arc.condition);
            return;
        }
        case Reason::Kind::Listed:
            out.insert(out.end(), explanations_.begin() + reason.index,
                       explanations_.begin() + reason.index + reason.size);
            return;
    }
}

/// The entry that first made a true literal true, or -1 if it held from the start.
std::int32_t Engine::entryOf(Literal literal) const {
    std::int32_t entry = lastEntry_[at(literal.view)];
    while (entry >= 0 && trail_[at(entry)].previousBound >= literal.bound) {
        entry = trail_[at(entry)].previousEntry;
    }
    return entry;
}

void Engine::mark(Literal stated) {
    const Literal literal = rounded(stated);
    const std::int32_t entry = entryOf(literal);
    if (entry < 0 || trail_[at(entry)].level == 0) {
        return;
    }
    if (isMarked_[at(entry)]) {
        needed_[at(entry)] = std::max(needed_[at(entry)], literal.bound);
        return;
    }
    isMarked_[at(entry)] = true;
    needed_[at(entry)] = literal.bound;
    marked_.push_back(entry);
    markedAtLevel_ += trail_[at(entry)].level == analysedLevel_ ? 1 : 0;
    if (touched_ != nullptr) {
        touched_->push_back(trail_[at(entry)].view / 2);
    }
}

int Engine::conflictLevel() const {
    int highest = 0;
    for (const Literal literal : conflict_) {
        const std::int32_t entry = entryOf(literal);
        highest = std::max(highest, entry < 0 ? 0 : trail_[at(entry)].level);
    }
    return highest;
}

void Engine::resolveToFirstUip(int level) {
    std::vector<Literal> because;
    auto index = static_cast<std::int32_t>(trail_.size()) - 1;
    while (markedAtLevel_ > 1) {
        while (!isMarked_[at(index)] || trail_[at(index)].level != level) {
            --index;
        }
        const TrailEntry& entry = trail_[at(index)];
        isMarked_[at(index)] = false;
        --markedAtLevel_;
        because.clear();
        antecedents({entry.view, needed_[at(index)]}, entry.reason, because);
        for (const Literal literal : because) {
            mark(literal);
        }
        --index;
    }
    std::erase_if(marked_, [this](std::int32_t entry) { return !isMarked_[at(entry)]; });
}

/// Whether the marked literals already imply this one, over reasons of reasons (after Sörensson and
/// Biere, 2009; from memory).
bool Engine::implied(Literal literal, int depth) {
    const std::int32_t index = entryOf(literal);
    if (index < 0 || trail_[at(index)].level == 0 ||
        (isMarked_[at(index)] && needed_[at(index)] >= literal.bound)) {
        return true;
    }
    const TrailEntry& entry = trail_[at(index)];
    if (depth == 0 || !levelIsMarked_[at(entry.level)]) {
        return false;
    }
    Verdict& known = verdicts_[at(index)];
    if (literal.bound <= known.implied || literal.bound >= known.notImplied) {
        return literal.bound <= known.implied;
    }
    const bool yes = redundant(index, literal.bound, depth - 1);
    judged_.push_back(index);
    (yes ? known.implied : known.notImplied) = literal.bound;
    return yes;
}

/// Whether the reason of an entry holds by the marked literals alone, for that bound of it.
bool Engine::redundant(std::int32_t index, Value bound, int depth) {
    const TrailEntry entry = trail_[at(index)];
    if (entry.reason.kind == Reason::Kind::None) {
        return false;
    }
    const std::size_t first = reasons_.size();
    antecedents({entry.view, bound}, entry.reason, reasons_);
    bool all = true;
    for (std::size_t i = first; i < reasons_.size() && all; ++i) {
        const std::size_t size = reasons_.size();
        all = implied(reasons_[i], depth);
        reasons_.resize(size);
    }
    reasons_.resize(first);
    return all;
}

/// The learned clause: the first unique implication point first, then the newest other literal.
std::vector<Literal> Engine::markedLiterals(int level) {
    levelIsMarked_.assign(levelStarts_.size() + 1, false);
    for (const std::int32_t entry : marked_) {
        levelIsMarked_[at(trail_[at(entry)].level)] = true;
    }
    std::vector<std::int32_t> kept;
    for (const std::int32_t entry : marked_) {
        if (trail_[at(entry)].level == level ||
            !redundant(entry, needed_[at(entry)], reasonsDeep)) {
            kept.push_back(entry);
        }
    }
    for (const std::int32_t entry : judged_) {
        verdicts_[at(entry)] = {};
    }
    judged_.clear();
    std::ranges::sort(kept, std::greater());
    std::vector<Literal> literals;
    for (const std::int32_t entry : kept) {
        const View view = trail_[at(entry)].view;
        // A higher bound of the same view implies the lower one.
        const bool implied =
            std::ranges::any_of(literals, [&](Literal l) { return l.view == opposite(view); });
        if (!implied) {
            literals.push_back(negated({view, needed_[at(entry)]}));
        }
    }
    return literals;
}

bool Engine::assertLearned(std::vector<Literal> literals) {
    if (literals.size() == 1) {
        backtrackTo(0);
        return fix(literals.front());
    }
    std::vector<int> levels;
    for (const Literal literal : literals) {
        levels.push_back(trail_[at(entryOf(negated(literal)))].level);
    }
    std::vector<int> distinct = levels;
    std::ranges::sort(distinct);
    const auto repeated = std::ranges::unique(distinct);
    distinct.erase(repeated.begin(), repeated.end());
    // Sorted by trail order, so the second literal has the second highest level.
    backtrackTo(levels[1]);
    const std::uint32_t clause = clauses_.add(literals, true, static_cast<int>(distinct.size()));
    clauses_.watch(negated(literals[0]), clause, literals[1]);
    clauses_.watch(negated(literals[1]), clause, literals[0]);
    return enqueue(literals[0], {Reason::Kind::Clause, clause, 0});
}

bool Engine::learn(std::vector<int>& touched) {
    assert(!conflict_.empty());
    analysedLevel_ = conflictLevel();
    if (analysedLevel_ == 0) {
        return false;
    }
    const std::vector<Literal> start = std::move(conflict_);
    conflict_.clear();
    backtrackTo(analysedLevel_);
    needed_.resize(std::max(needed_.size(), trail_.size()));
    isMarked_.resize(std::max(isMarked_.size(), trail_.size()), false);
    verdicts_.resize(std::max(verdicts_.size(), trail_.size()));
    touched_ = &touched;
    markedAtLevel_ = 0;
    for (const Literal literal : start) {
        mark(literal);
    }
    resolveToFirstUip(analysedLevel_);
    std::vector<Literal> literals = markedLiterals(analysedLevel_);
    for (const std::int32_t entry : marked_) {
        isMarked_[at(entry)] = false;
    }
    marked_.clear();
    return assertLearned(std::move(literals));
}

void Engine::forget() {
    assert(level() == 0);
    clauses_.reduce([this](Literal l) { return negated(l); });
}

}  // namespace rangeline::engine
