// What is different once cooking has begun: a past that is as it is.

#include <algorithm>
#include <limits>

#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

/// A use that is as it is. One that goes on until an instant not yet known may go on for ever.
struct Hold {
    Value begin = 0, end = 0, demand = 0;
};

constexpr Value forEver = std::numeric_limits<Value>::max();

Value demandAt(const std::vector<Hold>& holds, Value instant) {
    Value sum = 0;
    for (const Hold& hold : holds) {
        sum += hold.begin <= instant && instant < hold.end ? hold.demand : 0;
    }
    return sum;
}

/// At each instant the holds together, or only as much as there is room for beside the others.
std::vector<Hold> clipped(const std::vector<Hold>& holds, const std::vector<Hold>& others,
                          Value capacity) {
    std::vector<Value> instants;
    for (const auto* list : {&holds, &others}) {
        for (const Hold& hold : *list) {
            instants.push_back(hold.begin);
            instants.push_back(hold.end);
        }
    }
    std::ranges::sort(instants);
    std::vector<Hold> result;
    for (std::size_t i = 0; i + 1 < instants.size(); ++i) {
        const Value room = capacity - demandAt(others, instants[i]);
        const Value demand = std::min(demandAt(holds, instants[i]), room);
        if (demand > 0 && instants[i] < instants[i + 1]) {
            result.push_back({instants[i], instants[i + 1], demand});
        }
    }
    return result;
}

/// What cooking has begun with, sorted by how much is known of it.
struct Sorted {
    std::vector<Hold> settled;                          ///< both ends known
    std::vector<std::vector<Hold>> open;                ///< groups, each of which fits together
    std::vector<std::vector<CumulativeTask>> openUses;  ///< the same
    std::vector<CumulativeTask> others;

    void addOpen(const CumulativeTask& use, Value begin, Value capacity) {
        for (std::size_t group = 0; group < open.size(); ++group) {
            Value sum = use.demand;
            for (const Hold& hold : open[group]) {
                sum += hold.demand;
            }
            if (sum <= capacity) {
                open[group].push_back({begin, forEver, use.demand});
                openUses[group].push_back(use);
                return;
            }
        }
        if (use.demand <= capacity) {
            open.push_back({{begin, forEver, use.demand}});
            openUses.push_back({use});
        }
    }
};

}  // namespace

bool Formulation::isLeftOut(const PlacementKey& key) const {
    return underway != nullptr && underway->leftOut.contains(key);
}

bool Formulation::allLeftOut(const std::vector<int>& some) const {
    return underway != nullptr && !some.empty() && std::ranges::all_of(some, [this](int task) {
               return isLeftOut(expanded.tasks[static_cast<std::size_t>(task)].key);
           });
}

bool Formulation::hasBegun(int task) const {
    return underway != nullptr && hasBegun(startOf(task));
}

bool Formulation::hasBegun(TimePoint point) const {
    return underway != nullptr && engine.fixed(point.view) &&
           engine.low(point) <= toValue(underway->now);
}

Value Formulation::earliestOf(const PlacementKey& key) const {
    if (underway == nullptr || isLeftOut(key)) {
        return earliest;
    }
    const auto putOff = underway->notBefore.find(key);
    // What is due this very minute is not late.
    const Value now = toValue(underway->now);
    const Value from = now - ((now % grain_) + grain_) % grain_;
    return std::max(
        {earliest, from, putOff == underway->notBefore.end() ? from : toValue(putOff->second)});
}

bool Formulation::staysPut(const PlacementKey& key, const Placement& pinned) const {
    return underway == nullptr || pinned.started ||
           (underway->pinsHold && toValue(pinned.start) >= earliestOf(key));
}

Value takesNow(const Placement* pinned, Duration planned) {
    const bool begun = pinned != nullptr && pinned->started && pinned->lasts;
    return toValue(begun ? *pinned->lasts : planned);
}

/// Nothing can be placed in the past, so what is over is of no account. What has begun is not held
/// against each other, as it cannot be helped; only against what can still be placed. So there is
/// one limit for what is settled and one for each set of what still goes on and fits together.
std::vector<std::vector<CumulativeTask>> Formulation::limitsUnderway(
    const std::vector<CumulativeTask>& uses, Value capacity) const {
    const Value now = toValue(underway->now);
    Sorted sorted;
    for (const CumulativeTask& use : uses) {
        const Value begin = std::max(engine.low(use.start), now);
        if (!engine.fixed(use.start.view) || !engine.isTrue(use.presence)) {
            sorted.others.push_back(use);
        } else if (!engine.fixed(use.end.view)) {
            sorted.addOpen(use, begin, capacity);
        } else if (engine.low(use.end) > begin) {
            sorted.settled.push_back({begin, engine.low(use.end), use.demand});
        }
    }
    sorted.open.emplace_back();
    sorted.openUses.emplace_back();
    std::vector<std::vector<CumulativeTask>> limits;
    for (std::size_t group = 0; group < sorted.open.size(); ++group) {
        limits.push_back(sorted.others);
        for (const CumulativeTask& use : sorted.openUses[group]) {
            limits.back().push_back(use);
        }
        for (const Hold& hold : clipped(sorted.settled, sorted.open[group], capacity)) {
            limits.back().push_back({constant(hold.begin), constant(hold.end), hold.demand, yes()});
        }
    }
    return limits;
}

}  // namespace rangeline::rules
