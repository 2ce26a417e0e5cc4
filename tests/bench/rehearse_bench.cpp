// How long rehearsing takes: with runs, steps and threads; and which one change helps most.

#include <benchmark/benchmark.h>

#include "arrange/arrange.h"
#include "rehearse/help.h"
#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

/// A lesson of the generator, arranged. The parts refer to each other.
struct Arranged {
    explicit Arranged(int steps)
        : lesson(made(steps)), expanded(expand(lesson)), index(lesson, expanded) {}

    static Lesson made(int steps) {
        Random random(1);
        Lesson lesson = naturalLesson(random, steps);
        ArrangeOptions options;
        options.secondsLimit = 3;
        lesson.placements = arrange(lesson, options).placements;
        return lesson;
    }

    Lesson lesson;
    Expanded expanded;
    UseIndex index;
};

/// Steps, runs, threads.
void rehearseALesson(benchmark::State& state) {
    const Arranged it(static_cast<int>(state.range(0)));
    const Network network = networkOf(it.index);
    RehearsalOptions options;
    options.runs = static_cast<int>(state.range(1));
    options.threads = static_cast<int>(state.range(2));
    double chance = 0;
    for (auto _ : state) {
        chance = rehearse(network, options).chanceOnTime();
    }
    state.counters["on_time"] = chance;
    state.counters["activities"] = static_cast<double>(network.activities.size());
    state.counters["followings"] = static_cast<double>(network.followings.size());
}
BENCHMARK(rehearseALesson)
    ->ArgNames({"steps", "runs", "threads"})
    ->Args({60, 10'000, 1})
    ->Args({60, 10'000, 2})
    ->Args({60, 5'000, 2})
    ->Args({60, 20'000, 2})
    ->Args({30, 10'000, 2})
    ->Args({120, 10'000, 2})
    ->UseRealTime()
    ->MeasureProcessCPUTime()
    ->Unit(benchmark::kMillisecond);

void tryWhichChangeHelps(benchmark::State& state) {
    const Arranged it(60);
    RehearsalOptions options;
    options.threads = static_cast<int>(state.range(0));
    std::size_t tried = 0;
    for (auto _ : state) {
        tried = whatHelps(it.index, options).tried.size();
    }
    state.counters["changes"] = static_cast<double>(tried);
}
BENCHMARK(tryWhichChangeHelps)
    ->ArgName("threads")
    ->Arg(1)
    ->Arg(2)
    ->UseRealTime()
    ->MeasureProcessCPUTime()
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
