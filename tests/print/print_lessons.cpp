#include "print/print_lessons.h"

#include <array>

#include "arrange/arrange.h"
#include "check/check.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

constexpr std::array names = {
    "Fry",
    "Sear the fennel",
    "Toast the crumb",
    "Dice the roots small",
    "Whisk",
    "Simmer the stock",
    "Roast the beets until a thin knife slips into the middle of the largest one easily",
    "Wilt the greens",
    "Rest the fish on a rack",
    "Cut",
    "Reduce the glaze by half",
    "Warm the plates",
    "Peel and slice the parsnips",
    "Mix the batter",
    "Brown the butter"};

void nameSteps(Lesson& lesson) {
    std::size_t next = 0;
    for (Serving& serving : lesson.servings) {
        for (Component& component : serving.dish.components) {
            for (Step& step : component.steps) {
                step.name = step.plates ? "Plate" : names[next++ % names.size()];
                step.cue = next % 3 == 0 ? "until the edges are deep gold" : "";
            }
        }
    }
}

void placeInTurn(Lesson& lesson) {
    const Expanded expanded = expand(lesson);
    Instant free = Instant::atMinutes(-240);
    for (const Task& task : expanded.tasks) {
        lesson.placements[task.key].start = free;
        free = free + Duration::minutes(7);
    }
}

Lesson makeLesson(std::uint64_t seed, int steps) {
    Random random(seed);
    RandomLessonSize size;
    size.dishes = steps > 40 ? 2 : 1;
    size.components = std::max(1, steps / size.dishes / 2);
    size.burners = 4;
    size.covers = 4;
    size.batches = 0.1;
    size.keeps = 0;
    size.links = 0.1;
    Lesson lesson = randomLesson(random, size);
    nameSteps(lesson);
    lesson.head.name = "Autumn table, an evening with friends";
    return lesson;
}

void arrangeOrPlace(Lesson& lesson) {
    ArrangeOptions options;
    options.conflictLimit = 20'000;
    const ArrangeResult result = arrange(lesson, options);
    if (result.placements.empty()) {
        placeInTurn(lesson);
    } else {
        lesson.placements = result.placements;
    }
}

}  // namespace

Prepared::Prepared(Lesson lesson)
    : lesson_(std::move(lesson)),
      expanded_(expand(lesson_)),
      index_(lesson_, expanded_),
      text_{lesson_, expanded_, QLocale(QLocale::English, QLocale::UnitedStates)},
      findings_(checkLesson(lesson_, expanded_)),
      analysis_(analysePlating(index_)) {}

std::unique_ptr<Prepared> arrangedLesson(std::uint64_t seed, int steps) {
    Lesson lesson = makeLesson(seed, steps);
    arrangeOrPlace(lesson);
    return std::make_unique<Prepared>(std::move(lesson));
}

std::unique_ptr<Prepared> disturbedLesson(std::uint64_t seed, int steps) {
    Lesson lesson = makeLesson(seed, steps);
    arrangeOrPlace(lesson);
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
