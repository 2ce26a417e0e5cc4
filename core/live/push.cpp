#include "live/push.h"

#include <algorithm>
#include <map>

namespace rangeline::live {
namespace {

/// The first whole multiple of the grain that is not before it.
Instant onGrain(Instant at, Duration grain) {
    const std::int64_t size = std::max<std::int64_t>(grain.inSeconds(), 1);
    const std::int64_t over = ((at.inSeconds() % size) + size) % size;
    return over == 0 ? at : at + Duration::seconds(size - over);
}

bool isMade(const Service& service, const StepKey& key) {
    const auto found = service.works().find(key);
    return found != service.works().end() &&
           (found->second.stage == Stage::Done || found->second.stage == Stage::Running);
}

std::vector<HeldFood> heldFor(const Service& service,
                              const std::map<PlacementKey, Instant>& moved) {
    std::vector<HeldFood> held;
    const Expanded& expanded = service.index().expanded();
    for (const Wait& wait : expanded.waits) {
        if (wait.origin != WaitOrigin::Uses) {
            continue;
        }
        for (const int to : wait.to.tasks) {
            const StepKey& user = expanded.tasks[static_cast<std::size_t>(to)].key;
            const auto found = moved.find(user);
            for (const int from : wait.from.tasks) {
                const StepKey& made = expanded.tasks[static_cast<std::size_t>(from)].key;
                if (found != moved.end() && isMade(service, made)) {
                    held.push_back({made, user, found->second});
                }
            }
        }
    }
    std::ranges::stable_sort(held, {}, &HeldFood::at);
    return held;
}

}  // namespace

Push push(const Service& service, const Course& course) {
    Push found;
    std::map<PlacementKey, Instant> moved;
    const Placements& placements = service.lesson().placements;
    for (std::size_t i = 0; i < course.keys.size(); ++i) {
        const auto placed = placements.find(course.keys[i]);
        if (!course.goings[i].waits || placed == placements.end()) {
            continue;
        }
        const Instant to = onGrain(course.goings[i].begin, service.lesson().head.grain);
        if (to > placed->second.start) {
            Placement later = placed->second;
            later.start = to;
            found.change.changes.push_back({course.keys[i], later});
            found.moved.push_back({course.keys[i], placed->second.start, to});
            moved.emplace(course.keys[i], to);
        }
    }
    std::ranges::stable_sort(found.moved, {}, &MovedStep::to);
    found.held = heldFor(service, moved);
    return found;
}

}  // namespace rangeline::live
