#include "document/free_place.h"

#include <algorithm>

#include "analysis/at.h"

namespace rangeline {
namespace {

constexpr Duration searched = Duration::hours(4);

bool collides(const std::vector<Finding>& findings, const PlacementKey& key) {
    return std::ranges::any_of(findings, [&](const Finding& finding) {
        return finding.severity == Severity::Collision &&
               std::ranges::find(finding.keys, key) != finding.keys.end();
    });
}

SetPlacements placedAt(const UseIndex& index, const PlacementKey& key, Instant start) {
    const int node = index.nodeOf(key);
    if (node >= 0 && index.isTask(node) && !index.placed(node)) {
        return placeTask(index, node, start, {});
    }
    return moveTo(index, {&key, 1}, start, {});
}

/// The first whole multiple of the grain at or after that time.
Instant upToGrain(const Lesson& lesson, Instant at) {
    const Instant near = onGrain(lesson, at);
    return near < at ? near + lesson.head.grain : near;
}

Duration lengthOf(const UseIndex& index, int task) {
    return index.placed(task) ? index.placed(task).interval.length()
                              : timingOf(at(index.expanded().tasks, task), {}).length;
}

/// The latest that a wait from what is placed already asks for, for the task's start.
std::optional<Instant> startAskedFor(const UseIndex& index, int task) {
    std::optional<Instant> start;
    for (const int wait : index.touches().of(task).waits) {
        const Wait& it = at(index.expanded().waits, wait);
        const auto from = index.timeOf(it.from);
        if (!from || !it.least || std::ranges::count(it.to.tasks, task) == 0) {
            continue;
        }
        const Duration lead = it.to.end == StepEnd::End ? lengthOf(index, task) : Duration();
        const Instant asked = from->at + *it.least - lead;
        start = std::max(start.value_or(asked), asked);
    }
    return start;
}

/// The latest start that still leaves time for what is placed after the task.
std::optional<Instant> startLeft(const UseIndex& index, int task) {
    std::optional<Instant> start;
    for (const int wait : index.touches().of(task).waits) {
        const Wait& it = at(index.expanded().waits, wait);
        const auto to = index.timeOf(it.to);
        if (!to || !it.least || std::ranges::count(it.from.tasks, task) == 0) {
            continue;
        }
        const Duration lead = it.from.end == StepEnd::End ? lengthOf(index, task) : Duration();
        const Instant left = to->at - *it.least - lead;
        start = std::min(start.value_or(left), left);
    }
    return start;
}

/// How far the task has to wait until hands and equipment are free; nothing if they are.
std::optional<Duration> delayAskedFor(const std::vector<Finding>& findings,
                                      const PlacementKey& key) {
    std::optional<Duration> delay;
    for (const Finding& finding : findings) {
        const bool isTaken =
            finding.code == FindingCode::HandsTwice || finding.code == FindingCode::BurnerTwice ||
            finding.code == FindingCode::WareTwice || finding.code == FindingCode::OvenSlotTwice;
        if (isTaken && std::ranges::find(finding.keys, key) != finding.keys.end()) {
            delay = std::max(delay.value_or(Duration()), finding.interval.length());
        }
    }
    return delay;
}

void replaceChanges(SetPlacements& edit, const SetPlacements& later) {
    for (const PlacementChange& change : later.changes) {
        const auto same = std::ranges::find(edit.changes, change.key, &PlacementChange::key);
        if (same == edit.changes.end()) {
            edit.changes.push_back(change);
        } else {
            *same = change;
        }
    }
}

/// Adds one task to an edit that is not made yet.
void placeNext(LessonState& state, int task, Instant start, const DropTarget& target,
               SetPlacements& edit) {
    constexpr int mostTries = 20;
    const PlacementKey key = state.index().keyOf(task);
    Instant earliest = start;
    for (int tries = 0; tries < mostTries; ++tries) {
        SetPlacements next;
        state.tryOut(edit, [&](const UseIndex& index) {
            const Instant asked = startAskedFor(index, task).value_or(earliest);
            earliest = upToGrain(index.lesson(), std::max(earliest, asked));
            next = placeTask(index, task, earliest, target);
        });
        SetPlacements whole = edit;
        replaceChanges(whole, next);
        const auto delay = delayAskedFor(state.tryOut(whole), key);
        if (!delay || edit.changes.empty() || tries + 1 == mostTries) {
            edit = std::move(whole);
            return;
        }
        earliest = upToGrain(state.lesson(), earliest + *delay);
    }
}

}  // namespace

std::optional<SetPlacements> firstFreePlace(LessonState& state, const PlacementKey& key,
                                            Instant wanted) {
    const Instant around = onGrain(state.lesson(), wanted);
    const Duration grain = state.lesson().head.grain;
    for (Duration away; away <= searched; away += grain) {
        for (const Instant start : {around - away, around + away}) {
            SetPlacements edit = placedAt(state.index(), key, start);
            if (!edit.changes.empty() && !collides(state.tryOut(edit), key)) {
                return edit;
            }
        }
    }
    return std::nullopt;
}

Instant usualStart(const UseIndex& index, int task) {
    const auto left = startLeft(index, task);
    const auto asked = startAskedFor(index, task);
    if (left || asked) {
        return left.value_or(*asked);
    }
    return servingOf(index.lesson(), at(index.expanded().tasks, task)) - lengthOf(index, task);
}

SetPlacements placeInTurn(LessonState& state, std::span<const int> tasks, Instant start,
                          const DropTarget& target) {
    SetPlacements edit;
    for (const int task : tasks) {
        placeNext(state, task, start, target, edit);
    }
    return edit;
}

}  // namespace rangeline
