// How long it takes to arrange the rest of a service anew, and what that gains: ten lessons of each
// size, cooked off plan until somewhere in their middle.

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

#include "arrange/arrange.h"
#include "live/anew.h"
#include "support/natural_lesson.h"
#include "support/off_plan.h"

namespace rangeline::test {
namespace {

constexpr int lessons = 10;

struct Cooked {
    live::Service service;
    Instant now;
};

Cooked cookedOffPlan(std::uint64_t seed, int steps) {
    Random random(seed);
    Lesson lesson = naturalLesson(random, steps);
    ArrangeOptions options;
    options.conflictLimit = 5000;
    lesson.placements = arrange(lesson, options).placements;
    const OffPlan off =
        cookOffPlan(random, lesson, {300, 80, 140, 0.2, Duration::minutes(5), 0, 0});
    live::Service service(lesson);
    for (const auto& [key, placement] : off.lesson.placements) {
        if (placement.started) {
            service.apply(live::Started{key}, placement.start);
            if (placement.start + *placement.lasts <= off.underway.now) {
                service.apply(live::Done{key}, placement.start + *placement.lasts);
            }
        }
    }
    return {std::move(service), off.underway.now};
}

/// Steps, and milliseconds allowed for the search; 0: as many as in the window.
void rearrangeNaturalLessons(benchmark::State& state) {
    std::vector<double> took;
    double kept = 0;
    double behind = 0;
    double broken = 0;
    double changes = 0;
    for (auto _ : state) {
        for (std::uint64_t seed = 1; seed <= lessons; ++seed) {
            state.PauseTiming();
            const Cooked cooked = cookedOffPlan(seed, static_cast<int>(state.range(0)));
            state.ResumeTiming();
            const auto begun = std::chrono::steady_clock::now();
            const live::AnewLimits limits =
                state.range(1) == 0
                    ? live::limitsFor(cooked.service)
                    : live::AnewLimits{static_cast<double>(state.range(1)) / 1000, {}};
            const live::Anew anew = live::rearrange(cooked.service, cooked.now, limits);
            took.push_back(
                std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
                    .count());
            kept +=
                static_cast<double>(live::outlook(cooked.service, cooked.now).behind.inSeconds());
            behind += static_cast<double>(anew.outlook.behind.inSeconds());
            broken += static_cast<double>(anew.broken.size());
            changes += static_cast<double>(anew.change.changes.size());
        }
    }
    std::ranges::sort(took);
    state.counters["median_ms"] = took[took.size() / 2];
    state.counters["worst_ms"] = took.back();
    state.counters["behind_kept_s"] = kept / lessons;
    state.counters["behind_anew_s"] = behind / lessons;
    state.counters["broken"] = broken / lessons;
    state.counters["changes"] = changes / lessons;
}
BENCHMARK(rearrangeNaturalLessons)
    ->ArgNames({"steps", "limit_ms"})
    ->Args({60, 0})
    ->Args({60, 1000})
    ->Args({150, 0})
    ->Args({150, 2000})
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
