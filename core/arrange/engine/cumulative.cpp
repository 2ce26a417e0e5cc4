#include "arrange/engine/cumulative.h"

#include <algorithm>
#include <memory>
#include <numeric>

namespace rangeline::engine {
namespace {

Literal startsAtMost(const CumulativeTask& task, Value instant) {
    return {opposite(task.start.view), task.start.offset - instant};
}
Literal endsAtLeast(const CumulativeTask& task, Value instant) {
    return {task.end.view, instant - task.end.offset};
}
Literal startsAtLeast(const CumulativeTask& task, Value instant) {
    return {task.start.view, instant - task.start.offset};
}
Literal endsAtMost(const CumulativeTask& task, Value instant) {
    return {opposite(task.end.view), task.end.offset - instant};
}

/// Whether the task runs at that instant in every solution.
bool runsAt(const Engine& engine, const CumulativeTask& task, Value instant) {
    return engine.isTrue(task.presence) && engine.high(task.start) <= instant &&
           instant < engine.low(task.end);
}

}  // namespace

Cumulative::Cumulative(std::vector<CumulativeTask> tasks, Value capacity)
    : tasks_(std::move(tasks)),
      capacity_(capacity),
      instants_(2 * tasks_.size()),
      runs_(tasks_.size()),
      byTime_(2 * tasks_.size()) {
    std::iota(byTime_.begin(), byTime_.end(), std::uint32_t{0});
}

std::vector<View> Cumulative::watched() const {
    std::vector<View> views;
    for (const CumulativeTask& task : tasks_) {
        views.insert(views.end(), {task.start.view, opposite(task.start.view), task.end.view,
                                   opposite(task.end.view), task.presence.view});
    }
    std::ranges::sort(views);
    const auto repeated = std::ranges::unique(views);
    views.erase(repeated.begin(), repeated.end());
    return views;
}

/// Little has moved since the last time, so that the last order is nearly the new one.
void Cumulative::orderEvents(const Engine& engine) {
    for (std::size_t t = 0; t < tasks_.size(); ++t) {
        const CumulativeTask& task = tasks_[t];
        instants_[2 * t] = engine.high(task.start);
        instants_[2 * t + 1] = engine.low(task.end);
        runs_[t] = instants_[2 * t] < instants_[2 * t + 1] && engine.isTrue(task.presence) ? 1 : 0;
    }
    events_.clear();
    for (const std::uint32_t event : byTime_) {
        if (runs_[event / 2] != 0) {
            std::size_t i = events_.size();
            events_.push_back(event);
            for (; i > 0 && instants_[event] < instants_[events_[i - 1]]; --i) {
                events_[i] = events_[i - 1];
            }
            events_[i] = event;
        }
    }
    auto next = events_.begin();
    for (std::uint32_t& event : byTime_) {
        if (runs_[event / 2] != 0) {
            event = *next++;
        }
    }
}

void Cumulative::buildProfile(const Engine& engine) {
    orderEvents(engine);
    profile_.clear();
    Value height = 0;
    for (std::size_t i = 0; i < events_.size();) {
        const Value begin = instants_[events_[i]];
        for (; i < events_.size() && instants_[events_[i]] == begin; ++i) {
            const Value demand = tasks_[events_[i] / 2].demand;
            height += events_[i] % 2 == 0 ? demand : -demand;
        }
        if (height > 0) {
            profile_.push_back({begin, instants_[events_[i]], height});
        }
    }
}

/// Collects why at least `atLeast` is taken at the instant, largest demands first.
Value Cumulative::explainLoad(const Engine& engine, const CumulativeTask* except, Value instant,
                              Value atLeast) {
    Value load = 0;
    for (const CumulativeTask& task : tasks_) {
        if (load >= atLeast) {
            break;
        }
        if (&task != except && runsAt(engine, task, instant)) {
            because_.push_back(startsAtMost(task, instant));
            because_.push_back(endsAtLeast(task, instant + 1));
            because_.push_back(task.presence);
            load += task.demand;
        }
    }
    return load;
}

bool Cumulative::overload(Engine& engine, const Stretch& stretch) {
    because_.clear();
    explainLoad(engine, nullptr, stretch.begin + (stretch.end - stretch.begin) / 2, capacity_ + 1);
    return engine.conflict(because_);
}

bool Cumulative::rule(Engine& engine, const CumulativeTask& task, Value instant, Literal conclusion,
                      bool needsStart, bool needsEnd, bool needsPresence) {
    because_.clear();
    explainLoad(engine, &task, instant, capacity_ + 1 - task.demand);
    if (needsStart) {
        because_.push_back(startsAtMost(task, instant));
    }
    if (needsEnd) {
        because_.push_back(endsAtLeast(task, instant + 1));
    }
    if (needsPresence) {
        because_.push_back(task.presence);
    }
    return engine.enqueueBecause(conclusion, because_);
}

bool Cumulative::pushStart(Engine& engine, const CumulativeTask& task, const Stretch& stretch) {
    while (stretch.begin < engine.low(task.end)) {
        const Value instant = std::min(stretch.end, engine.low(task.end)) - 1;
        if (engine.low(task.start) > instant) {
            return true;
        }
        if (!rule(engine, task, instant, startsAtLeast(task, instant + 1), false, true, true)) {
            return false;
        }
    }
    return true;
}

bool Cumulative::pullEnd(Engine& engine, const CumulativeTask& task, const Stretch& stretch) {
    while (engine.high(task.start) < stretch.end) {
        const Value instant = std::max(stretch.begin, engine.high(task.start));
        if (engine.high(task.end) <= instant) {
            return true;
        }
        if (!rule(engine, task, instant, endsAtMost(task, instant), true, false, true)) {
            return false;
        }
    }
    return true;
}

std::size_t Cumulative::firstEndingAfter(Value instant) const {
    const auto found = std::ranges::upper_bound(profile_, instant, {}, &Stretch::end);
    return static_cast<std::size_t>(found - profile_.begin());
}

bool Cumulative::blocks(const Engine& engine, const Stretch& stretch,
                        const CumulativeTask& task) const {
    return stretch.height + task.demand > capacity_ && !runsAt(engine, task, stretch.begin);
}

/// Only what lies between the earliest start and the earliest end can push a start, and the
/// earliest end moves with it; likewise backwards from the latest end.
bool Cumulative::narrowPresent(Engine& engine, const CumulativeTask& task) {
    if (engine.fixed(task.start.view) && engine.fixed(task.end.view)) {
        return true;  // it is all in the load
    }
    for (std::size_t i = firstEndingAfter(engine.low(task.start));
         i < profile_.size() && profile_[i].begin < engine.low(task.end); ++i) {
        if (blocks(engine, profile_[i], task) && !pushStart(engine, task, profile_[i])) {
            return false;
        }
    }
    for (std::size_t i = firstEndingAfter(engine.high(task.end) - 1);; --i) {
        if (i < profile_.size() && profile_[i].begin < engine.high(task.end)) {
            if (profile_[i].end <= engine.high(task.start)) {
                return true;
            }
            if (blocks(engine, profile_[i], task) && !pullEnd(engine, task, profile_[i])) {
                return false;
            }
        }
        if (i == 0) {
            return true;
        }
    }
}

/// A task that would run where there is no room for it is not there.
bool Cumulative::narrowAbsent(Engine& engine, const CumulativeTask& task) {
    if (engine.high(task.start) >= engine.low(task.end)) {
        return true;  // it need not run at any one instant
    }
    for (std::size_t i = firstEndingAfter(engine.high(task.start));
         i < profile_.size() && profile_[i].begin < engine.low(task.end); ++i) {
        if (profile_[i].height + task.demand > capacity_) {
            const Value instant = std::max(engine.high(task.start), profile_[i].begin);
            return rule(engine, task, instant, engine.negated(task.presence), true, true, false);
        }
    }
    return true;
}

bool Cumulative::propagate(Engine& engine) {
    buildProfile(engine);
    Value highest = 0;
    for (const Stretch& stretch : profile_) {
        if (stretch.height > capacity_) {
            return overload(engine, stretch);
        }
        highest = std::max(highest, stretch.height);
    }
    for (const CumulativeTask& task : tasks_) {
        if (highest + task.demand <= capacity_) {
            return true;  // nor do those that follow, which take no more
        }
        if (engine.isTrue(task.presence)
                ? !narrowPresent(engine, task)
                : !engine.isFalse(task.presence) && !narrowAbsent(engine, task)) {
            return false;
        }
    }
    return true;
}

void addCumulative(Engine& engine, std::vector<CumulativeTask> tasks, Value capacity) {
    std::erase_if(tasks, [](const CumulativeTask& task) { return task.demand <= 0; });
    Value total = 0;
    for (const CumulativeTask& task : tasks) {
        total += task.demand;
    }
    if (total <= capacity) {
        return;
    }
    std::ranges::stable_sort(tasks, std::greater(), &CumulativeTask::demand);
    auto propagator = std::make_unique<Cumulative>(std::move(tasks), capacity);
    const std::vector<View> watched = propagator->watched();
    engine.addPropagator(std::move(propagator), watched);
}

}  // namespace rangeline::engine
