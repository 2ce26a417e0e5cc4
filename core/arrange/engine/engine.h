#pragma once
// Lazy clause generation: finite-domain propagation whose every deduction can be explained by
// literals, so that conflicts are learned as clauses (Ohrimenko, Stuckey and Codish, 2009;
// first-unique-implication-point learning after Marques-Silva and Sakallah, 1999). From memory.

#include <cstddef>
#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "arrange/engine/clause_store.h"
#include "arrange/engine/literal.h"

namespace rangeline::engine {

class Engine;

/// A constraint that narrows bounds when views it watches have changed.
class Propagator {
  public:
    virtual ~Propagator() = default;
    /// Narrows through Engine::enqueue; returns false as soon as that does, or after reporting a
    /// conflict itself.
    virtual bool propagate(Engine& engine) = 0;
    /// A view that is watched as that part has moved, up in the search or back to where it was.
    virtual void moved(std::uint32_t /*part*/) {}
    /// Costs much and finds little: runs when all others are at rest.
    virtual bool runsLast() const { return false; }
};

/// Why a bound holds.
struct Reason {
    enum class Kind : std::uint8_t { None, Clause, Difference, Listed };
    Kind kind = Kind::None;
    std::uint32_t index = 0;  ///< clause, arc, or first literal of the listed explanation
    std::uint32_t size = 0;   ///< of the listed explanation
};

struct TrailEntry {
    View view = 0;
    Value bound = 0;
    Value previousBound = 0;
    std::int32_t previousEntry = -1;  ///< of the same view
    std::int32_t level = 0;
    Reason reason;
};

/// A view to watch, and what a propagator calls the part of it that moves with the view.
struct Watched {
    View view = 0;
    std::uint32_t part = 0;
};

class Engine {
  public:
    Engine();
    Engine(const Engine&) = delete;
    Engine& operator=(const Engine&) = delete;

    // ---- model, at level 0 only ----

    /// A variable in [low, high] whose values are whole multiples of `step`. Requires
    /// low <= high after rounding inwards. Returns its view.
    View newVariable(Value low, Value high, Value step = 1);
    Literal newBoolean();
    Literal trueLiteral() const { return {trueView_, 1}; }
    /// At least one of the literals holds. False if that can no longer be.
    bool addClause(std::vector<Literal> literals);
    /// value(to) >= value(from) + offset where `condition` holds.
    void addDifference(View from, Value offset, View to, Literal condition);
    /// The propagator runs whenever a view it watches rises; it is owned by the engine.
    void addPropagator(std::unique_ptr<Propagator> propagator, std::span<const View> watched);
    /// The same; it is also told which parts move.
    void addPropagator(std::unique_ptr<Propagator> propagator, std::span<const Watched> watched);
    /// False if contradictory.
    bool fix(Literal literal) { return enqueue(literal, Reason{}); }

    // ---- state ----

    Value low(View view) const { return low_[static_cast<std::size_t>(view)]; }
    Value high(View view) const { return -low(opposite(view)); }
    Value low(TimePoint t) const { return low(t.view) + t.offset; }
    Value high(TimePoint t) const { return high(t.view) + t.offset; }
    bool fixed(View view) const { return low(view) == high(view); }
    bool isTrue(Literal l) const { return low(l.view) >= l.bound; }
    bool isFalse(Literal l) const { return high(l.view) < l.bound; }
    Value stepOf(View view) const { return step_[static_cast<std::size_t>(view) / 2]; }
    /// The literal with its bound rounded up to a value the variable can take.
    Literal rounded(Literal l) const;
    Literal negated(Literal l) const;
    std::size_t variables() const { return step_.size(); }
    int level() const { return static_cast<int>(levelStarts_.size()); }

    // ---- search ----

    /// Makes the literal true. False: conflict, which learn() will explain.
    bool enqueue(Literal literal, Reason reason);
    /// The same, because all of `because` are true.
    bool enqueueBecause(Literal literal, std::span<const Literal> because);
    /// All of `because` are true and cannot be together. Always returns false.
    bool conflict(std::span<const Literal> because);
    /// Until nothing changes; false on a conflict.
    bool propagate();
    void decide(Literal literal);
    /// A conflict above that level is forgotten.
    void backtrackTo(int level);
    /// After a conflict: learns a clause, backtracks and asserts it. False if the problem is
    /// contradictory. `touched` receives the variables that took part.
    bool learn(std::vector<int>& touched);
    /// Forgets the less useful half of the learned clauses. Requires level 0.
    void forget();

