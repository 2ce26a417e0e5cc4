// What makes one plan better than another.

#include <algorithm>

#include "arrange/engine/linear.h"
#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

/// Everything that is placed starts no earlier than minus the variable.
void addEarliestStart(Formulation& f) {
    const bool pinsOnGrain = std::ranges::all_of(f.lesson.placements, [&](const auto& entry) {
        return toValue(entry.second.start) % f.grain() == 0;
    });
    f.earliestStart =
        f.variable(-f.latest, -f.earliest, pinsOnGrain ? f.grain() : 1, false, f.yes());
    const auto include = [&f](View start, Literal presence) {
        f.engine.addDifference(engine::opposite(start), 0, f.earliestStart, presence);
    };
    for (const TaskVars& task : f.tasks) {
        include(task.start, f.yes());
    }
    for (const auto& wash : f.washes) {
        if (wash) {
            include(wash->start, wash->presence);
        }
    }
    for (const TurnOnVars& turnOn : f.turnOns) {
        if (!turnOn.ways.empty()) {
            include(turnOn.start, turnOn.presence);
        }
    }
}

/// Food that has been made waits for its use: weighted seconds, over all uses. Ovens that are on
/// early count like food that waits, so that nothing stands on longer than it must.
void addWaiting(Formulation& f) {
    std::vector<engine::Term> terms;
    std::int64_t constant = 0;
    const auto add = [&](TimePoint from, TimePoint to, int weight) {
        terms.push_back({to.view, weight});
        terms.push_back({engine::opposite(from.view), weight});
        constant += std::int64_t{weight} * (to.offset - from.offset);
    };
    for (const Wait& wait : f.expanded.waits) {
        if (wait.origin != WaitOrigin::Uses) {
            continue;
        }
        for (const int from : wait.from.tasks) {
            const int weight = stepOf(f.lesson, f.expanded.tasks[static_cast<std::size_t>(from)])
                                   .after.waitingWeight;
            for (const int to : wait.to.tasks) {
                if (weight > 0) {
                    add(f.endOf(from), f.startOf(to), weight);
                }
            }
        }
    }
    for (const TurnOnVars& turnOn : f.turnOns) {
        if (!turnOn.ways.empty()) {
            add({turnOn.start, 0}, f.constant(f.latest), 1);
        }
    }
    f.waiting = f.variable(-1'000'000'000, 1'000'000'000, 1, false, f.yes());
    engine::addLinearAtMost(f.engine, std::move(terms), constant, f.waiting);
}

}  // namespace

void addAims(Formulation& f) {
    addEarliestStart(f);
    addWaiting(f);
}

}  // namespace rangeline::rules
