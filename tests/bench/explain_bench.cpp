// How long it takes to say why a lesson is not possible: lessons of a seeded generator in kitchens
// that open so many minutes too late.

#include <benchmark/benchmark.h>

#include <algorithm>

#include "arrange/arrange.h"
#include "arrange/remedies.h"
#include "support/natural_lesson.h"

namespace rangeline::test {
namespace {

constexpr int lessons = 10;

/// Not possible by `minutes` more than the planner proves.
Lesson openedTooLate(std::uint64_t seed, int steps, std::int64_t minutes) {
    Random random(seed);
    Lesson lesson = naturalLesson(random, steps);
    ArrangeOptions options;
    options.secondsLimit = 1;  // whatever bound is proved by then
    options.aim = Aim::StartLate;
    lesson.head.kitchenOpens = arrange(lesson, options).last.bound + Duration::minutes(minutes);
    return lesson;
}

double medianOf(std::vector<double> values) {
    std::ranges::sort(values);
    return values.empty() ? 0 : values[values.size() / 2];
}

void explainWhatIsNotPossible(benchmark::State& state) {
    std::vector<double> seconds;
    int smallest = 0;
    double members = 0;
    double questions = 0;
    for (auto _ : state) {
        for (std::uint64_t seed = 1; seed <= lessons; ++seed) {
            const Lesson lesson =
                openedTooLate(seed, static_cast<int>(state.range(0)), state.range(1));
            const Explanation explanation = explainNotPossible(lesson);
            seconds.push_back(explanation.seconds);
            smallest += explanation.status == ExplainStatus::Smallest ? 1 : 0;
            members += static_cast<double>(explanation.requirements.size());
            questions += static_cast<double>(explanation.questions);
        }
    }
    const auto runs = static_cast<double>(seconds.size());
    state.counters["median_ms"] = 1000 * medianOf(seconds);
    state.counters["worst_ms"] = 1000 * *std::ranges::max_element(seconds);
    state.counters["smallest"] = smallest / runs;
    state.counters["members"] = members / runs;
    state.counters["questions"] = questions / runs;
}
BENCHMARK(explainWhatIsNotPossible)
    ->ArgNames({"steps", "minutes"})
    ->ArgsProduct({{60, 120}, {1, 10, 60}})
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace rangeline::test
