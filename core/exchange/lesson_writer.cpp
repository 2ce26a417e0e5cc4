#include "exchange/describe_lesson.h"
#include "exchange/field_writer.h"
#include "exchange/lesson_file.h"

namespace rangeline {
namespace {

PlacementEntry entryOf(const PlacementKey& key, const Placement& placement) {
    PlacementEntry entry;
    static_cast<Placement&>(entry) = placement;
    if (const auto* step = std::get_if<StepKey>(&key)) {
        entry.step = step->step;
        entry.batch = step->batch;
        entry.group = step->group;
    } else if (const auto* wash = std::get_if<WashKey>(&key)) {
        entry.washAfter = wash->after.step;
        entry.batch = wash->after.batch;
        entry.group = wash->after.group;
        entry.spot = wash->spot;
    } else {
        entry.turnOn = std::get<TurnOnKey>(key).oven;
        entry.group = std::get<TurnOnKey>(key).group;
    }
    return entry;
}

}  // namespace

std::string writeLesson(const Lesson& lesson) {
    const Style style{lesson.head.units};
    std::vector<PlacementEntry> placements;
    for (const auto& [key, placement] : lesson.placements) {
        placements.push_back(entryOf(key, placement));
    }
    Json::Object file{{"rangeline", Json("lesson")},
                      {"version", Json(1)},
                      {"lesson", write(lesson.head, style)},
                      {"kitchen", write(lesson.kitchen, style)},
                      {"servings", write(lesson.servings, style)}};
    if (lesson.choices != Choices()) {
        file.emplace_back("choices", write(lesson.choices, style));
    }
    if (!placements.empty()) {
        file.emplace_back("placements", write(placements, style));
    }
    return Json(std::move(file)).document();
}

}  // namespace rangeline
