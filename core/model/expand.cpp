#include "model/expand.h"

#include <algorithm>
#include <cassert>

#include "model/expander.h"

namespace rangeline {
namespace {

/// The batch's part of the pieces: as even as can be, the larger first.
int piecesInBatch(int pieces, int batches, int batch) {
    return pieces / batches + (batch < pieces % batches ? 1 : 0);
}

DurationRange timesPieces(const DurationRange& range, int pieces) {
    return {range.shortest * pieces, range.likely * pieces, range.longest * pieces};
}

/// The step's segments at the likely time: the stretching one takes what the others leave.
void layOutSegments(const Step& step, Task& task) {
    if (step.isEvent()) {
        return;
    }
    task.segments = step.segments;
    if (task.segments.empty() && task.time.likely > Duration()) {
        task.segments = {{Attention::Away, task.time.likely, true}};
        task.stretching = 0;
        return;
    }
    if (task.segments.empty()) {
        return;
    }
    const std::size_t stretching = step.stretchingSegment();
    Duration others;
    for (std::size_t i = 0; i < task.segments.size(); ++i) {
        others += i == stretching ? Duration() : task.segments[i].length;
    }
    task.segments[stretching].length = std::max(task.time.likely - others, Duration());
    task.stretching = static_cast<int>(stretching);
}

}  // namespace

Expander::Expander(const Lesson& lesson) : lesson_(lesson), loads_(lesson) {
    result_.stations = Stations::of(lesson);
    for (std::size_t s = 0; s < lesson.servings.size(); ++s) {
        const auto& components = lesson.servings[s].dish.components;
        for (std::size_t c = 0; c < components.size(); ++c) {
            for (std::size_t i = 0; i < components[c].steps.size(); ++i) {
                const Step& step = components[c].steps[i];
                places_[step.id] = {&step, static_cast<int>(s), static_cast<int>(c),
                                    static_cast<int>(i)};
                order_.push_back(step.id);
            }
        }
    }
    std::erase_if(order_, [this](const StepId& id) {
        const auto& only = step(id).onlyIfAhead;
        return doneAhead(id) != nullptr || (only && doneAhead(*only) == nullptr);
    });
}

bool Expander::swappedIn(const StepId& id) const {
    return std::ranges::find(lesson_.choices.swapIns, id, &SwapIn::step) !=
           lesson_.choices.swapIns.end();
}

const DoneAhead* Expander::doneAhead(const StepId& id) const {
    const auto& ahead = lesson_.choices.doneAhead;
    const auto found = std::ranges::find(ahead, id, &DoneAhead::step);
    return found == ahead.end() ? nullptr : &*found;
}

int Expander::batchCount(const StepId& id) const {
    return result_.tasks[static_cast<std::size_t>(result_.firstTask.at(id))].batches;
}

std::vector<int> Expander::tasksOf(const StepId& id, int group) const {
    std::vector<int> tasks;
    for (int batch = 0; batch < batchCount(id); ++batch) {
        tasks.push_back(result_.firstTask.at(id) + group * result_.tasksPerGroup + batch);
    }
    return tasks;
}

std::vector<std::pair<int, int>> Expander::batchPairs(const StepId& from, const StepId& to,
                                                      int group) const {
    const std::vector<int> a = tasksOf(from, group);
    const std::vector<int> b = tasksOf(to, group);
    std::vector<std::pair<int, int>> pairs;
    const std::size_t count = std::max(a.size(), b.size());
    for (std::size_t i = 0; i < count; ++i) {
        pairs.emplace_back(a[i * a.size() / count], b[i * b.size() / count]);
    }
    return pairs;
}

void Expander::addTask(const StepPlace& place, int group, int batch, int batches, int pieces) {
    Task task;
    task.key = {place.step->id, batch, group};
    task.serving = place.serving;
    task.component = place.component;
    task.step = place.index;
    task.batches = batches;
    task.pieces = piecesInBatch(pieces, batches, batch);
    task.time = place.step->timePer == TimePer::Piece ? timesPieces(place.step->time, task.pieces)
                                                      : place.step->time;
    layOutSegments(*place.step, task);
    result_.tasks.push_back(std::move(task));
}

void Expander::makeTasks() {
    for (std::size_t i = 0; i < order_.size(); ++i) {
        orderOf_[order_[i]] = static_cast<int>(i);
        for (const Use& use : step(order_[i]).uses) {
            users_[use.step].push_back({order_[i], use.each});
        }
    }
    for (int group = 0; group < groups(); ++group) {
        for (const StepId& id : order_) {
            const StepPlace& place = places_.at(id);
            const int covers = lesson_.servings[static_cast<std::size_t>(place.serving)].covers;
            const int pieces = static_cast<int>(piecesFor(*place.step, covers));
            const int batches = static_cast<int>(loads_.of(*place.step, covers));
            if (group == 0) {
                result_.firstTask[id] = static_cast<int>(result_.tasks.size());
            }
            for (int batch = 0; batch < batches; ++batch) {
                addTask(place, group, batch, batches, pieces);
            }
        }
        if (group == 0) {
            result_.tasksPerGroup = static_cast<int>(result_.tasks.size());
        }
    }
    taskChains_.resize(result_.tasks.size());
    taskHolds_.resize(result_.tasks.size());
}

int Expanded::taskOf(const StepKey& key) const {
    const auto first = firstTask.find(key.step);
    if (first == firstTask.end() || key.group < 0 || key.batch < 0 ||
        key.batch >= tasks[static_cast<std::size_t>(first->second)].batches) {
        return -1;
    }
    const int index = first->second + key.group * tasksPerGroup + key.batch;
    return index < static_cast<int>(tasks.size()) ? index : -1;
}

Expanded expand(const Lesson& lesson) {
    Expander expander(lesson);
    expander.makeTasks();
    expander.makeChains();
    expander.makeHeat();
    expander.makePools();
    expander.makeWaits();
    expander.makeWindows();
    return expander.take();
}

const Step& stepOf(const Lesson& lesson, const Task& task) {
    return lesson.servings[static_cast<std::size_t>(task.serving)]
        .dish.components[static_cast<std::size_t>(task.component)]
        .steps[static_cast<std::size_t>(task.step)];
}

Instant servingOf(const Lesson& lesson, const Task& task) {
    return Instant::serving() + lesson.servings[static_cast<std::size_t>(task.serving)].offset +
           lesson.head.groups.stagger * task.key.group;
}

int slotsOf(const OvenLoad& load, std::span<const Ware* const> wares) {
    if (wares.empty()) {
        return load.heat.slots.value_or(1);
    }
    int slots = 0;
    for (const Ware* ware : wares) {
        slots += ware->rackSlots;
    }
    return std::max(slots, 1);
}

}  // namespace rangeline
