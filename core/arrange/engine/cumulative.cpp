#include "arrange/engine/cumulative.h"

#include <algorithm>
#include <memory>

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
    : tasks_(std::move(tasks)), capacity_(capacity) {}

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

void Cumulative::buildProfile(const Engine& engine) {
    events_.clear();
    for (const CumulativeTask& task : tasks_) {
        if (engine.isTrue(task.presence)) {
            const Value begin = engine.high(task.start);
            const Value end = engine.low(task.end);
            if (begin < end) {
                events_.push_back({begin, task.demand});
                events_.push_back({end, -task.demand});
            }
        }
    }
    std::ranges::sort(events_, [](const Event& a, const Event& b) {
        return std::pair(a.at, a.change) < std::pair(b.at, b.change);
    });
    profile_.clear();
    Value height = 0;
    for (std::size_t i = 0; i < events_.size();) {
        const Value begin = events_[i].at;
        for (; i < events_.size() && events_[i].at == begin; ++i) {
            height += events_[i].change;
        }
        if (height > 0) {
            profile_.push_back({begin, events_[i].at, height});
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

bool Cumulative::narrow(Engine& engine, const CumulativeTask& task) {
    const bool present = engine.isTrue(task.presence);
    for (const Stretch& stretch : profile_) {
        const bool own = present && runsAt(engine, task, stretch.begin);
        if (stretch.height - (own ? task.demand : 0) + task.demand <= capacity_ || own) {
            continue;
        }
        if (present) {
            if (!pushStart(engine, task, stretch) || !pullEnd(engine, task, stretch)) {
                return false;
            }
        } else {
            const Value begin = std::max(engine.high(task.start), stretch.begin);
            if (begin < std::min(engine.low(task.end), stretch.end)) {
                return rule(engine, task, begin, engine.negated(task.presence), true, true, false);
            }
        }
    }
    return true;
}

bool Cumulative::propagate(Engine& engine) {
    buildProfile(engine);
    for (const Stretch& stretch : profile_) {
        if (stretch.height > capacity_) {
            return overload(engine, stretch);
        }
    }
    if (profile_.empty()) {
        return true;
    }
    return std::ranges::all_of(tasks_, [&](const CumulativeTask& task) {
        return engine.isFalse(task.presence) || narrow(engine, task);
    });
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
