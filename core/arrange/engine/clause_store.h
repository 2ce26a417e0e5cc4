#pragma once
// Clauses in one arena, with two watched literals each.

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "arrange/engine/literal.h"

namespace rangeline::engine {

/// Wakes a clause when its view reaches `bound`, which makes a watched literal false.
struct ClauseWatch {
    Value bound = 0;
    std::uint32_t clause = 0;
    Literal blocker;  ///< another literal of the clause: if true, the clause needs no look
};

class ClauseStore {
  public:
    void grow(std::size_t views) { watches_.resize(views); }
    /// Stores a clause; the caller watches its first two literals with watch().
    std::uint32_t add(std::span<const Literal> literals, bool learned, int glue);
    std::span<Literal> literals(std::uint32_t clause);
    std::span<const Literal> literals(std::uint32_t clause) const;
    std::vector<ClauseWatch>& watches(View view) {
        return watches_[static_cast<std::size_t>(view)];
    }
    /// `negated` is the literal whose truth makes a watched literal false.
    void watch(Literal negated, std::uint32_t clause, Literal blocker);
    std::size_t learned() const { return learned_; }
    /// Drops the half of the learned clauses with most glue (levels joined; Audemard and Simon,
    /// 2009) and rewrites the arena. No clause may be the reason of anything. `negate` gives the
    /// literal whose truth makes a literal false.
    template <class Negate>
    void reduce(Negate negate) {
        keepBetterHalf();
        for (std::uint32_t c = 0; c < headers_.size(); ++c) {
            const auto clause = literals(c);
            watch(negate(clause[0]), c, clause[1]);
            watch(negate(clause[1]), c, clause[0]);
        }
    }

  private:
    struct Header {
        std::uint32_t first = 0;
        std::uint32_t size = 0;
        std::int32_t glue = 0;
        bool learned = false;
    };

    void keepBetterHalf();

    std::vector<Header> headers_;
    std::vector<Literal> arena_;
    std::vector<std::vector<ClauseWatch>> watches_;
    std::size_t learned_ = 0;
};

}  // namespace rangeline::engine
