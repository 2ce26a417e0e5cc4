#include <algorithm>

#include "model/loads.h"
#include "model/quantity_text.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

constexpr std::int64_t mostTasks = 20'000;

}  // namespace

void validateSize(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps) {
    const Loads loads(lesson);
    std::int64_t tasks = 0;
    for (const StepAt& at : steps.all()) {
        const Step& step = *at.step;
        const int covers = lesson.servings[at.serving].covers;
        const std::int64_t pieces = piecesFor(step, covers);
        const std::int64_t times = step.timePer == TimePer::Piece ? pieces : 1;
        if (step.time.longest.inSeconds() * times > longestDuration.inSeconds()) {
            atPlaceOf(at, [&](const Place& place) {
                checks.duration(place.key("time"), step.time.longest * times);
            });
        }
        tasks += loads.of(step, covers) * lesson.head.groups.count;
    }
    if (tasks > mostTasks) {
        const Place file;
        checks.report(file.key("servings"), FaultCode::TooMany,
                      {std::to_string(tasks), std::to_string(mostTasks)});
    }
}

}  // namespace rangeline