    // ---- assumptions ----

    /// Opens level 1 with all of the literals as decisions, to be followed by propagate(). Requires
    /// level 0 at rest. False if a literal is false already: the conflict is that one alone.
    bool assume(std::span<const Literal> literals);
    /// Of the conflict at hand: whether nothing but assumptions and what follows from them is
    /// needed, when level 1 holds the assumptions.
    bool conflictsWithAssumptions() const { return conflictLevel() <= 1; }
    /// The assumptions that such a conflict needs, in any order, each once; empty if the model is
    /// contradictory without any. Forgets the conflict and goes back to level 0.
    std::vector<Literal> conflictingAssumptions();
    std::size_t learnedClauses() const { return clauses_.learned(); }

  private:
    struct Arc {
        View from = 0, to = 0;
        Value offset = 0;
        Literal condition;
    };
    struct PartWatch {
        std::uint32_t propagator = 0, part = 0;
    };
    struct ConditionWatch {
        Value bound = 0;
        std::uint32_t arc = 0;
    };

    bool propagateClauses(const TrailEntry& entry);
    bool wakeClauses(Literal watched, WatchList& watches);
    bool propagateArcs(View view);
    bool propagateArc(std::uint32_t arc);
    bool propagateConditions(const TrailEntry& entry);
    void watch(View view, std::uint32_t propagator);
    void tellParts(View view);
    void schedule(View view);
    void schedulePropagator(std::uint32_t index);
    /// The propagator to run next; nothing if all are at rest.
    std::optional<std::uint32_t> nextScheduled();
    void clearQueues();
    /// Appends the true literals that make `literal` true by `reason`.
    void antecedents(Literal literal, const Reason& reason, std::vector<Literal>& out) const;
    std::int32_t entryOf(Literal literal) const;
    Reason list(std::span<const Literal> because);

    // conflict analysis
    void mark(Literal stated);
    void resolveToFirstUip(int level);
    std::vector<Literal> markedLiterals(int level);
    bool implied(Literal literal, int depth);
    bool redundant(std::int32_t entry, Value bound, int depth);
    bool assertLearned(std::vector<Literal> literals);
    int conflictLevel() const;

    View trueView_ = 0;
    std::vector<Value> low_;               ///< by view
    std::vector<Value> step_;              ///< by variable
    std::vector<std::int32_t> lastEntry_;  ///< by view
    std::vector<TrailEntry> trail_;
    std::vector<std::size_t> levelStarts_;
    std::vector<std::size_t> levelExplanations_;
    std::size_t queueHead_ = 0;

    ClauseStore clauses_;
    std::vector<Arc> arcs_;
    std::vector<std::vector<std::uint32_t>> arcsFrom_;           ///< by view
    std::vector<std::vector<ConditionWatch>> conditionWatches_;  ///< by view
    std::vector<std::unique_ptr<Propagator>> propagators_;
    std::vector<std::vector<std::uint32_t>> propagatorsOf_;  ///< by view
    std::vector<std::vector<PartWatch>> partsOf_;            ///< by view
    std::vector<std::uint32_t> scheduled_;
    std::vector<std::uint32_t> scheduledLast_;  ///< those that run last
    std::vector<bool> isScheduled_;

    std::vector<Literal> explanations_;
    std::vector<Literal> conflict_;
    std::optional<Literal> refuted_;  ///< an assumption that is false without the others
    std::vector<Literal> scratch_;

    std::vector<Value> needed_;   ///< by trail entry: bound that the conflict needs
    std::vector<bool> isMarked_;  ///< by trail entry
    std::vector<std::int32_t> marked_;
    /// What is known of an entry's bounds: implied up to, and not implied from.
    struct Verdict {
        Value implied = std::numeric_limits<Value>::min();
        Value notImplied = std::numeric_limits<Value>::max();
    };
    std::vector<Verdict> verdicts_;     ///< by trail entry
    std::vector<std::int32_t> judged_;  ///< entries that have a verdict
    std::vector<bool> levelIsMarked_;   ///< whether a literal of the level is marked
    std::vector<Literal> reasons_;      ///< stack of those that are looked at
    int markedAtLevel_ = 0;
    int analysedLevel_ = 0;
    std::vector<int>* touched_ = nullptr;
};

}  // namespace rangeline::engine
