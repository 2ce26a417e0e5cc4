#include "exchange/describe_lesson.h"
#include "exchange/field_writer.h"
#include "exchange/lesson_file.h"
#include "exchange/placement_entry.h"

namespace rangeline {

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
