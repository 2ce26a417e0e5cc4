// One pair of hands a cook, so many things watched at once, and talks that the class listens to.

#include <algorithm>

#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

/// While the class watches a talk, nobody else of the group works: the talk takes all hands there
/// are.
void addTalks(Formulation& f, int group) {
    const std::vector<int> crew = f.crewOf(group);
    const auto everyone = static_cast<Value>(crew.size());
    std::vector<CumulativeTask> work;
    bool talks = false;
    for (std::size_t i = 0; i < f.tasks.size(); ++i) {
        const Task& task = f.expanded.tasks[i];
        if (task.key.group != group || !stepOf(f.lesson, task).classWatches) {
            continue;
        }
        talks = true;
        for (const Staffing& staffing : f.tasks[i].staffings) {
            for (const TimedSegment& segment : staffing.timing.segments) {
                if (segment.attention == Attention::Hands && segment.length > Duration()) {
                    const auto others = everyone - static_cast<Value>(staffing.cooks.size());
                    work.push_back({{f.tasks[i].start, toValue(segment.offset)},
                                    {f.tasks[i].start, toValue(segment.offset + segment.length)},
                                    others,
                                    staffing.chosen});
                }
            }
        }
    }
    if (!talks) {
        return;
    }
    for (const int cook : crew) {
        const auto& hands = f.handsOf[static_cast<std::size_t>(cook)];
        work.insert(work.end(), hands.begin(), hands.end());
    }
    f.limit(std::move(work), everyone, f.asked(RequirementKind::ClassWatches, group));
}

}  // namespace

void addCrewLimits(Formulation& f) {
    for (int group = 0; group < f.lesson.head.groups.count; ++group) {
        addTalks(f, group);
    }
    for (int cook = 0; cook < f.expanded.stations.cooks.size(); ++cook) {
        const int item = f.expanded.stations.cooks[cook].item;
        f.limit(f.handsOf[static_cast<std::size_t>(cook)], 1,
                f.asked(RequirementKind::Hands, item));
        f.limit(f.watchesOf[static_cast<std::size_t>(cook)], f.lesson.kitchen.watchLimit,
                f.asked(RequirementKind::Watching, item));
    }
}

}  // namespace rangeline::rules
