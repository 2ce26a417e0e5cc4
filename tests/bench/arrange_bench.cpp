// How long arranging takes: to the first plan and to the proof, over ten lessons of each size.

#include <benchmark/benchmark.h>

#include "arrange/arrange.h"
#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

void arrangeNaturalLessons(benchmark::State& state) {
    constexpr int lessons = 10;
    double first = 0;
    double worstFirst = 0;
    double worst = 0;
    int proved = 0;
    int runs = 0;
    for (auto _ : state) {
        for (std::uint64_t seed = 1; seed <= lessons; ++seed) {
            Random random(seed);
            const Lesson lesson = naturalLesson(random, static_cast<int>(state.range(0)));
            ArrangeOptions options;
            options.secondsLimit = 10;
            const ArrangeResult result = arrange(lesson, options);
            first += result.statistics.secondsToFirst;
            worstFirst = std::max(worstFirst, result.statistics.secondsToFirst);
            worst = std::max(worst, result.statistics.seconds);
            proved += result.status == ArrangeStatus::Proved ? 1 : 0;
            ++runs;
        }
    }
    state.counters["first_ms"] = 1000 * first / runs;
    state.counters["worst_first_ms"] = 1000 * worstFirst;
    state.counters["worst_ms"] = 1000 * worst;
    state.counters["proved"] = static_cast<double>(proved) / runs;
}
BENCHMARK(arrangeNaturalLessons)
    ->Arg(20)
    ->Arg(60)
    ->Arg(120)
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
