#include "arrange/engine/squares.h"

#include <algorithm>
#include <memory>

namespace rangeline::engine {

SquaresAtMost::SquaresAtMost(std::vector<SquaresTask> tasks, std::int64_t unit, View total)
    : tasks_(std::move(tasks)), unit_(unit), total_(total) {}

std::vector<View> SquaresAtMost::watched() const {
    std::vector<View> views;
    for (const SquaresTask& task : tasks_) {
        views.insert(views.end(), {task.end.view, opposite(task.start.view), task.presence.view});
    }
    std::ranges::sort(views);
    const auto repeated = std::ranges::unique(views);
    views.erase(repeated.begin(), repeated.end());
    return views;
}

bool SquaresAtMost::propagate(Engine& engine) {
    events_.clear();
    because_.clear();
    std::int64_t total = 0;
    for (const SquaresTask& task : tasks_) {
        if (!engine.isTrue(task.presence)) {
            continue;
        }
        because_.push_back(task.presence);
        total += task.end.offset - task.start.offset;
        const Value begin = engine.high(task.start);
        const Value end = engine.low(task.end);
        if (begin < end) {
            total -= end - begin;  // counted below
            events_.push_back({begin, 1});
            events_.push_back({end, -1});
            because_.push_back({opposite(task.start.view), -engine.high(task.start.view)});
            because_.push_back({task.end.view, engine.low(task.end.view)});
        }
    }
    std::ranges::sort(events_, {}, &Event::at);
    std::int64_t height = 0;
    for (std::size_t i = 0; i < events_.size(); ++i) {
        if (i > 0) {
            total += height * height * (std::int64_t{events_[i].at} - events_[i - 1].at);
        }
        height += events_[i].change;
    }
    return engine.enqueueBecause({total_, static_cast<Value>((total + unit_ - 1) / unit_)},
                                 because_);
}

void addSquaresAtMost(Engine& engine, std::vector<SquaresTask> tasks, std::int64_t unit,
                      View total) {
    auto propagator = std::make_unique<SquaresAtMost>(std::move(tasks), unit, total);
    const std::vector<View> watched = propagator->watched();
    engine.addPropagator(std::move(propagator), watched);
}

}  // namespace rangeline::engine
