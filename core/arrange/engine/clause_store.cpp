#include "arrange/engine/clause_store.h"

#include <algorithm>
#include <tuple>

namespace rangeline::engine {

std::uint32_t ClauseStore::add(std::span<const Literal> literals, bool learned, int glue) {
    arena_.push_back({static_cast<View>(literals.size()), learned ? glue : notLearned});
    const auto clause = static_cast<std::uint32_t>(arena_.size());
    arena_.insert(arena_.end(), literals.begin(), literals.end());
    learned_ += learned ? 1 : 0;
    return clause;
}

std::size_t ClauseStore::firstAbove(View view, Value bound) const {
    const auto& bounds = boundsOf(view);
    const auto first = std::ranges::upper_bound(bounds, bound, {}, &BoundWatches::bound);
    return static_cast<std::size_t>(first - bounds.begin());
}

void ClauseStore::watch(Literal negated, std::uint32_t clause, Literal blocker) {
    auto& bounds = boundsOf_[static_cast<std::size_t>(negated.view)];
    auto place = std::ranges::lower_bound(bounds, negated.bound, {}, &BoundWatches::bound);
    if (place == bounds.end() || place->bound != negated.bound) {
        place = bounds.insert(place, {negated.bound, static_cast<std::uint32_t>(lists_.size())});
        lists_.emplace_back();
    }
    lists_[place->list].push_back({clause, blocker});
}

/// Of the learned clauses that may go, those to go, in the order of the arena.
std::vector<std::uint32_t> ClauseStore::worseHalf() const {
    constexpr std::int32_t alwaysKept = 2;  // glue clauses stay for good
    std::vector<std::uint32_t> candidates;
    for (std::uint32_t c = firstClause; c < arena_.size(); c = after(c)) {
        if (glueOf(c) > alwaysKept) {
            candidates.push_back(c);
        }
    }
    std::ranges::stable_sort(candidates, [this](std::uint32_t a, std::uint32_t b) {
        return std::tuple(glueOf(a), sizeOf(a)) < std::tuple(glueOf(b), sizeOf(b));
    });
    candidates.erase(candidates.begin(),
                     candidates.begin() + static_cast<std::ptrdiff_t>(candidates.size() / 2));
    std::ranges::sort(candidates);
    return candidates;
}

void ClauseStore::keepBetterHalf() {
    const std::vector<std::uint32_t> dropped = worseHalf();
    auto nextDropped = dropped.begin();
    std::vector<Literal> kept;
    for (std::uint32_t c = firstClause; c < arena_.size(); c = after(c)) {
        if (nextDropped != dropped.end() && *nextDropped == c) {
            ++nextDropped;
            continue;
        }
        const auto cells = std::span(arena_).subspan(c - firstClause, sizeOf(c) + firstClause);
        kept.insert(kept.end(), cells.begin(), cells.end());
    }
    arena_ = std::move(kept);
    learned_ -= dropped.size();
    for (auto& bounds : boundsOf_) {
        bounds.clear();
    }
    lists_.clear();
}

}  // namespace rangeline::engine
