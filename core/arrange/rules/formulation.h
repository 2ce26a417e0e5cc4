#pragma once
// A lesson as variables and constraints of the engine. Each file of this folder adds the rules of
// one part of the kitchen; read.cpp turns a solution back into placements.

#include <optional>
#include <span>
#include <vector>

#include "arrange/engine/cumulative.h"
#include "arrange/engine/engine.h"
#include "arrange/engine/search.h"
#include "arrange/rules/requirements.h"
#include "arrange/underway.h"
#include "model/expand.h"

namespace rangeline::rules {

using engine::CumulativeTask;
using engine::Literal;
using engine::TimePoint;
using engine::Value;
using engine::View;

/// One way to staff a task: who works, and how long everything then takes.
struct Staffing {
    Literal chosen;
    std::vector<Share> shares;
    std::vector<int> cooks;  ///< units, one per share
    Timing timing;
};

/// Who may watch one watch segment.
struct Watching {
    std::vector<int> cooks;       ///< units
    std::vector<Literal> chosen;  ///< one per cook
};

struct TaskVars {
    View start = 0;
    TimePoint end;
    std::vector<Staffing> staffings;
    std::vector<Watching> watchings;  ///< one per watch segment
    const Placement* pinned = nullptr;
};

/// One of several units.
struct UnitChoice {
    std::vector<int> units;
    std::vector<Literal> chosen;  ///< exactly one is true

    std::optional<Literal> of(int unit) const;
};

/// Cleaning after a chain; only there where the ware is used again.
struct WashVars {
    Literal presence;
    View start = 0;
    struct Way {
        Literal chosen;
        int cook = 0;  ///< unit
        int ware = 0;  ///< item
        Value takes = 0;
    };
    std::vector<Way> ways;
};

/// A setting and a place in one oven.
struct OvenChoice {
    struct Setting {
        int oven = 0;  ///< unit
        Temperature setTo;
        Literal chosen;
    };
    struct Spot {
        int oven = 0;  ///< unit
        int first = 0;
        int slots = 1;
        Literal chosen;
    };
    std::vector<Setting> settings;
    std::vector<Spot> spots;
};

struct TurnOnVars {
    int oven = 0;  ///< unit
    Literal presence;
    View start = 0;
    TimePoint end;
    struct Way {
        Literal chosen;
        int cook = 0;
        Value takes = 0;
    };
    std::vector<Way> ways;
};

/// Begin and end of a Span, known to the engine.
struct Taken {
    TimePoint begin;
    TimePoint end;
};

class Formulation {
  public:
    Formulation(const Lesson& lesson, const Expanded& expanded,
                Requirements how = Requirements::Held, const Underway* underway = nullptr);
    Formulation(const Formulation&) = delete;
    Formulation& operator=(const Formulation&) = delete;

    // ---- building blocks ----

    Literal yes() const { return engine.trueLiteral(); }
    Literal boolean(bool preferTrue = false);
    /// A variable decided towards its low or high end.
    View variable(Value low, Value high, Value step, bool preferHigh, Literal relevant);
    void clause(std::vector<Literal> literals);
    /// Exactly one of the literals where `condition` holds, none where it does not.
    void exactlyOne(std::span<const Literal> literals, Literal condition);
    /// A literal that is true where both are.
    Literal both(Literal a, Literal b);
    Literal no(Literal a) const { return engine.negated(a); }
    TimePoint constant(Value value) const { return {yes().view, value - 1}; }
    TimePoint startOf(int task) const { return {tasks[static_cast<std::size_t>(task)].start, 0}; }
    TimePoint endOf(int task) const { return tasks[static_cast<std::size_t>(task)].end; }
    /// later >= earlier + gap where the condition holds.
    void order(TimePoint earlier, TimePoint later, Value gap, Literal condition);
    /// Of what those tasks share.
    Taken taken(const Span& span, const std::vector<int>& tasks = {});
    /// True where the requirement is to hold.
    Literal asked(RequirementKind kind, int index = 0) { return requirements.of({kind, index}); }
    /// Nothing the kitchen has will do.
    void lack(RequirementKind kind, std::size_t index);
    /// No more than the capacity at once, if `where` is true.
    void limit(std::vector<CumulativeTask> uses, Value capacity, Literal where);
    /// The start of something placed: free on the grain, or where it is pinned.
    View startVariable(const PlacementKey& key, RequirementKind kind, int index);
    const Placement* pinnedPlacement(const PlacementKey& key) const;
    /// Units of the crew that work for a group.
    std::vector<int> crewOf(int group) const;
    const Cook& cook(int unit) const;
    Value grain() const { return grain_; }

