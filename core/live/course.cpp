#include "live/course.h"

#include <algorithm>

namespace rangeline::live {
namespace {

/// Where an instant of an activity lies now: what comes after the part that stretches moves along,
/// and nothing lies behind its end.
Duration offsetIn(const Activity& activity, Duration offset, Duration longer) {
    const Duration length = std::max(activity.length + longer, Duration());
    const Duration moved = offset >= activity.stretchEnd ? offset + longer : offset;
    return std::min(moved, std::max(length, offset - activity.length + length));
}

/// What waits begins at its time in the plan, but no sooner than now or than the cook put it off
/// to. What was skipped takes no time; it only passes on what it would have waited for.
Going goingOf(const Service& service, const PlacementKey& key, const Activity& activity,
              Instant now) {
    const auto known = service.works().find(key);
    const bool gone = known == service.works().end() ||
                      (known->second.stage == Stage::Skipped && !known->second.started);
    if (gone) {
        return {longBefore, -activity.length, true, longBefore};
    }
    const Work& work = known->second;
    if (work.stage == Stage::Waiting) {
        const Instant due = std::max(activity.planned, work.notBefore.value_or(activity.planned));
        return {std::max(due, now), {}, true, due};
    }
    const Instant end =
        work.stage == Stage::Running ? std::max(work.cueAt, now) + work.afterCue : *work.ended;
    const Instant begin = work.started.value_or(std::min(activity.planned, end));
    return {begin, end - begin - activity.length, false, begin};
}

}  // namespace

Instant Course::at(std::size_t activity, Duration offset) const {
    const Going& going = goings[activity];
    return going.begin + offsetIn(network.activities[activity], offset, going.longer);
}

std::map<PlacementKey, Instant> Course::dues() const {
    std::map<PlacementKey, Instant> found;
    for (std::size_t i = 0; i < keys.size(); ++i) {
        if (goings[i].waits && goings[i].due > longBefore) {
            found.emplace(keys[i], goings[i].due);
        }
    }
    return found;
}

Course courseOf(const Service& service, Instant now) {
    Course course{networkOf(service.followed()), {}, {}};
    std::size_t next = 0;
    for (std::size_t i = 0; i < course.network.activities.size(); ++i) {
        const Activity& activity = course.network.activities[i];
        const PlacementKey key = service.followed().keyOf(activity.node);
        Going going = goingOf(service, key, activity, now);
        for (; next < course.network.followings.size() &&
               course.network.followings[next].to == static_cast<int>(i);
             ++next) {
            const Following& after = course.network.followings[next];
            const Instant reached =
                course.at(static_cast<std::size_t>(after.from), after.fromOffset);
            if (going.waits) {
                const Instant allowed = reached + after.gap - after.toOffset;
                going.begin = std::max(going.begin, allowed);
                going.due = std::max(going.due, allowed);
            }
        }
        course.goings.push_back(going);
        course.keys.push_back(key);
    }
    return course;
}

}  // namespace rangeline::live
