#include "arrange/engine/cumulative.h"

#include <algorithm>
#include <limits>
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
      known_(tasks_.size()),
      isAwake_(tasks_.size(), 1),
      moved_(tasks_.size()),
      isMoved_(tasks_.size(), 1),
      instants_(2 * tasks_.size()),
      runs_(tasks_.size()),
      byTime_(2 * tasks_.size()) {
    std::iota(moved_.begin(), moved_.end(), std::uint32_t{0});
    std::iota(byTime_.begin(), byTime_.end(), std::uint32_t{0});
}

std::vector<Watched> Cumulative::watched() const {
    std::vector<Watched> watched;
    for (std::uint32_t t = 0; t < tasks_.size(); ++t) {
        const CumulativeTask& task = tasks_[t];
        for (const View view : {task.start.view, opposite(task.start.view), task.end.view,
                                opposite(task.end.view), task.presence.view}) {
            watched.push_back({view, t});
        }
    }
    return watched;
}

void Cumulative::moved(std::uint32_t part) {
    if (isMoved_[part] == 0) {
        isMoved_[part] = 1;
        moved_.push_back(part);
    }
}

Cumulative::Known Cumulative::known(const Engine& engine, const CumulativeTask& task) {
    return {engine.low(task.start), engine.high(task.start), engine.low(task.end),
            engine.high(task.end), engine.isTrue(task.presence)};
}

/// Few tasks move between two calls, and most of them not where they run whatever happens: the
/// profile stays, or changes within a stretch.
void Cumulative::readMoves(const Engine& engine) {
    Value from = std::numeric_limits<Value>::max();
    Value to = std::numeric_limits<Value>::min();
    for (const std::uint32_t t : moved_) {
        const Known now = known(engine, tasks_[t]);
        for (const Known& each : {known_[t], now}) {
            if (each.runs() && !now.runsAs(known_[t])) {
                from = std::min(from, each.latestStart);
                to = std::max(to, each.earliestEnd);
            }
        }
        known_[t] = now;
        runs_[t] = now.runs() ? 1 : 0;
        instants_[2 * t] = now.latestStart;
        instants_[2 * t + 1] = now.earliestEnd;
        isMoved_[t] = 0;
        isAwake_[t] = 1;
    }
    moved_.clear();
    if (from < to) {
        buildProfile();
        wakeWithin(from, to);
    }
}

void Cumulative::wakeWithin(Value from, Value to) {
    for (std::size_t t = 0; t < tasks_.size(); ++t) {
        if (known_[t].earliestStart < to && from < known_[t].latestEnd) {
            isAwake_[t] = 1;
        }
    }
}

/// Little has moved since the last time, so that the last order is nearly the new one.
void Cumulative::orderEvents() {
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

void Cumulative::buildProfile() {
    orderEvents();
    profile_.clear();
    highest_ = 0;
    Value height = 0;
    for (std::size_t i = 0; i < events_.size();) {
        const Value begin = instants_[events_[i]];
        for (; i < events_.size() && instants_[events_[i]] == begin; ++i) {
            const Value demand = tasks_[events_[i] / 2].demand;
            height += events_[i] % 2 == 0 ? demand : -demand;
        }
        if (height > 0) {
            profile_.push_back({begin, instants_[events_[i]], height});
            highest_ = std::max(highest_, height);
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

bool Cumulative::overload(Engine& engine) {
    const auto stretch = std::ranges::find_if(
        profile_, [this](const Stretch& one) { return one.height > capacity_; });
    because_.clear();
    explainLoad(engine, nullptr, stretch->begin + (stretch->end - stretch->begin) / 2,
                capacity_ + 1);
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

bool Cumulative::narrow(Engine& engine, const CumulativeTask& task) {
    return engine.isTrue(task.presence)
               ? narrowPresent(engine, task)
               : engine.isFalse(task.presence) || narrowAbsent(engine, task);
}

bool Cumulative::propagate(Engine& engine) {
    readMoves(engine);
    if (highest_ > capacity_) {
        return overload(engine);
    }
    for (std::size_t t = 0; t < tasks_.size(); ++t) {
        if (highest_ + tasks_[t].demand <= capacity_) {
            return true;  // nor do those that follow, which take no more
        }
        if (isAwake_[t] != 0) {
            if (!narrow(engine, tasks_[t])) {
                return false;
            }
            isAwake_[t] = 0;
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
    const std::vector<Watched> watched = propagator->watched();
    engine.addPropagator(std::move(propagator), watched);
}

}  // namespace rangeline::engine
