// How long checking takes: a whole lesson, and after moving one step of it.

#include <benchmark/benchmark.h>

#include "analysis/critical_path.h"
#include "bench/rough_lesson.h"
#include "check/check.h"
#include "model/edit.h"

namespace rangeline::test {
namespace {

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
