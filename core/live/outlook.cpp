#include "live/outlook.h"

#include <algorithm>
#include <vector>

#include "rehearse/network.h"

namespace rangeline::live {
namespace {

/// An activity of the plan as it goes: when it begins, and how much longer it takes.
struct Going {
    Instant begin;
    Duration longer;
    bool waits = false;
};

/// Where an instant of an activity lies now: what comes after the part that stretches moves along.
Duration offsetIn(const Activity& activity, Duration offset, Duration longer) {
    return offset >= activity.stretchEnd ? offset + longer : offset;
}

/// What waits begins at its time in the plan, but no sooner than now or than the cook put it off
/// to. What was skipped holds up nothing.
Going goingOf(const Service& service, const PlacementKey& key, const Activity& activity,
              Instant now) {
    const auto known = service.works().find(key);
    if (known == service.works().end()) {
        return {activity.planned, -activity.length, false};
    }
    const Work& work = known->second;
    if (work.stage == Stage::Waiting) {
        return {std::max({activity.planned, now, work.notBefore.value_or(now)}), {}, true};
    }
    const Instant end =
        work.stage == Stage::Running ? std::max(work.cueAt, now) + work.afterCue : *work.ended;
    const Instant begin = work.started.value_or(std::min(activity.planned, end));
    return {begin, end - begin - activity.length, false};
}

std::vector<Going> goings(const Service& service, const Network& network, Instant now) {
    std::vector<Going> found;
    std::size_t next = 0;
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        const Activity& activity = network.activities[i];
        Going going = goingOf(service, service.followed().keyOf(activity.node), activity, now);
        for (;
             next < network.followings.size() && network.followings[next].to == static_cast<int>(i);
             ++next) {
            const Following& after = network.followings[next];
            const auto from = static_cast<std::size_t>(after.from);
            const Instant reached =
                found[from].begin +
                offsetIn(network.activities[from], after.fromOffset, found[from].longer);
            if (going.waits) {
                going.begin = std::max(going.begin, reached + after.gap - after.toOffset);
            }
        }
        found.push_back(going);
    }
    return found;
}

}  // namespace

Outlook outlook(const Service& service, Instant now) {
    const Network network = networkOf(service.followed());
    const auto going = goings(service, network, now);
    Outlook found;
    bool first = true;
    for (const Deadline& deadline : network.plating) {
        const auto number = static_cast<std::size_t>(deadline.activity);
        const Activity& activity = network.activities[number];
        const PlacementKey key = service.followed().keyOf(activity.node);
        const auto known = service.works().find(key);
        if (known == service.works().end() || known->second.stage == Stage::Skipped) {
            continue;
        }
        const Instant at =
            going[number].begin + offsetIn(activity, deadline.offset, going[number].longer);
        found.plated &= known->second.stage == Stage::Done;
        if (first || at - deadline.latest > found.behind) {
            found.behind = at - deadline.latest;
            found.plating = deadline.latest + std::max(found.behind, Duration());
            first = false;
        }
    }
    return found;
}

}  // namespace rangeline::live
