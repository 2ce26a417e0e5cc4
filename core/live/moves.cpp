#include "live/moves.h"

#include <algorithm>

namespace rangeline::live {
namespace {

bool isMade(const Service& service, const StepKey& key) {
    const auto found = service.works().find(key);
    return found != service.works().end() &&
           (found->second.stage == Stage::Done || found->second.stage == Stage::Running);
}

std::vector<HeldFood> heldFor(const Service& service,
                              const std::map<PlacementKey, Instant>& later) {
    std::vector<HeldFood> held;
    const Expanded& expanded = service.index().expanded();
    for (const Wait& wait : expanded.waits) {
        if (wait.origin != WaitOrigin::Uses) {
            continue;
        }
        for (const int to : wait.to.tasks) {
            const StepKey& user = expanded.tasks[static_cast<std::size_t>(to)].key;
            const auto found = later.find(user);
            for (const int from : wait.from.tasks) {
                const StepKey& made = expanded.tasks[static_cast<std::size_t>(from)].key;
                if (found != later.end() && isMade(service, made)) {
                    held.push_back({made, user, found->second});
                }
            }
        }
    }
    std::ranges::stable_sort(held, {}, &HeldFood::at);
    return held;
}

}  // namespace

Moves moves(const Service& service, const std::map<PlacementKey, Instant>& before,
            const std::map<PlacementKey, Instant>& after) {
    Moves found;
    std::map<PlacementKey, Instant> later;
    for (const auto& [key, to] : after) {
        const auto was = before.find(key);
        if (was == before.end() || std::max(to - was->second, was->second - to) < movesFrom) {
            continue;
        }
        found.moved.push_back({key, was->second, to});
        if (to > was->second) {
            later.emplace(key, to);
        }
    }
    std::ranges::stable_sort(found.moved, {}, &MovedStep::to);
    found.held = heldFor(service, later);
    return found;
}

}  // namespace rangeline::live
