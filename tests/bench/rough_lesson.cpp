#include "bench/rough_lesson.h"

#include "model/expand.h"
#include "support/natural_lesson.h"

namespace rangeline::test {

Lesson roughlyPlaced(int steps) {
    Random random(1);
    Lesson lesson = naturalLesson(random, steps);
    const Expanded expanded = expand(lesson);
    std::int64_t minute = -static_cast<std::int64_t>(expanded.tasks.size()) * 3;
    for (const Task& task : expanded.tasks) {
        Placement& placement = lesson.placements[task.key];
        placement.start = Instant::atMinutes(minute);
        placement.hands = {{lesson.head.crew[static_cast<std::size_t>(minute & 1)], 0}};
        const Step& step = stepOf(lesson, task);
        for (const WareNeed& need : step.wares) {
            for (const Ware& ware : lesson.kitchen.wares) {
                if (!need.carriesOn && ware.kind == need.kind) {
                    placement.wares.push_back({ware.id, static_cast<int>(random.between(0, 2))});
                }
            }
        }
        for (const Segment& segment : task.segments) {
            if (segment.attention == Attention::Watch) {
                placement.watchers.push_back(lesson.head.crew.front());
            }
        }
        if (std::holds_alternative<BurnerHeat>(step.heat)) {
            placement.burners = {
                lesson.kitchen.burners[static_cast<std::size_t>(random.between(0, 3))].id};
        } else if (const auto* heat = std::get_if<OvenHeat>(&step.heat)) {
            placement.oven = OvenSpot{lesson.kitchen.ovens.front().id,
                                      static_cast<int>(random.between(0, 2)), heat->lowest};
        }
        minute += 3;
    }
    return lesson;
}

}  // namespace rangeline::test
