#pragma once
// Branching, restarts and minimisation over an Engine.

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "arrange/engine/activity_order.h"
#include "arrange/engine/engine.h"
#include "base/random.h"

namespace rangeline::engine {

/// One thing to be decided and how.
struct Choice {
    View view = 0;
    bool high = false;  ///< try the highest value first, else the lowest
    Literal relevant;   ///< until true, the value is left open
};

/// Choices that belong together. When a group has the latest `time` left, one literal of each set
/// is made true, the one that leaves the start latest; then the start is put there. What is held up
/// for something that has its place comes first.
struct Group {
    TimePoint time;
    Choice start;
    std::vector<std::vector<Literal>> sets;
    std::vector<View> heldUntil{};  ///< starts at which what it takes is free again
};

/// What a search aims at: a view to be made small.
struct Goal {
    View objective = 0;
    std::optional<Value> atMost{};
    /// After each second restart, first decide that the objective has its least possible value, so
    /// that it is met or refuted and the bound rises; and before the first restart with a limit,
    /// that it lies in the lower half.
    bool raiseBound = true;
    /// Hold for this call only and are decided first; not together with `atMost`. Each a literal of
    /// its own variable or bound.
    std::span<const Literal> assumptions{};
};

enum class Outcome : std::uint8_t { Solution, Contradiction, Interrupted };

class Search {
  public:
    /// `keepGoing` is asked every few conflicts and decisions.
    Search(Engine& engine, std::vector<Group> groups, std::vector<Choice> rest, std::uint64_t seed,
           std::function<bool()> keepGoing);

    /// Finds values for everything that is relevant, with the objective at most `goal.atMost`, or
    /// shows there are none. On Solution the engine stands at it; read the values, then backtrack
    /// to level 0. After a Contradiction that came from `atMost`, the engine knows a higher least
    /// value of the objective and goes on being usable; without `atMost` nothing can be.
    Outcome solve(const Goal& goal, std::optional<std::int64_t> conflictLimit);
    /// After a Contradiction under assumptions: those that it needs. Empty: there is no solution
    /// without them either.
    const std::vector<Literal>& core() const { return core_; }
    /// From now on prefers the values the engine has now.
    void rememberValues();
    /// Prefers that value, as if a solution had had it.
    void suggest(View view, Value value);
    /// What it prefers of the groups whose preferred start is outside of [from, to): what is chosen
    /// for them, and their start; those before may start later by as much. Not what no longer can
    /// be.
    std::vector<Literal> outside(Value from, Value to, std::optional<Value> later) const;
    /// By variable. The same variables of another search over the same model mean the same.
    const std::vector<std::optional<Value>>& preferredValues() const { return saved_; }
    /// Prefers these instead, as if a solution had had them; of variables known to both.
    void prefer(const std::vector<std::optional<Value>>& values);
    /// Tries to meet or refute the bound after every restart instead of every second one.
    void raiseAtEachRestart(bool each) { raiseEvery_ = each ? 1 : 2; }
    /// Preferred starts of all groups that have one.
    std::vector<Value> preferredStarts() const;
    /// Forgets all values it prefers.
    void forgetValues();

    /// No solution of the last goal's objective is below this, whatever its `atMost`.
    Value bound() const { return bound_; }
    View boundOf() const { return boundOf_; }
    std::int64_t conflicts() const { return conflicts_; }
    std::int64_t decisions() const { return decisions_; }
    std::int64_t restarts() const { return restarts_; }

  private:
    bool underAssumptions(const Goal& goal);
    bool refutesAssumptions(const Goal& goal);
    std::optional<Literal> goalDecision(const Goal& goal);
    std::optional<Literal> nextDecision();
    bool isUrgent(std::size_t group) const;
    std::optional<Literal> latestFirst();
    std::optional<Literal> bestOfSets(const Group& group);
    std::optional<Literal> leavesLatest(const Group& group, const std::vector<Literal>& open);
    bool followsOrder() const;
    std::optional<Literal> mostActive();
    std::optional<Literal> decisionFor(const Choice& choice) const;
    std::optional<Literal> remembered(View view) const;
    bool relevant(const Choice& choice) const { return engine_.isTrue(choice.relevant); }
    bool handleConflict();
    void restart();
    void knowNewVariables();
    void knowRoom();

    Engine& engine_;
    std::vector<Group> groups_;
    std::vector<std::pair<Value, Value>> roomAtFirst_;  ///< by group: bounds of its time
    std::vector<Choice> choices_;                       ///< all of them
    std::vector<int> choiceOf_;                         ///< by variable, -1: none
    ActivityOrder order_;
    std::vector<std::optional<Value>> saved_;  ///< by variable
    Random random_;
    std::function<bool()> keepGoing_;
    std::vector<int> touched_;
    std::vector<Literal> core_;
    std::int64_t conflicts_ = 0;
    std::int64_t decisions_ = 0;
    std::int64_t restarts_ = 0;
    bool suggested_ = false;
    bool found_ = false;  ///< a solution, whose values are remembered
    std::int64_t untilRestart_ = 0;
    View boundOf_ = 0;  ///< objective
    Value bound_ = std::numeric_limits<Value>::min();
    Value raiseBy_ = 0;  ///< how far above the bound the objective was last held
    Value raisedTo_ = std::numeric_limits<Value>::max();
    std::int64_t raiseEvery_ = 2;  ///< restarts
    bool halving_ = false;         ///< no restart yet since the goal was set
    std::size_t learnedLimit_ = 4000;
};

}  // namespace rangeline::engine
