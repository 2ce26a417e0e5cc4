#include "live/outlook.h"

#include <algorithm>
#include <vector>

#include "rehearse/network.h"

namespace rangeline::live {
namespace {

/// What waits begins at its time in the plan, but no sooner than now or than the cook put it off
/// to.
Instant earliestOf(const Service& service, const PlacementKey& key, Instant planned, Instant now) {
    const Work& work = service.work(key);
    if (work.stage != Stage::Waiting) {
        return planned;
    }
    return std::max({planned, now, work.notBefore.value_or(planned)});
}

std::vector<Instant> begins(const Service& service, const UseIndex& index, const Network& network,
                            Instant now) {
    std::vector<Instant> found(network.activities.size());
    std::size_t next = 0;
    for (std::size_t i = 0; i < found.size(); ++i) {
        const PlacementKey key = index.keyOf(network.activities[i].node);
        found[i] = earliestOf(service, key, network.activities[i].planned, now);
        const bool waits = service.work(key).stage == Stage::Waiting;
        for (;
             next < network.followings.size() && network.followings[next].to == static_cast<int>(i);
             ++next) {
            const Following& after = network.followings[next];
            const Instant from = found[static_cast<std::size_t>(after.from)] + after.fromOffset;
            if (waits) {
                found[i] = std::max(found[i], from + after.gap - after.toOffset);
            }
        }
    }
    return found;
}

}  // namespace

Outlook outlook(const Service& service, Instant now) {
    const Lesson lesson = service.standing(now);
    const UseIndex index(lesson, service.index().expanded());
    const Network network = networkOf(index);
    const auto starts = begins(service, index, network, now);
    Outlook found;
    bool first = true;
    for (const Deadline& deadline : network.plating) {
        const auto number = static_cast<std::size_t>(deadline.activity);
        const Instant at = starts[number] + deadline.offset;
        const PlacementKey key = index.keyOf(network.activities[number].node);
        const Stage stage = service.work(key).stage;
        found.plated &= stage == Stage::Done || stage == Stage::Skipped;
        if (first || at - deadline.latest > found.behind) {
            found.behind = at - deadline.latest;
            found.plating = deadline.latest + std::max(found.behind, Duration());
            first = false;
        }
    }
    return found;
}

}  // namespace rangeline::live
