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
    engine::addCumulative(f.engine, std::move(work), everyone);
}

}  // namespace

void addCrewLimits(Formulation& f) {
    for (int group = 0; group < f.lesson.head.groups.count; ++group) {
        addTalks(f, group);
    }
    for (auto& hands : f.handsOf) {
        engine::addCumulative(f.engine, hands, 1);
    }
    for (auto& watches : f.watchesOf) {
        engine::addCumulative(f.engine, watches, f.lesson.kitchen.watchLimit);
    }
}

}  // namespace rangeline::rules
