#include <algorithm>

#include "model/quantity_text.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

constexpr std::int64_t mostTasks = 20'000;

std::int64_t loadsOf(const Step& step, std::int64_t pieces, const Choices& choices) {
    const auto stated = std::ranges::find(choices.batches, step.id, &StatedBatches::step);
    if (stated != choices.batches.end()) {
        return stated->batches;
    }
    const std::int64_t each = step.piecesPerBatch.value_or(1);
    return step.piecesPerBatch ? std::max<std::int64_t>((pieces + each - 1) / each, 1) : 1;
}

}  // namespace

void validateSize(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps) {
    std::int64_t tasks = 0;
    for (const StepAt& at : steps.all()) {
        const Step& step = *at.step;
        const Rational covers(lesson.servings[at.serving].covers);
        const std::int64_t pieces = (step.piecesPerCover * covers).ceil();
        const std::int64_t times = step.timePer == TimePer::Piece ? pieces : 1;
        if (step.time.longest.inSeconds() * times > longestDuration.inSeconds()) {
            atPlaceOf(at, [&](const Place& place) {
                checks.duration(place.key("time"), step.time.longest * times);
            });
        }
        tasks += loadsOf(step, pieces, lesson.choices) * lesson.head.groups.count;
    }
    if (tasks > mostTasks) {
        const Place file;
        checks.report(file.key("servings"), FaultCode::TooMany,
                      {std::to_string(tasks), std::to_string(mostTasks)});
    }
}

}  // namespace rangeline
