#pragma once
// What keeps the placements of a lesson in their order: how long after the start of one another may
// start at the soonest, because of links, food, equipment and cooks, with assignments and the order
// on every piece of equipment and for every cook as placed.

#include <optional>
#include <span>
#include <vector>

#include "analysis/critical_path.h"
#include "analysis/use_index.h"

namespace rangeline {

/// start(to) >= start(from) + least. Where the placements break a rule, `least` is what they give,
/// so that the lesson as placed keeps every arc.
struct OrderArc {
    int from = 0;  ///< nodes of the index
    int to = 0;
    Duration least;
    HeldBy by = HeldBy::Wait;
    EquipmentRef equipment;
    int wait = -1;  ///< index into Expanded::waits
    /// The instants of the two that are meant, from their starts; `least` lies between the starts.
    Duration fromOffset;
    Duration toOffset;
    int turn =
        -1;  ///< of what has to end first, among the uses of `equipment`, where they are counted
};

/// start(node) <= latest.
struct LatestStart {
    int node = 0;
    Instant latest;
    HeldBy by = HeldBy::Deadline;
    int window = -1;  ///< index into Expanded::windows; -1: the end of the lesson
    int wait = -1;    ///< index into Expanded::waits: food made before the lesson
    Duration offset;  ///< of the instant that is meant, from the start
};

class OrderGraph {
  public:
    explicit OrderGraph(const UseIndex& index);

    const std::vector<OrderArc>& arcs() const { return arcs_; }
    const std::vector<LatestStart>& latestStarts() const { return latest_; }

  private:
    /// An instant that moves with a placement.
    struct Term {
        int node = 0;
        Duration offset;  ///< from its start
    };
    /// A use of something, with what its begin and its end move with.
    struct Taken {
        Interval interval;
        std::optional<Term> begin;  ///< none: since before the lesson
        std::vector<Term> ends;     ///< the latest of these
        std::int64_t amount = 1;
        int turn = -1;
    };
    /// Why an arc is there.
    struct Reason {
        HeldBy by = HeldBy::Equipment;
        EquipmentRef equipment;
        int wait = -1;
        int turn = -1;
    };

    Instant now(const Term& term) const;
    Term startOf(int node) const { return {node, Duration()}; }
    Term endOf(int node) const;
    Taken takenBySpan(const Span& span, std::span<const int> tasks = {}) const;
    Taken takenByNode(int node) const;
    Taken takenByHands(const CookUse& use) const;
    Taken takenByWatch(const CookUse& use) const;

    void add(const Term& from, const Term& to, Duration least, const Reason& reason);
    void after(const Taken& first, const Taken& then, Duration gap, const Reason& reason);
    void around(const Taken& outer, const Taken& inner, const Reason& reason);
    void inSequence(const std::vector<Taken>& takens, const Reason& reason);
    void withinCapacity(std::vector<Taken> takens, std::int64_t capacity, const Reason& reason);
    void afterWhatMakesRoom(std::span<const Taken> before, const Taken& then, std::int64_t capacity,
                            const Reason& reason);
    void staysEmpty(const Taken& taken, const Reason& reason);
    static std::int64_t amountAround(const Taken& taken, std::span<const Taken> others);

    void addWaits();
    void addLeast(const Wait& wait, const Reason& reason);
    void addMost(const Wait& wait, const Reason& reason);
    void addDeadlines();
    void addBurners();
    void addWares();
    void addPools();
    void addCooks();
    void addTalk(int talk, int cook);
    void addOvens();
    void addKeptEmpty();
    void addSlots(int unit);
    void addSettings(int unit);
    void addWarmUp(int unit);
    void addShutDoors(int unit);

    const UseIndex& index_;
    std::vector<OrderArc> arcs_;
    std::vector<LatestStart> latest_;
};

}  // namespace rangeline
