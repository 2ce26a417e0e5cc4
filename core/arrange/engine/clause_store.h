#pragma once
// Clauses in one arena, with two watched literals each.

#include <cstddef>
#include <cstdint>
#include <deque>
#include <span>
#include <vector>

#include "arrange/engine/literal.h"

namespace rangeline::engine {

/// Wakes a clause when one of its watched literals becomes false.
struct ClauseWatch {
    std::uint32_t clause = 0;
    Literal blocker;  ///< another literal of the clause: if true, the clause needs no look
};

using WatchList = std::vector<ClauseWatch>;

/// What wakes when a view reaches `bound`.
struct BoundWatches {
    Value bound = 0;
    std::uint32_t list = 0;
};

class ClauseStore {
  public:
    void grow(std::size_t views) { boundsOf_.resize(views); }
    /// Stores a clause of two literals or more; the caller watches its first two with watch().
    std::uint32_t add(std::span<const Literal> literals, bool learned, int glue);
    std::span<Literal> literals(std::uint32_t clause) {
        return {arena_.data() + clause, sizeOf(clause)};
    }
    std::span<const Literal> literals(std::uint32_t clause) const {
        return {arena_.data() + clause, sizeOf(clause)};
    }
    /// The watches of a view, by rising bound. A watch of a new bound comes in between; lists stay
    /// where they are.
    const std::vector<BoundWatches>& boundsOf(View view) const {
        return boundsOf_[static_cast<std::size_t>(view)];
    }
    /// The first of them that is above `bound`.
    std::size_t firstAbove(View view, Value bound) const;
    WatchList& list(std::uint32_t list) { return lists_[list]; }
    /// `negated` is the literal whose truth makes a watched literal false.
    void watch(Literal negated, std::uint32_t clause, Literal blocker);
    std::size_t learned() const { return learned_; }
    /// Drops the half of the learned clauses with most glue (levels joined; Audemard and Simon,
    /// 2009) and rewrites the arena. No clause may be the reason of anything. `negate` gives the
    /// literal whose truth makes a literal false.
    template <class Negate>
    void reduce(Negate negate) {
        keepBetterHalf();
        for (std::uint32_t c = firstClause; c < arena_.size(); c = after(c)) {
            const auto clause = literals(c);
            watch(negate(clause[0]), c, clause[1]);
            watch(negate(clause[1]), c, clause[0]);
        }
    }

  private:
    /// Before the literals of each clause stands one cell with its size and glue, so that a look at
    /// a clause is a look at one place.
    static constexpr std::uint32_t firstClause = 1;
    static constexpr std::int32_t notLearned = 0;  ///< glue

    std::size_t sizeOf(std::uint32_t clause) const {
        return static_cast<std::size_t>(arena_[clause - 1].view);
    }
    std::int32_t glueOf(std::uint32_t clause) const { return arena_[clause - 1].bound; }
    std::uint32_t after(std::uint32_t clause) const {
        return clause + static_cast<std::uint32_t>(sizeOf(clause)) + firstClause;
    }
    std::vector<std::uint32_t> worseHalf() const;
    void keepBetterHalf();

    std::vector<Literal> arena_;
    std::vector<std::vector<BoundWatches>> boundsOf_;  ///< by view
    std::deque<WatchList> lists_;
    std::size_t learned_ = 0;
};

}  // namespace rangeline::engine