    // ---- once cooking has begun (underway.cpp) ----

    bool isLeftOut(const PlacementKey& key) const;
    /// There are some, and none of these tasks is done.
    bool allLeftOut(const std::vector<int>& some) const;
    bool hasBegun(int task) const;
    /// Fixed and not later than now; never where cooking has not begun.
    bool hasBegun(TimePoint point) const;
    /// Nothing of that key that has not started begins before.
    Value earliestOf(const PlacementKey& key) const;
    bool lateAllowed() const { return lesson.head.lateAllowed || underway != nullptr; }

    // ---- what there is ----

    const Lesson& lesson;
    const Expanded& expanded;
    const Underway* underway;  ///< null: cooking has not begun
    engine::Engine engine;
    RequirementLiterals requirements;
    bool possible = true;  ///< false as soon as the rules contradict each other
    /// False where a step could be given to the cooks in more ways than are looked at: then nothing
    /// is proved.
    bool hasAllWays = true;

    Value earliest = 0;  ///< nothing starts before
    Value latest = 0;    ///< nothing ends after

    std::vector<TaskVars> tasks;
    std::vector<UnitChoice> wareOfChain;          ///< by chain
    std::vector<Taken> chainTaken;                ///< by chain
    std::vector<std::optional<WashVars>> washes;  ///< by chain
    std::vector<UnitChoice> burnerOfHold;         ///< by burner hold
    std::vector<OvenChoice> ovenOfLoad;           ///< by oven load
    std::vector<TurnOnVars> turnOns;              ///< by oven unit
    /// For reading: which chain precedes which on one ware, {before, after, literal}.
    struct ChainOrder {
        int before = 0;
        int after = 0;
        Literal holds;
    };
    std::vector<ChainOrder> chainOrders;

    std::vector<std::vector<CumulativeTask>> handsOf;    ///< by cook unit
    std::vector<std::vector<CumulativeTask>> watchesOf;  ///< by cook unit
    std::vector<std::vector<CumulativeTask>> poolUse;    ///< by pool unit

    std::vector<engine::Group> groups;    ///< by task, then others
    std::vector<engine::Choice> choices;  ///< those not in a group

    View earliestStart = 0;  ///< minus the earliest start: less is later
    /// Total seconds late; fixed at 0 unless allowed. Once cooking has begun also, counting much
    /// more, seconds that food keeps too long.
    View lateness = 0;

  private:
    bool staysPut(const PlacementKey& key, const Placement& pinned) const;
    std::vector<std::vector<CumulativeTask>> limitsUnderway(const std::vector<CumulativeTask>& uses,
                                                            Value capacity) const;

    Value grain_ = 60;
};

/// The value of a duration or instant. Lessons are validated to fit.
Value toValue(Duration duration);
Value toValue(Instant instant);

/// How long the hands of a wash or of turning on take: as planned, unless it has begun.
Value takesNow(const Placement* pinned, Duration planned);

/// Alike windows of many steps are one requirement.
Requirement requirementOf(const Expanded& expanded, const Window& window);

// Each adds its rules; in this order.
void addTasks(Formulation& f);
void addWares(Formulation& f);
void addBurners(Formulation& f);
void addOvens(Formulation& f);
void addPools(Formulation& f);
void addWaits(Formulation& f);
void addCrewLimits(Formulation& f);
void addEarliestStart(Formulation& f);
void addTogether(Formulation& f);

/// What is to be small for that aim: seconds from the earliest start to serving, weighted seconds
/// of waiting, cook-minutes squared at once, vessels. Between searches, at level 0.
View addAim(Formulation& f, Aim aim);

/// What placements say of the variables.
struct Previous {
    struct Start {
        View view = 0;
        Value value = 0;
        Literal presence;  ///< counts only where it is there: a wash, turning on
    };
    std::vector<Start> starts;
    std::vector<Literal> chosen;  ///< who, where and in what
    std::vector<Literal> added;   ///< there now, and not before
};
Previous previousPlan(const Formulation& f, const Placements& placements);

/// Seconds that steps, washes and turning on move away from where they stood, in all; another cook,
/// burner, vessel or slot, and what comes or goes, counts like five minutes. Between searches, at
/// level 0.
View addMovement(Formulation& f, const Previous& previous);

/// The placements of the solution the engine stands at.
Placements readPlacements(const Formulation& f);

}  // namespace rangeline::rules
