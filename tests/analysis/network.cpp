#include "analysis/network.h"

namespace rangeline::test {

NetworkResult analyseNetwork(const std::vector<Activity>& activities, int length,
                             const std::map<std::string, int>& starts) {
    LessonBuilder builder;
    for (const Activity& activity : activities) {
        builder.step(activity.name, {away(Duration::minutes(activity.length))});
        for (const std::string& before : activity.after) {
            builder.link(before, activity.name);
        }
        builder.place(activity.name, starts.at(activity.name) - length);
    }
    const Expanded expanded = expand(builder.lesson);
    const UseIndex index(builder.lesson, expanded);
    const PlatingAnalysis analysis = analysePlating(index);
    const auto name = [](const Spare& spare) { return std::get<StepKey>(spare.key).step.text; };
    NetworkResult result;
    for (const Spare& spare : analysis.spares) {
        const int minutesToSpare = static_cast<int>(spare.spare.inMinutes());
        result.spare[name(spare)] = minutesToSpare;
        result.latestStart[name(spare)] = starts.at(name(spare)) + minutesToSpare;
    }
    for (const int i : analysis.path) {
        result.path.push_back(name(analysis.spares[static_cast<std::size_t>(i)]));
    }
    return result;
}

std::map<std::string, int> oneByOne(const std::vector<Activity>& activities, int length) {
    int start = length;
    for (const Activity& activity : activities) {
        start -= activity.length;
    }
    std::map<std::string, int> starts;
    for (const Activity& activity : activities) {
        starts[activity.name] = start;
        start += activity.length;
    }
    return starts;
}

}  // namespace rangeline::test
