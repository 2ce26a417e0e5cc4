// Solving under assumptions: literals that are decided before all others, and which of them a
// contradiction needs (after Eén and Sörensson's incremental solving, 2003; from memory).

#include <algorithm>
#include <cassert>

#include "arrange/engine/engine.h"
#include "arrange/engine/search.h"

namespace rangeline::engine {
namespace {

std::size_t at(std::int32_t index) {
    return static_cast<std::size_t>(index);
}

}  // namespace

bool Engine::assume(std::span<const Literal> literals) {
    assert(level() == 0 && conflict_.empty());
    levelStarts_.push_back(trail_.size());
    levelExplanations_.push_back(explanations_.size());
    for (const Literal literal : literals) {
        if (!enqueue(literal, Reason{})) {
            // Nothing was propagated yet: what stands against it held before, or is assumed too.
            refuted_ = rounded(literal);
            return false;
        }
    }
    return true;
}

std::vector<Literal> Engine::conflictingAssumptions() {
    assert(!conflict_.empty() && conflictsWithAssumptions());
    const bool forGood = conflictLevel() == 0 && !refuted_;
    std::vector<Literal> needed;
    if (refuted_) {
        needed.push_back(*refuted_);
        refuted_.reset();
    }
    const std::vector<Literal> start = std::move(conflict_);
    conflict_.clear();
    needed_.resize(std::max(needed_.size(), trail_.size()));
    isMarked_.resize(std::max(isMarked_.size(), trail_.size()), false);
    touched_ = nullptr;
    analysedLevel_ = 1;
    for (const Literal literal : start) {
        mark(literal);
    }
    std::vector<Literal> because;
    for (auto entry = static_cast<std::int32_t>(trail_.size()) - 1; entry >= 0; --entry) {
        if (!isMarked_[at(entry)]) {
            continue;
        }
        isMarked_[at(entry)] = false;
        const TrailEntry& known = trail_[at(entry)];
        if (known.reason.kind == Reason::Kind::None) {
            needed.push_back({known.view, known.bound});
            continue;
        }
        because.clear();
        antecedents({known.view, needed_[at(entry)]}, known.reason, because);
        for (const Literal literal : because) {
            mark(literal);
        }
    }
    marked_.clear();
    markedAtLevel_ = 0;
    backtrackTo(0);
    if (forGood) {
        conflict({});
    }
    return needed;
}

bool Search::underAssumptions(const Goal& goal) {
    if (goal.assumptions.empty() || engine_.level() > 0) {
        return true;
    }
    return engine_.assume(goal.assumptions);
}

bool Search::refutesAssumptions(const Goal& goal) {
    if (goal.assumptions.empty() || !engine_.conflictsWithAssumptions()) {
        return false;
    }
    core_ = engine_.conflictingAssumptions();
    return true;
}

}  // namespace rangeline::engine
