#include "arrange/rules/formulation.h"

#include <algorithm>
#include <cassert>

#include "model/validate_values.h"

namespace rangeline::rules {
namespace {

/// For each load the longest the ovens may take until they are as it needs them.
std::int64_t sumOfOvenChanges(const Lesson& lesson, const Expanded& expanded) {
    Duration longest;
    for (const Oven& oven : lesson.kitchen.ovens) {
        const Duration heating =
            std::max(oven.warmUpTo(oven.highest),
                     oven.changeOver(oven.lowest, OvenMode::Bake, oven.highest, OvenMode::Bake));
        const Duration cooling =
            oven.changeOver(oven.highest, OvenMode::Bake, oven.lowest, OvenMode::Bake);
        longest = std::max(longest, std::max(heating, cooling) + oven.modeChange);
    }
    return longest.inSeconds() * static_cast<std::int64_t>(expanded.ovenLoads.size());
}

/// Longer than any sensible plan: everything one after the other at the slowest pace.
std::int64_t sumOfAllTimes(const Lesson& lesson, const Expanded& expanded) {
    int slowest = 100;
    for (const Cook& cook : lesson.kitchen.cooks) {
        slowest = std::max(slowest, cook.pacePercent);
    }
    std::int64_t total = 4 * 3600 + sumOfOvenChanges(lesson, expanded);
    for (const Task& task : expanded.tasks) {
        total += task.time.likely.inSeconds() * slowest / 100 + 60 + lesson.head.grain.inSeconds();
    }
    for (const Wait& wait : expanded.waits) {
        total += wait.least ? std::max<std::int64_t>(wait.least->inSeconds(), 0) : 0;
    }
    Duration longestWash;
    for (const Ware& ware : lesson.kitchen.wares) {
        longestWash = std::max(longestWash, ware.cleaning.takes);
    }
    total +=
        longestWash.inSeconds() * slowest / 100 * static_cast<std::int64_t>(expanded.chains.size());
    return total;
}

}  // namespace

Value toValue(Duration duration) {
    return static_cast<Value>(duration.inSeconds());
}
Value toValue(Instant instant) {
    return static_cast<Value>(instant.inSeconds());
}

std::optional<Literal> UnitChoice::of(int unit) const {
    const auto found = std::ranges::find(units, unit);
    if (found == units.end()) {
        return std::nullopt;
    }
    return chosen[static_cast<std::size_t>(found - units.begin())];
}

Formulation::Formulation(const Lesson& wholeLesson, const Expanded& wholeExpanded, Requirements how,
                         const Underway* cooking)
    : lesson(wholeLesson),
      expanded(wholeExpanded),
      underway(cooking),
      requirements(engine, how),
      grain_(toValue(wholeLesson.head.grain)) {
    const std::int64_t total = sumOfAllTimes(lesson, expanded);
    std::int64_t first = 0;
    std::int64_t last = 0;
    for (const Task& task : expanded.tasks) {
        first = std::min(first, servingOf(lesson, task).inSeconds());
        last = std::max(last, servingOf(lesson, task).inSeconds());
    }
    for (const auto& [key, placement] : lesson.placements) {
        first = std::min(first, placement.start.inSeconds());
        last = std::max(last, placement.start.inSeconds());
    }
    if (underway != nullptr) {
        last = std::max(last, underway->now.inSeconds());
        for (const auto& [key, until] : underway->notBefore) {
            last = std::max(last, until.inSeconds());
        }
    }
    constexpr std::int64_t furthest = longestDuration.inSeconds();  // as a lesson can be stored
    earliest = static_cast<Value>(std::max(first - total, std::min(first, -furthest)));
    latest = static_cast<Value>(std::min(last + total, std::max(last, furthest)));
    handsOf.resize(static_cast<std::size_t>(expanded.stations.cooks.size()));
    watchesOf.resize(handsOf.size());
    poolUse.resize(static_cast<std::size_t>(expanded.stations.pools.size()));
    addTasks(*this);
    addWares(*this);
    addBurners(*this);
    addOvens(*this);
    addPools(*this);
    addWaits(*this);
    addCrewLimits(*this);
    addEarliestStart(*this);
    addTogether(*this);
}

Literal Formulation::boolean(bool preferTrue) {
    const Literal literal = engine.newBoolean();
    choices.push_back({literal.view, preferTrue, yes()});
    return literal;
}

View Formulation::variable(Value low, Value high, Value step, bool preferHigh, Literal relevant) {
    const View view = engine.newVariable(low, high, step);
    choices.push_back({view, preferHigh, relevant});
    return view;
}

void Formulation::clause(std::vector<Literal> literals) {
    const auto broken = [this](Literal literal) { return engine.isFalse(literal); };
    if (underway != nullptr && std::ranges::all_of(literals, broken)) {
        return;  // cannot be helped any more
    }
    possible = possible && engine.addClause(std::move(literals));
}

void Formulation::exactlyOne(std::span<const Literal> literals, Literal condition) {
    std::vector<Literal> some(literals.begin(), literals.end());
    some.push_back(no(condition));
    clause(some);
    for (std::size_t i = 0; i < literals.size(); ++i) {
        clause({no(literals[i]), condition});
        for (std::size_t j = i + 1; j < literals.size(); ++j) {
            clause({no(literals[i]), no(literals[j])});
        }
    }
}

Literal Formulation::both(Literal a, Literal b) {
    if (engine.isTrue(a)) {
        return b;
    }
    if (engine.isTrue(b) || a == b) {
        return a;
    }
    const Literal result = boolean();
    clause({no(a), no(b), result});
    clause({no(result), a});
    clause({no(result), b});
    return result;
}

void Formulation::order(TimePoint earlier, TimePoint later, Value gap, Literal condition) {
    const bool broken = underway != nullptr && engine.isTrue(condition) &&
                        engine.low(earlier) + gap > engine.high(later);
    if (!broken && !engine.isFalse(condition)) {
        engine.addDifference(earlier.view, earlier.offset + gap - later.offset, later.view,
                             condition);
    }
}

void Formulation::lack(RequirementKind kind, std::size_t index) {
    possible = false;
    requirements.lack({kind, static_cast<int>(index)});
}

void Formulation::limit(std::vector<CumulativeTask> uses, Value capacity, Literal where) {
    if (underway != nullptr) {
        for (auto& some : limitsUnderway(uses, capacity)) {
            engine::addCumulative(engine, std::move(some), capacity);
        }
        return;
    }
    if (!engine.isTrue(where)) {
        for (CumulativeTask& use : uses) {
            use.presence = both(use.presence, where);
        }
    }
    engine::addCumulative(engine, std::move(uses), capacity);
}

View Formulation::startVariable(const PlacementKey& key, RequirementKind kind, int index) {
    const Placement* pinned = pinnedPlacement(key);
    if (pinned == nullptr || !staysPut(key, *pinned)) {
        return engine.newVariable(earliestOf(key), latest, grain_);
    }
    const Value at = toValue(pinned->start);
    if (!requirements.switched()) {
        return engine.newVariable(at, at);
    }
    const View start = engine.newVariable(earliest, latest, at % grain_ == 0 ? grain_ : 1);
    order(constant(at), {start, 0}, 0, asked(kind, index));
    order({start, 0}, constant(at), 0, asked(kind, index));
    return start;
}

Taken Formulation::taken(const Span& span, const std::vector<int>& holders) {
    Taken result;
    switch (span.begin) {
        case SpanBegin::TaskStart:
            result.begin = startOf(span.beginTask);
            break;
        case SpanBegin::TaskEnd:
            result.begin = endOf(span.beginTask);
            break;
        case SpanBegin::Opening:
            result.begin = constant(earliest - 1);  // before anything that is placed
            break;
    }
    std::vector<TimePoint> ends;
    if (span.endOf >= 0) {
        ends.push_back(endOf(span.endOf));
    }
    for (const int user : span.untilStartOf) {
        ends.push_back(startOf(user));
    }
    const bool outOfTurn =
        std::ranges::any_of(holders, [this](int task) { return hasBegun(task); });
    for (const int task : holders) {
        if (outOfTurn && task != span.endOf && !allLeftOut({task})) {
            ends.push_back(endOf(task));
        }
    }
    if (ends.size() <= 1) {
        result.end = ends.empty() ? result.begin : ends.front();
        return result;
    }
    result.end = {variable(earliest, latest, 1, false, yes()), 0};
    for (const TimePoint end : ends) {
        order(end, result.end, 0, yes());
    }
    return result;
}

const Placement* Formulation::pinnedPlacement(const PlacementKey& key) const {
    const auto found = lesson.placements.find(key);
    const bool pinned =
        found != lesson.placements.end() && (found->second.pinned || found->second.started);
    return pinned ? &found->second : nullptr;
}

std::vector<int> Formulation::crewOf(int group) const {
    std::vector<int> units;
    for (const CookId& id : lesson.head.crew) {
        units.push_back(expanded.stations.cooks.unitOf(cookItem(lesson.kitchen, id), group));
    }
    return units;
}

const Cook& Formulation::cook(int unit) const {
    const int item = expanded.stations.cooks[unit].item;
    return lesson.kitchen.cooks[static_cast<std::size_t>(item)];
}

}  // namespace rangeline::rules
