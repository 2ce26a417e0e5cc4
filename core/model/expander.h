#pragma once
// The inside of expand(): one pass over the steps for the tasks, one for the equipment, one for
// what must hold between tasks. Not for use outside core/model.

#include <unordered_map>
#include <vector>

#include "model/expand.h"
#include "model/loads.h"

namespace rangeline {

class Expander {
  public:
    explicit Expander(const Lesson& lesson);

    void makeTasks();
    void makeChains();
    void makeHeat();
    void makePools();
    void makeWaits();
    bool isBeforeWhatIsServed(const Wait& wait) const;
    void makeWindows();
    Expanded take() { return std::move(result_); }

  private:
    struct StepPlace {
        const Step* step = nullptr;
        int serving = 0, component = 0, index = 0;
    };
    /// Chains of one task, by need and copy.
    using TaskChains = std::vector<std::vector<int>>;

    bool exists(const StepId& id) const { return result_.firstTask.contains(id); }
    bool swappedIn(const StepId& id) const;
    const DoneAhead* doneAhead(const StepId& id) const;
    const Step& step(const StepId& id) const { return *places_.at(id).step; }
    int groups() const { return lesson_.head.groups.count; }
    int batchCount(const StepId& id) const;
    std::vector<int> tasksOf(const StepId& id, int group) const;
    /// Batch i of one step goes with batch j of the other: all pairs, in order.
    std::vector<std::pair<int, int>> batchPairs(const StepId& from, const StepId& to,
                                                int group) const;

    void addTask(const StepPlace& place, int group, int batch, int batches, int pieces);
    void storedChains(const StepId& id, const std::vector<WareSpot>& wares, int firstSpot,
                      int group);
    void chainsOfStep(const StepId& id, int group);
    void chainsOfNeed(const StepId& id, std::size_t need, int group);
    void carryOn(const StepId& id, std::size_t need, int group);
    void startFresh(const StepId& id, std::size_t need, int group);
    bool goesOn(const WareNeed& need) const;
    int spotOf(const Step& step, std::size_t need, int copy) const;
    void continueChain(int chain, int task, const WareNeed& wanted);
    void endChains();
    std::vector<int> usersOf(const StepId& id, int batch, int group) const;
    std::vector<int> usersOfChain(std::size_t number) const;
    std::vector<int> heatChains(int task, bool oven) const;

    void burnerHolds(int task, const BurnerHeat& heat);
    int stoodOnHeatBefore(int task) const;
    bool staysOnHeatFor(int task, const std::vector<int>& users) const;
    bool extendBurnerHolds(int task, const BurnerHeat& heat);
    void keptHot(int task);
    void addUse(const StepId& user, const Use& use, int group);
    void addLink(const Link& link, int serving, int source, int group);

    const Lesson& lesson_;
    const Loads loads_;
    Expanded result_;
    std::unordered_map<StepId, StepPlace> places_;
    std::vector<StepId> order_;                ///< steps on the timeline, in lesson order
    std::vector<TaskChains> taskChains_;       ///< by task
    std::vector<std::vector<int>> taskHolds_;  ///< burner holds by task
    std::unordered_map<StepId, std::vector<std::vector<int>>> stored_;  ///< chains by group
    std::unordered_map<StepId, std::vector<Use>> users_;                ///< who uses a step's food
    std::vector<bool> chained_;  ///< by group * steps: chains made
    std::unordered_map<StepId, int> orderOf_;
    std::vector<std::vector<bool>> turnedOut_;  ///< by chain, for each of its tasks
    int families_ = 0;
};

}  // namespace rangeline
