#include "arrange/engine/energy.h"

#include <algorithm>
#include <limits>
#include <memory>
#include <numeric>

namespace rangeline::engine {
namespace {

/// Calls. Finding nothing again and again it looks less often; nothing is lost but a conflict that
/// comes later.
constexpr int longestPause = 7;

constexpr std::int64_t never = std::numeric_limits<std::int64_t>::min() / 4;

Literal startsAtLeast(const EnergyTask& task, Value instant) {
    return {task.start.view, instant - task.start.offset};
}
Literal endsAtMost(const EnergyTask& task, Value instant) {
    return {opposite(task.end.view), task.end.offset - instant};
}

/// Sorts what is nearly in order already.
template <class Less>
void settle(std::vector<std::size_t>& items, Less less) {
    for (std::size_t i = 1; i < items.size(); ++i) {
        const std::size_t item = items[i];
        std::size_t j = i;
        for (; j > 0 && less(item, items[j - 1]); --j) {
            items[j] = items[j - 1];
        }
        items[j] = item;
    }
}

}  // namespace

Energy::Energy(std::vector<EnergyTask> tasks, std::int64_t rate)
    : tasks_(std::move(tasks)), rate_(rate), byStart_(tasks_.size()) {
    std::iota(byStart_.begin(), byStart_.end(), std::size_t{0});
    byEnd_ = byStart_;
    leafOf_ = byStart_;
    while (leaves_ < tasks_.size()) {
        leaves_ *= 2;
    }
}

std::vector<View> Energy::watched() const {
    std::vector<View> views;
    for (const EnergyTask& task : tasks_) {
        views.insert(views.end(), {task.start.view, opposite(task.end.view), task.presence.view});
    }
    std::ranges::sort(views);
    const auto repeated = std::ranges::unique(views);
    views.erase(repeated.begin(), repeated.end());
    return views;
}

void Energy::order(const Engine& engine) {
    settle(byStart_, [&](std::size_t a, std::size_t b) {
        return engine.low(tasks_[a].start) < engine.low(tasks_[b].start);
    });
    settle(byEnd_, [&](std::size_t a, std::size_t b) {
        return engine.high(tasks_[a].end) < engine.high(tasks_[b].end);
    });
    for (std::size_t i = 0; i < byStart_.size(); ++i) {
        leafOf_[byStart_[i]] = i;
    }
    tree_.assign(2 * leaves_, {0, never});
}

void Energy::insert(std::size_t leaf, const EnergyTask& task, Value earliest) {
    std::size_t node = leaves_ + leaf;
    tree_[node] = {task.work, rate_ * earliest + task.work};
    for (node /= 2; node > 0; node /= 2) {
        const Node& left = tree_[2 * node];
        const Node& right = tree_[2 * node + 1];
        tree_[node] = {left.work + right.work,
                       std::max(left.envelope + right.work, right.envelope)};
    }
}

bool Energy::propagate(Engine& engine) {
    if (rest_ > 0 && engine.level() > 0) {
        --rest_;
        return true;
    }
    order(engine);
    for (std::size_t i = 0; i < byEnd_.size(); ++i) {
        const EnergyTask& task = tasks_[byEnd_[i]];
        if (!engine.isTrue(task.presence)) {
            continue;
        }
        insert(leafOf_[byEnd_[i]], task, engine.low(task.start));
        if (tree_[1].envelope > rate_ * engine.high(task.end)) {
            pause_ = 0;
            return overload(engine, i);
        }
    }
    pause_ = std::min(2 * pause_ + 1, longestPause);
    rest_ = pause_;
    return true;
}

/// The first leaf of the tasks that make the root's envelope.
std::size_t Energy::leafOfEnvelope() const {
    std::size_t node = 1;
    while (node < leaves_) {
        const Node& right = tree_[2 * node + 1];
        node = right.envelope == tree_[node].envelope ? 2 * node + 1 : 2 * node;
    }
    return node - leaves_;
}

/// Fewer tasks explain as much as long as their work is still too much. Least work goes first.
void Energy::dropNeedless(std::vector<std::size_t>& kept, std::int64_t& excess) const {
    std::ranges::sort(kept, {}, [this](std::size_t t) { return tasks_[t].work; });
    std::size_t dropped = 0;
    while (dropped < kept.size() && tasks_[kept[dropped]].work < excess) {
        excess -= tasks_[kept[dropped]].work;
        ++dropped;
    }
    kept.erase(kept.begin(), kept.begin() + static_cast<std::ptrdiff_t>(dropped));
}

bool Energy::overload(Engine& engine, std::size_t lastInserted) {
    const std::size_t first = leafOfEnvelope();
    const Value begin = engine.low(tasks_[byStart_[first]].start);
    const Value end = engine.high(tasks_[byEnd_[lastInserted]].end);
    std::vector<std::size_t> kept;
    std::int64_t excess = -rate_ * (std::int64_t{end} - begin);
    for (std::size_t i = 0; i <= lastInserted; ++i) {
        const std::size_t t = byEnd_[i];
        if (leafOf_[t] >= first && engine.isTrue(tasks_[t].presence)) {
            kept.push_back(t);
            excess += tasks_[t].work;
        }
    }
    dropNeedless(kept, excess);
    // What is still too much allows a longer stretch; half of it at each end.
    const auto slack = static_cast<Value>((excess - 1) / rate_);
    because_.clear();
    for (const std::size_t t : kept) {
        because_.push_back(startsAtLeast(tasks_[t], begin - slack / 2));
        because_.push_back(endsAtMost(tasks_[t], end + slack - slack / 2));
        because_.push_back(tasks_[t].presence);
    }
    return engine.conflict(because_);
}

void addEnergy(Engine& engine, std::vector<EnergyTask> tasks, std::int64_t rate) {
    std::erase_if(tasks, [](const EnergyTask& task) { return task.work <= 0; });
    if (tasks.size() < 2) {
        return;
    }
    auto propagator = std::make_unique<Energy>(std::move(tasks), rate);
    const std::vector<View> watched = propagator->watched();
    engine.addPropagator(std::move(propagator), watched);
}

}  // namespace rangeline::engine
