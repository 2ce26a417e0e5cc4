#include "support/off_plan.h"

#include <algorithm>

#include "analysis/use_index.h"

namespace rangeline::test {
namespace {

struct Times {
    Instant start;
    Duration length;
};

Times realTimes(Random& random, const Interval& planned, const Straying& straying) {
    const Duration late = Duration::seconds(random.between(-straying.late / 2, straying.late));
    const std::int64_t percent = random.between(straying.shortest, straying.longest);
    const Duration length = planned.end - planned.begin;
    return {planned.begin + late, Duration::seconds(length.inSeconds() * percent / 100)};
}

Instant someInstant(Random& random, const Placements& placements) {
    Instant first = Instant::atSeconds(0);
    Instant last = Instant::atSeconds(0);
    for (const auto& [key, placement] : placements) {
        first = std::min(first, placement.start);
        last = std::max(last, placement.start);
    }
    return Instant::atSeconds(random.between(first.inSeconds(), last.inSeconds()));
}

/// Nothing is washed before it was used. Steps come before washes in the map.
bool hasBeenUsed(const OffPlan& cooked, const PlacementKey& key) {
    const auto* wash = std::get_if<WashKey>(&key);
    return wash == nullptr || cooked.underway.leftOut.contains(wash->after) ||
           cooked.lesson.placements.at(wash->after).started;
}

}  // namespace

OffPlan cookOffPlan(Random& random, const Lesson& planned, const Straying& straying) {
    const Expanded expanded = expand(planned);
    const UseIndex index(planned, expanded);
    OffPlan cooked{planned, {}};
    cooked.underway.now = someInstant(random, planned.placements);
    const Instant now = cooked.underway.now;
    for (const auto& [key, placement] : planned.placements) {
        const Interval interval = index.placed(index.nodeOf(key)).interval;
        const Times real = realTimes(random, interval, straying);
        if (random.chance(straying.skipped)) {
            cooked.underway.leftOut.insert(key);
            cooked.lesson.placements.erase(key);
        } else if (real.start <= now && hasBeenUsed(cooked, key) &&
                   !(interval.begin + straying.overdue > now && random.chance(straying.notBegun))) {
            Placement& begun = cooked.lesson.placements.at(key);
            begun.start = real.start;
            begun.started = true;
            begun.lasts = real.length;
        } else if (random.chance(straying.putOff)) {
            cooked.underway.notBefore[key] = now + Duration::seconds(random.between(1, 600));
        }
    }
    return cooked;
}

bool isExcused(const Finding& finding, const Lesson& lesson, const Underway& underway) {
    if (finding.severity != Severity::Collision || finding.keys.empty()) {
        return true;
    }
    const auto settled = [&](const PlacementKey& key) {
        const auto found = lesson.placements.find(key);
        return underway.leftOut.contains(key) ||
               (found != lesson.placements.end() &&
                (found->second.started || found->second.start <= underway.now - lesson.head.grain));
    };
    // Food from before the lesson goes by the name of what it is for.
    const auto stored = [&](const PlacementKey& key) {
        const auto found = lesson.placements.find(key);
        return found != lesson.placements.end() && found->second.start >= finding.interval.end;
    };
    switch (finding.code) {
        case FindingCode::NotFinished:
            return true;  // out late is late
        case FindingCode::KeptTooLong:
        case FindingCode::TooLateAfter:
            return settled(finding.keys.front()) || settled(finding.keys.back());
        case FindingCode::StoredTooLong:
            return true;
        case FindingCode::TooEarlyAfter:
            return settled(finding.keys.back());
        case FindingCode::NotYetWashed:
            return settled(finding.keys[1]) || settled(finding.keys[2]);
        case FindingCode::OvenNotTurnedOn:
            return std::ranges::any_of(underway.leftOut, [](const PlacementKey& key) {
                return std::holds_alternative<TurnOnKey>(key);
            });
        default:
            // Of two at once, both have begun if that is past.
            return finding.interval.end <= underway.now ||
                   finding.interval.begin <= underway.now - lesson.head.grain ||
                   std::ranges::all_of(
                       finding.keys, [&](const auto& key) { return settled(key) || stored(key); });
    }
}

}  // namespace rangeline::test
