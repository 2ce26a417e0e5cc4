#include "live/service.h"

#include <algorithm>

namespace rangeline::live {
namespace {

/// When to look, from the start, and whether somebody has to be called for it: what is done by hand
/// without a cue needs no bell.
struct Cue {
    Duration after;
    bool rings = false;
};

Cue cueOf(const UseIndex& index, int node) {
    const Timing& timing = index.placed(node).timing;
    if (!index.isTask(node)) {
        return {timing.length, false};
    }
    const auto stretching =
        static_cast<std::size_t>(index.expanded().tasks[static_cast<std::size_t>(node)].stretching);
    if (stretching >= timing.segments.size()) {
        return {timing.length, timing.length > Duration()};
    }
    const TimedSegment& segment = timing.segments[stretching];
    const bool byHand = segment.attention == Attention::Hands;
    return {segment.offset + segment.length, !byHand || !index.step(node).cue.empty()};
}

bool isOpen(Stage stage) {
    return stage == Stage::Waiting || stage == Stage::Running;
}

}  // namespace

Service::Service(Lesson lesson)
    : plan_(std::make_unique<Plan>(std::move(lesson))),
      followed_(std::make_unique<Plan>(plan_->lesson)) {
    for (const auto& [key, placement] : plan_->lesson.placements) {
        if (plan_->index.nodeOf(key) >= 0) {
            works_.emplace(key, Work());
        }
    }
}

Service Service::copy() const {
    Service made;
    made.plan_ = std::make_unique<Plan>(plan_->lesson);
    made.followed_ = std::make_unique<Plan>(followed_->lesson);
    made.works_ = works_;
    made.lastBell_ = lastBell_;
    made.servedLater_ = servedLater_;
    made.ended_ = ended_;
    return made;
}

bool Service::apply(const Event& event, Instant at) {
    return !ended_ && std::visit([&](const auto& one) { return on(one, at); }, event);
}

Work* Service::find(const PlacementKey& key) {
    const auto found = works_.find(key);
    return found == works_.end() ? nullptr : &found->second;
}

void Service::begin(const PlacementKey& key, Work& work, Instant at) {
    const int node = plan_->index.nodeOf(key);
    const Duration length = plan_->index.placed(node).timing.length;
    const Cue cue = cueOf(plan_->index, node);
    work.stage = Stage::Running;
    work.started = at;
    work.notBefore.reset();
    work.cueAt = at + cue.after;
    work.afterCue = length - cue.after;
    work.bell = cue.rings ? Bell::Counting : Bell::None;
    ++work.generation;
    freeze(key, at, at + length);
}

void Service::freeze(const PlacementKey& key, Instant start, Instant end) {
    Placement& placement = plan_->lesson.placements.at(key);
    placement.start = start;
    placement.started = true;
    placement.lasts = std::max(end - start, Duration());
    plan_->index.update({&key, 1});
}

void Service::finish(const PlacementKey& key, Work& work, Stage stage, Instant at) {
    work.stage = stage;
    work.ended = at;
    work.notBefore.reset();
    work.bell = Bell::None;
    work.bellNumber = 0;
    ++work.generation;
    if (stage == Stage::Skipped && !work.started) {
        plan_->lesson.placements.erase(key);
        plan_->index.update({&key, 1});
    } else {
        freeze(key, work.started.value_or(at), at);
    }
}

int Service::freeBellNumber() {
    constexpr int most = 9;
    for (int i = 0; i < most; ++i) {
        const int number = (lastBell_ + i) % most + 1;
        if (std::ranges::none_of(works_, [&](const auto& one) {
                return one.second.bell == Bell::Ringing && one.second.bellNumber == number;
            })) {
            lastBell_ = number;
            return number;
        }
    }
    return 0;
}

bool Service::on(const Started& event, Instant at) {
    Work* work = find(event.key);
    if (work == nullptr || work->stage != Stage::Waiting) {
        return false;
    }
    begin(event.key, *work, at);
    if (work->afterCue == Duration() && work->cueAt == at) {
        finish(event.key, *work, Stage::Done, at);  // an event has no length
    }
    return true;
}

bool Service::on(const live::Done& event, Instant at) {
    Work* work = find(event.key);
    if (work == nullptr || !isOpen(work->stage)) {
        return false;
    }
    finish(event.key, *work, Stage::Done, std::max(at, work->started.value_or(at)));
    return true;
}

bool Service::putOff(const PlacementKey& key, Instant until) {
    Work* work = find(key);
    if (work == nullptr || !isOpen(work->stage)) {
        return false;
    }
    if (work->stage == Stage::Waiting) {
        work->notBefore = until;
        return true;
    }
    work->cueAt = until;
    work->bell = work->bell == Bell::None ? Bell::None : Bell::Counting;
    work->bellNumber = 0;
    ++work->generation;
    freeze(key, *work->started, until + work->afterCue);
    return true;
}

bool Service::on(const MoreTime& event, Instant at) {
    const Work* work = find(event.key);
    if (work == nullptr || event.by <= Duration()) {
        return false;
    }
    const Instant from =
        work->stage == Stage::Waiting
            ? work->notBefore.value_or(plan_->lesson.placements.at(event.key).start)
            : work->cueAt;
    return putOff(event.key, std::max(from, at) + event.by);
}

bool Service::on(const NotReady& event, Instant at) {
    Work* work = find(event.key);
    if (work == nullptr || event.again <= Duration() || !isOpen(work->stage)) {
        return false;
    }
    ++work->timesNotReady;
    const Instant until = at + event.again;
    return putOff(event.key, work->stage == Stage::Waiting
                                 ? std::max(until, work->notBefore.value_or(until))
                                 : std::max(until, work->cueAt));
}

bool Service::on(const live::Skipped& event, Instant at) {
    Work* work = find(event.key);
    if (work == nullptr || !isOpen(work->stage)) {
        return false;
    }
    finish(event.key, *work, Stage::Skipped, std::max(at, work->started.value_or(at)));
    return true;
}

bool Service::on(const AlarmFired& event, Instant at) {
    Work* work = find(event.key);
    if (work == nullptr || work->generation != event.generation || work->bell != Bell::Counting ||
        at < work->cueAt) {
        return false;
    }
    work->bellNumber = freeBellNumber();
    work->bell = Bell::Ringing;
    work->rangLate = at - work->cueAt;
    return true;
}

bool Service::on(const AlarmStopped& event, Instant /*at*/) {
    Work* work = find(event.key);
    if (work == nullptr || work->generation != event.generation || work->bell != Bell::Ringing) {
        return false;
    }
    work->bell = Bell::Stopped;
    work->bellNumber = 0;
    return true;
}

bool Service::on(const PlanReplaced& event, Instant at) {
    std::vector<PlacementKey> changed;
    for (const PlacementChange& change : event.change.changes) {
        const Work* work = find(change.key);
        if (plan_->index.nodeOf(change.key) < 0 || (work && work->stage != Stage::Waiting)) {
            continue;
        }
        changed.push_back(change.key);
        if (change.placement) {
            plan_->lesson.placements[change.key] = *change.placement;
            works_.try_emplace(change.key);
        } else {
            plan_->lesson.placements.erase(change.key);
            works_.erase(change.key);
        }
    }
    plan_->index.update(changed);
    if (!changed.empty()) {
        followed_ = std::make_unique<Plan>(standing(at));
    }
    return !changed.empty();
}

bool Service::on(const live::ServedLater& event, Instant /*at*/) {
    if (event.by <= Duration()) {
        return false;
    }
    servedLater_ = servedLater_ + event.by;
    return true;
}

bool Service::on(const ClockSet& /*event*/, Instant /*at*/) {
    return true;
}

bool Service::on(const ClockNoted& /*event*/, Instant /*at*/) {
    return true;
}

bool Service::on(const Ended& /*event*/, Instant /*at*/) {
    ended_ = true;
    return true;
}

Lesson Service::standing(Instant now) const {
    Lesson lesson = plan_->lesson;
    for (const auto& [key, work] : works_) {
        if (work.stage == Stage::Running) {
            Placement& placement = lesson.placements.at(key);
            const Instant end = std::max(work.cueAt, now) + work.afterCue;
            placement.lasts = end - placement.start;
        }
    }
    return lesson;
}

}  // namespace rangeline::live
