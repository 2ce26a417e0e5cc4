#include "analysis/touches.h"

#include <algorithm>
#include <numeric>

#include "analysis/at.h"

namespace rangeline {

Touches::Touches(const Lesson& lesson, const Expanded& expanded)
    : tasks_(expanded.tasks.size()),
      watchedUntil_(expanded.tasks.size(), -1),
      watchedSince_(expanded.tasks.size(), -1),
      expanded_(&expanded),
      chainsByKey_(expanded.chains.size()) {
    addChains(expanded);
    addHeat(expanded);
    addRules(expanded);
    for (int task = 0; task < static_cast<int>(tasks_.size()); ++task) {
        if (stepOf(lesson, at(expanded.tasks, task)).classWatches) {
            talks_.push_back(task);
        }
    }
    std::iota(chainsByKey_.begin(), chainsByKey_.end(), 0);
    std::ranges::sort(chainsByKey_, std::less<>(),
                      [&](int chain) -> const WashKey& { return at(expanded.chains, chain).key; });
}

int Touches::chainOf(const WashKey& key) const {
    const auto keyOf = [this](int chain) -> const WashKey& {
        return at(expanded_->chains, chain).key;
    };
    const auto found = std::ranges::lower_bound(chainsByKey_, key, std::less<>(), keyOf);
    return found != chainsByKey_.end() && keyOf(*found) == key ? *found : -1;
}

/// Indexes come in ascending order, so a repetition can only be the last one.
void Touches::add(int task, List list, int index) {
    if (task < 0) {
        return;
    }
    std::vector<int>& indexes = at(tasks_, task).*list;
    if (indexes.empty() || indexes.back() != index) {
        indexes.push_back(index);
    }
}

void Touches::addSpan(const Span& span, List list, int index) {
    add(span.beginTask, list, index);
    add(span.endOf, list, index);
    for (const int user : span.untilStartOf) {
        add(user, list, index);
    }
}

void Touches::addChains(const Expanded& expanded) {
    for (int i = 0; i < static_cast<int>(expanded.chains.size()); ++i) {
        const Chain& chain = at(expanded.chains, i);
        addSpan(chain.span, &OfTask::chains, i);
        add(chain.owner, &OfTask::chains, i);
        for (const int task : chain.tasks) {
            add(task, &OfTask::chains, i);
        }
    }
}

void Touches::addHeat(const Expanded& expanded) {
    const auto addOwners = [&](const std::vector<int>& chains, List list, int index) {
        for (const int chain : chains) {
            add(at(expanded.chains, chain).owner, list, index);
        }
    };
    for (int i = 0; i < static_cast<int>(expanded.burnerHolds.size()); ++i) {
        const BurnerHold& hold = at(expanded.burnerHolds, i);
        addSpan(hold.span, &OfTask::burnerHolds, i);
        add(hold.owner, &OfTask::burnerHolds, i);
        addOwners(hold.chains, &OfTask::burnerHolds, i);
        for (const int task : hold.tasks) {
            add(task, &OfTask::burnerHolds, i);
        }
    }
    for (int i = 0; i < static_cast<int>(expanded.ovenLoads.size()); ++i) {
        const OvenLoad& load = at(expanded.ovenLoads, i);
        addSpan(load.span, &OfTask::ovenLoads, i);
        add(load.owner, &OfTask::ovenLoads, i);
        addOwners(load.chains, &OfTask::ovenLoads, i);
    }
}

void Touches::addRules(const Expanded& expanded) {
    for (const WatchedWait& wait : expanded.watchedWaits) {
        at(watchedUntil_, wait.task) = wait.next;
        at(watchedSince_, wait.next) = wait.task;
    }
    for (int i = 0; i < static_cast<int>(expanded.poolHolds.size()); ++i) {
        addSpan(at(expanded.poolHolds, i).span, &OfTask::poolHolds, i);
        add(at(expanded.poolHolds, i).owner, &OfTask::poolHolds, i);
    }
    for (int i = 0; i < static_cast<int>(expanded.waits.size()); ++i) {
        for (const StepPoint* point : {&at(expanded.waits, i).from, &at(expanded.waits, i).to}) {
            for (const int task : point->tasks) {
                add(task, &OfTask::waits, i);
            }
        }
    }
    for (int i = 0; i < static_cast<int>(expanded.windows.size()); ++i) {
        add(at(expanded.windows, i).task, &OfTask::windows, i);
    }
}

}  // namespace rangeline
