#include "print/print_lessons.h"

#include "check/check.h"
#include "print/supper.h"

namespace rangeline::test {

Prepared::Prepared(Lesson lesson)
    : lesson_(std::move(lesson)),
      expanded_(expand(lesson_)),
      index_(lesson_, expanded_),
      text_{lesson_, expanded_, QLocale(QLocale::English, QLocale::UnitedStates)},
      findings_(checkLesson(lesson_, expanded_)),
      analysis_(analysePlating(index_)) {}

std::unique_ptr<Prepared> placedLesson(int steps) {
    return std::make_unique<Prepared>(supper(steps / 3));
}

std::unique_ptr<Prepared> disturbedLesson(int steps) {
    Lesson lesson = supper(steps / 3);
    int count = 0;
    for (auto& [key, placement] : lesson.placements) {
        if (++count % 3 == 0) {
            placement.start = placement.start + Duration::minutes(20);
            placement.pinned = true;
        }
    }
    return std::make_unique<Prepared>(std::move(lesson));
}

}  // namespace rangeline::test
