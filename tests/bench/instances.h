#pragma once
// Scheduling instances for measuring the planner's core, read from lines of JSON: kitchens (tasks,
// pans, ovens at one temperature) and resource-constrained projects with least and most lags.

#include <QString>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace rangeline::bench {

/// Minutes. `start(b) >= start(a) + least`; a negative lag is a most lag the other way round.
struct StartLag {
    int a = 0, b = 0, least = 0;
};

struct OvenUse {
    int slots = 0;
    std::vector<int> settings;  ///< indexes into Instance::warmUps
};

struct InstanceTask {
    int minutes = 0;
    std::vector<int> demands;  ///< by resource
    std::optional<OvenUse> oven;
};

/// One pan from the first task's start to the last one's end, and `wash` minutes more.
struct PanChain {
    std::vector<int> tasks;
    int size = 0;
    int wash = 0;
};

/// Food that waits from the end of `made` to the start of `served`.
struct HotFood {
    int made = 0, served = 0, weight = 1;
};

struct Instance {
    std::string name;
    std::vector<InstanceTask> tasks;
    std::vector<int> capacities;  ///< by resource
    std::vector<StartLag> lags;
    std::vector<int> pans;  ///< sizes
    std::vector<PanChain> chains;
    std::vector<int> ovens;    ///< slots of each
    std::vector<int> warmUps;  ///< by setting, from time 0
    std::vector<std::vector<int>> changeOvers;
    std::vector<HotFood> hot;
    int horizon = 0;
    std::optional<int> leastSpan;  ///< known optimum
    bool knownImpossible = false;
};

/// Every instance of the file, in its order. Throws std::runtime_error where it cannot be read.
std::vector<Instance> readInstances(const QString& path);

}  // namespace rangeline::bench
