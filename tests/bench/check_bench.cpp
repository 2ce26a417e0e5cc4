// How long checking takes: a whole lesson, and after moving one step of it.

#include <benchmark/benchmark.h>

#include "analysis/critical_path.h"
#include "check/check.h"
#include "model/edit.h"
#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

/// Everything placed by a rough plan: who and where is filled in, times follow each other, so that
/// there is plenty to find.
Lesson roughlyPlaced(int steps) {
    Random random(1);
    Lesson lesson = naturalLesson(random, steps);
    const Expanded expanded = expand(lesson);
    std::int64_t minute = -static_cast<std::int64_t>(expanded.tasks.size()) * 3;
    for (const Task& task : expanded.tasks) {
        Placement& placement = lesson.placements[task.key];
        placement.start = Instant::atMinutes(minute);
        placement.hands = {{lesson.head.crew[static_cast<std::size_t>(minute & 1)], 0}};
        const Step& step = stepOf(lesson, task);
        for (const WareNeed& need : step.wares) {
            for (const Ware& ware : lesson.kitchen.wares) {
                if (!need.carriesOn && ware.kind == need.kind) {
                    placement.wares.push_back({ware.id, static_cast<int>(random.between(0, 2))});
                }
            }
        }
        for (const Segment& segment : task.segments) {
            if (segment.attention == Attention::Watch) {
                placement.watchers.push_back(lesson.head.crew.front());
            }
        }
        if (std::holds_alternative<BurnerHeat>(step.heat)) {
            placement.burners = {
                lesson.kitchen.burners[static_cast<std::size_t>(random.between(0, 3))].id};
        } else if (const auto* heat = std::get_if<OvenHeat>(&step.heat)) {
            placement.oven = OvenSpot{lesson.kitchen.ovens.front().id,
                                      static_cast<int>(random.between(0, 2)), heat->lowest};
        }
        minute += 3;
    }
    return lesson;
}

void checkWholeLesson(benchmark::State& state) {
    const Lesson lesson = roughlyPlaced(static_cast<int>(state.range(0)));
    const Expanded expanded = expand(lesson);
    std::size_t found = 0;
    for (auto _ : state) {
        found = checkLesson(lesson, expanded).size();
        benchmark::DoNotOptimize(found);
    }
    state.counters["findings"] = static_cast<double>(found);
}
BENCHMARK(checkWholeLesson)->Arg(60)->Arg(300)->Unit(benchmark::kMicrosecond);

/// One iteration moves one step by a minute and brings the findings up to date; all steps in turn.
void checkAfterMovingOneStep(benchmark::State& state) {
    Lesson lesson = roughlyPlaced(static_cast<int>(state.range(0)));
    const Expanded expanded = expand(lesson);
    UseIndex index(lesson, expanded);
    Findings findings(index);
    std::size_t next = 0;
    for (auto _ : state) {
        const PlacementKey key{expanded.tasks[next].key};
        lesson.placements.at(key).start = lesson.placements.at(key).start + Duration::minutes(1);
        findings.update(index.update({&key, 1}));
        next = (next + 1) % expanded.tasks.size();
    }
}
BENCHMARK(checkAfterMovingOneStep)->Arg(60)->Arg(300)->Unit(benchmark::kMicrosecond);

void sayWhatDecidesPlating(benchmark::State& state) {
    const Lesson lesson = roughlyPlaced(static_cast<int>(state.range(0)));
    const Expanded expanded = expand(lesson);
    const UseIndex index(lesson, expanded);
    for (auto _ : state) {
        benchmark::DoNotOptimize(analysePlating(index).path.size());
    }
}
BENCHMARK(sayWhatDecidesPlating)->Arg(300)->Unit(benchmark::kMicrosecond);

void expandLesson(benchmark::State& state) {
    const Lesson lesson = roughlyPlaced(static_cast<int>(state.range(0)));
    for (auto _ : state) {
        benchmark::DoNotOptimize(expand(lesson).tasks.size());
    }
}
BENCHMARK(expandLesson)->Arg(300)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace rangeline::test
