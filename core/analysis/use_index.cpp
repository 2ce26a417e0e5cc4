#include "analysis/use_index.h"

#include <algorithm>

#include "analysis/at.h"

namespace rangeline {
namespace {

std::vector<bool> sharedCooks(const Lesson& lesson, const Stations& stations) {
    std::vector<bool> shared;
    for (int unit = 0; unit < stations.cooks.size(); ++unit) {
        const CookId& id = at(lesson.kitchen.cooks, stations.cooks[unit].item).id;
        shared.push_back(lesson.head.groups.count > 1 &&
                         std::ranges::find(lesson.head.groups.shared, id.text) !=
                             lesson.head.groups.shared.end());
    }
    return shared;
}

std::vector<bool> crewItems(const Lesson& lesson) {
    std::vector<bool> crew;
    for (const Cook& cook : lesson.kitchen.cooks) {
        crew.push_back(std::ranges::find(lesson.head.crew, cook.id) != lesson.head.crew.end());
    }
    return crew;
}

}  // namespace

UseIndex::UseIndex(const Lesson& lesson, const Expanded& expanded)
    : lesson_(&lesson),
      expanded_(&expanded),
      touches_(lesson, expanded),
      firstTurnOn_(static_cast<int>(expanded.tasks.size() + expanded.chains.size())),
      sharedCooks_(sharedCooks(lesson, expanded.stations)),
      crew_(crewItems(lesson)),
      placed_(static_cast<std::size_t>(firstTurnOn_ + expanded.stations.ovens.size())),
      burnerAt_(expanded.burnerHolds.size()),
      ovenAt_(expanded.ovenLoads.size()),
      wareAt_(expanded.chains.size()),
      washAt_(expanded.chains.size()),
      poolAt_(expanded.poolHolds.size()),
      sinkAt_(expanded.chains.size()),
      cooksAt_(placed_.size()),
      burners_(expanded.stations.burners.size()),
      ovens_(expanded.stations.ovens.size()),
      wares_(expanded.stations.wares.size()),
      pools_(expanded.stations.pools.size()),
      hands_(expanded.stations.cooks.size()),
      watches_(expanded.stations.cooks.size()) {
    for (const auto& [key, placement] : lesson.placements) {
        if (const int node = nodeOf(key); node >= 0) {
            at(placed_, node).placement = &placement;
        }
    }
    readAll();
}

int UseIndex::count(Subject sort) const {
    switch (sort) {
        case Subject::Task:
            return tasks();
        case Subject::Wash:
            return static_cast<int>(expanded_->chains.size());
        case Subject::TurnOn:
        case Subject::Oven:
            return stations().ovens.size();
        case Subject::Wait:
            return static_cast<int>(expanded_->waits.size());
        case Subject::Window:
            return static_cast<int>(expanded_->windows.size());
        case Subject::Burner:
            return stations().burners.size();
        case Subject::Ware:
            return stations().wares.size();
        case Subject::Pool:
            return stations().pools.size();
        case Subject::Cook:
            return stations().cooks.size();
        case Subject::Whole:
            return 1;
    }
    return 0;
}

// ---- placements -----------------------------------------------------------------------------

int UseIndex::nodeOf(const PlacementKey& key) const {
    if (const auto* step = std::get_if<StepKey>(&key)) {
        return expanded_->taskOf(*step);
    }
    if (const auto* wash = std::get_if<WashKey>(&key)) {
        const int chain = touches_.chainOf(*wash);
        return chain < 0 ? -1 : washNode(chain);
    }
    const auto& turnOn = std::get<TurnOnKey>(key);
    const int item = ovenItem(kitchen(), turnOn.oven);
    if (item < 0 || turnOn.group < 0 || turnOn.group >= lesson_->head.groups.count) {
        return -1;
    }
    const int unit = stations().ovens.unitOf(item, turnOn.group);
    return stations().ovens[unit].group == turnOn.group ? turnOnNode(unit) : -1;
}

PlacementKey UseIndex::keyOf(int node) const {
    if (isTask(node)) {
        return at(expanded_->tasks, node).key;
    }
    if (isWash(node)) {
        return at(expanded_->chains, chainOfWash(node)).key;
    }
    const Unit& unit = stations().ovens[ovenOfTurnOn(node)];
    return TurnOnKey{at(kitchen().ovens, unit.item).id, unit.group};
}

int UseIndex::groupOf(int node) const {
    if (isTask(node)) {
        return at(expanded_->tasks, node).key.group;
    }
    return isWash(node) ? at(expanded_->chains, chainOfWash(node)).group
                        : stations().ovens[ovenOfTurnOn(node)].group;
}

const Step& UseIndex::step(int task) const {
    return stepOf(*lesson_, at(expanded_->tasks, task));
}

// ---- times ----------------------------------------------------------------------------------

std::optional<PointInTime> UseIndex::timeOf(const StepPoint& point) const {
    PointInTime found{point.fixed, -1};
    for (const int task : point.tasks) {
        if (!placed(task)) {
            return std::nullopt;
        }
        const Interval& interval = placed(task).interval;
        const bool first = found.task < 0;
        if (point.end == StepEnd::Start && (first || interval.begin < found.at)) {
            found = {interval.begin, task};
        } else if (point.end == StepEnd::End && (first || interval.end > found.at)) {
            found = {interval.end, task};
        }
    }
    return found;
}

std::optional<Interval> UseIndex::intervalOf(const Span& span, std::span<const int> tasks) const {
    Interval interval{longBefore, longBefore};
    if (span.begin != SpanBegin::Opening) {
        const Placed& from = placed(span.beginTask);
        if (!from) {
            return std::nullopt;
        }
        interval.begin =
            span.begin == SpanBegin::TaskStart ? from.interval.begin : from.interval.end;
        interval.end = interval.begin;
    }
    const auto lastUntilEndOf = [&](int task) {
        if (task >= 0 && placed(task)) {
            interval.end = std::max(interval.end, placed(task).interval.end);
        }
    };
    lastUntilEndOf(span.endOf);
    std::ranges::for_each(tasks, lastUntilEndOf);
    for (const int user : span.untilStartOf) {
        if (placed(user)) {
            interval.end = std::max(interval.end, placed(user).interval.begin);
        }
    }
    return interval;
}

// ---- where things are -----------------------------------------------------------------------

const Ware* UseIndex::wareOf(int chain) const {
    const int unit = wareUnit(chain);
    return unit < 0 ? nullptr : &wareOfUnit(unit);
}
const Burner& UseIndex::burnerOf(int unit) const {
    return at(kitchen().burners, stations().burners[unit].item);
}
const Oven& UseIndex::ovenOf(int unit) const {
    return at(kitchen().ovens, stations().ovens[unit].item);
}
const Ware& UseIndex::wareOfUnit(int unit) const {
    return at(kitchen().wares, stations().wares[unit].item);
}
const Pool& UseIndex::poolOf(int unit) const {
    return at(kitchen().pools, stations().pools[unit].item);
}
const Cook& UseIndex::cookOf(int unit) const {
    return at(kitchen().cooks, stations().cooks[unit].item);
}

int UseIndex::cookUnit(const CookId& cook, int group) const {
    const int item = cookItem(kitchen(), cook);
    return item < 0 || !at(crew_, item) ? -1 : stations().cooks.unitOf(item, group);
}

bool UseIndex::attends(int cookUnit, int talk) const {
    const int group = groupOf(talk);
    const auto& givers = placed(talk).placement->hands;
    const bool gives = std::ranges::any_of(
        givers, [&](const Share& share) { return this->cookUnit(share.cook, group) == cookUnit; });
    return !gives && (isSharedCook(cookUnit) || stations().cooks[cookUnit].group == group);
}

}  // namespace rangeline
