#pragma once
// A network of activities as a lesson: one step that needs nobody for each activity, minutes for
// the time unit, linked end to start.

#include <map>
#include <string>
#include <vector>

#include "analysis/critical_path.h"
#include "analysis/use_index.h"
#include "support/lesson_builder.h"

namespace rangeline::test {

struct Activity {
    std::string name;
    int length = 0;
    std::vector<std::string> after;
};

struct NetworkResult {
    std::map<std::string, int> spare;        ///< by activity
    std::map<std::string, int> latestStart;  ///< by activity, after the begin of the network
    std::vector<std::string> path;
};

/// Places the activities at these starts (after the begin of a network that ends at `length`) and
/// analyses the lesson.
NetworkResult analyseNetwork(const std::vector<Activity>& activities, int length,
                             const std::map<std::string, int>& starts);

/// One activity after the other; they are listed so that each comes after those it follows.
std::map<std::string, int> oneByOne(const std::vector<Activity>& activities, int length);

}  // namespace rangeline::test
