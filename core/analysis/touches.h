#pragma once
// Which parts of an expanded lesson depend on the placement of which task. Fixed for a lesson: an
// edit of placements looks up here what it has to read again.

#include <vector>

#include "model/expand.h"

namespace rangeline {

class Touches {
  public:
    /// Indexes into the lists of Expanded, ascending.
    struct OfTask {
        std::vector<int> chains;
        std::vector<int> burnerHolds;  ///< also those that its wares stand on
        std::vector<int> ovenLoads;    ///< also those that its wares stand in
        std::vector<int> poolHolds;
        std::vector<int> waits;
        std::vector<int> windows;
    };

    Touches(const Lesson& lesson, const Expanded& expanded);

    const OfTask& of(int task) const { return tasks_[static_cast<std::size_t>(task)]; }
    /// The task until whose start the last watch of `task` goes on, or -1.
    int watchedUntil(int task) const { return watchedUntil_[static_cast<std::size_t>(task)]; }
    /// The task before, whose last watch goes on until `task` starts, or -1.
    int watchedSince(int task) const { return watchedSince_[static_cast<std::size_t>(task)]; }
    /// The tasks that the class watches, ascending.
    const std::vector<int>& talks() const { return talks_; }
    /// The chain with this key, or -1.
    int chainOf(const WashKey& key) const;

  private:
    using List = std::vector<int> OfTask::*;

    void add(int task, List list, int index);
    void addSpan(const Span& span, List list, int index);
    void addChains(const Expanded& expanded);
    void addHeat(const Expanded& expanded);
    void addRules(const Expanded& expanded);

    std::vector<OfTask> tasks_;
    std::vector<int> watchedUntil_;
    std::vector<int> watchedSince_;
    std::vector<int> talks_;
    const Expanded* expanded_;
    std::vector<int> chainsByKey_;  ///< sorted by key
};

}  // namespace rangeline
