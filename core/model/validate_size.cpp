#include <algorithm>
#include <iterator>
#include <string>

#include "model/loads.h"
#include "model/quantity_text.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

constexpr std::int64_t mostTasks = 20'000;
/// Single things of the kitchen of all groups.
constexpr std::int64_t mostThings = 100'000;
/// Vessels that steps take; each may want a wash.
constexpr std::int64_t mostTaken = 20'000;

void atMost(ValueChecks& checks, const char* where, std::int64_t number, std::int64_t most) {
    if (number > most) {
        const Place file;
        checks.report(file.key(where), FaultCode::TooMany,
                      {std::to_string(number), std::to_string(most)});
    }
}

std::int64_t thingsIn(const Kitchen& kitchen) {
    std::int64_t things =
        std::ssize(kitchen.burners) + std::ssize(kitchen.ovens) + std::ssize(kitchen.cooks);
    for (const Ware& ware : kitchen.wares) {
        things += ware.count;
    }
    return things;
}

std::int64_t waresOf(const Step& step) {
    std::int64_t wares = 0;
    for (const WareNeed& need : step.wares) {
        wares += need.count;
    }
    return wares;
}

}  // namespace

void validateSize(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps) {
    const Loads loads(lesson);
    std::int64_t tasks = 0;
    std::int64_t taken = 0;
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
        const std::int64_t own = loads.of(step, covers) * lesson.head.groups.count;
        tasks += own;
        taken += own * waresOf(step);
    }
    atMost(checks, "servings", tasks, mostTasks);
    atMost(checks, "servings", tasks > mostTasks ? 0 : taken, mostTaken);
    atMost(checks, "kitchen", thingsIn(lesson.kitchen) * lesson.head.groups.count, mostThings);
}

}  // namespace rangeline
