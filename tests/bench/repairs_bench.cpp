// How long the window looks for repairs when a finding is chosen, over all findings of a lesson.

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

#include "bench/rough_lesson.h"
#include "document/repairs.h"

namespace rangeline::test {
namespace {

void findRepairs(benchmark::State& state) {
    LessonState lesson(roughlyPlaced(static_cast<int>(state.range(0))));
    using Clock = std::chrono::steady_clock;
    double worst = 0;
    double all = 0;
    int runs = 0;
    for (auto _ : state) {
        for (const Finding& finding : std::vector(lesson.findings())) {
            const auto begin = Clock::now();
            benchmark::DoNotOptimize(repairsFor(lesson, finding).size());
            const double took =
                std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
            worst = std::max(worst, took);
            all += took;
            ++runs;
        }
    }
    state.counters["findings"] = static_cast<double>(lesson.findings().size());
    state.counters["mean_ms"] = all / runs;
    state.counters["worst_ms"] = worst;
}
BENCHMARK(findRepairs)->Arg(60)->Arg(300)->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
