// How long arranging takes: to the first plan and to the proof, how far the plan may then be from
// the best, and the same after one drag; over ten lessons of each size.

#include "arrange/arrange.h"

#include <benchmark/benchmark.h>

#include <algorithm>

#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

constexpr int lessons = 10;

double quantile(std::vector<double> values, double share) {
    if (values.empty()) {
        return 0;
    }
    std::ranges::sort(values);
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
}

struct Measured {
    std::vector<double> first, proof, gap;
    double conflicts = 0;
    int runs = 0;

    void take(const ArrangeResult& result) {
        ++runs;
        conflicts += static_cast<double>(result.statistics.conflicts);
        if (!result.placements.empty()) {
            first.push_back(1000 * result.statistics.secondsToFirst);
        }
        if (result.status == ArrangeStatus::Proved) {
            proof.push_back(1000 * result.statistics.seconds);
        }
        if (result.last.aimBest) {
            gap.push_back(static_cast<double>(*result.last.aimBest - result.last.aimBound));
        }
    }

    void show(benchmark::State& state) const {
        state.counters["planned"] = static_cast<double>(first.size()) / runs;
        state.counters["first_ms"] = quantile(first, 0.5);
        state.counters["worst_first_ms"] = quantile(first, 1);
        state.counters["proved"] = static_cast<double>(proof.size()) / runs;
        state.counters["proof_ms"] = quantile(proof, 0.5);
        state.counters["worst_proof_ms"] = quantile(proof, 1);
        state.counters["gap"] = quantile(gap, 0.5);
        state.counters["worst_gap"] = quantile(gap, 1);
        state.counters["conflicts"] = conflicts / runs;
    }
};

Lesson generated(std::uint64_t seed, int steps) {
    Random random(seed);
    return naturalLesson(random, steps);
}

/// Steps, seconds allowed, the number of the aim, threads.
void arrangeNaturalLessons(benchmark::State& state) {
    Measured measured;
    for (auto _ : state) {
        for (std::uint64_t seed = 1; seed <= lessons; ++seed) {
            ArrangeOptions options;
            options.secondsLimit = static_cast<double>(state.range(1));
            options.aim = static_cast<Aim>(state.range(2));
            options.threads = static_cast<int>(state.range(3));
            measured.take(arrange(generated(seed, static_cast<int>(state.range(0))), options));
        }
    }
    measured.show(state);
}
BENCHMARK(arrangeNaturalLessons)
    ->ArgNames({"steps", "seconds", "aim", "threads"})
    ->ArgsProduct({{20, 60, 120, 240}, {3}, {0, 1}, {1, 2}})
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

/// One step of a planned lesson pinned a quarter of an hour earlier than it was planned.
void arrangeCloseAfterADrag(benchmark::State& state) {
    Measured measured;
    for (auto _ : state) {
        for (std::uint64_t seed = 1; seed <= lessons; ++seed) {
            Lesson lesson = generated(seed, static_cast<int>(state.range(0)));
            ArrangeOptions options;
            options.secondsLimit = 1;
            lesson.placements = arrange(lesson, options).placements;
            auto dragged = lesson.placements.begin();
            std::advance(dragged, static_cast<std::ptrdiff_t>(lesson.placements.size() / 2));
            dragged->second.start = dragged->second.start - Duration::minutes(15);
            dragged->second.pinned = true;
            options.stayClose = true;
            measured.take(arrange(lesson, options));
        }
    }
    measured.show(state);
}
BENCHMARK(arrangeCloseAfterADrag)
    ->ArgName("steps")
    ->Arg(60)
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
