#pragma once
// More work than fits between two instants: the overload rule by a tree over the tasks in the order
// of their earliest starts (after Vilím's cumulative overload checking, 2009; from memory).

#include <cstdint>
#include <vector>

#include "arrange/engine/engine.h"

namespace rangeline::engine {

/// Needs `work` done between `start` and `end` where `presence` holds.
struct EnergyTask {
    TimePoint start;
    TimePoint end;
    std::int64_t work = 0;  ///< > 0
    Literal presence;
};

/// In every stretch of time at most `rate` of work a unit of time is done.
class Energy : public Propagator {
  public:
    Energy(std::vector<EnergyTask> tasks, std::int64_t rate);

    std::vector<View> watched() const;
    bool propagate(Engine& engine) override;
    bool runsLast() const override { return true; }

  private:
    /// Of the tasks of a subtree that are in: their work, and the most of rate * earliest start +
    /// work from there on.
    struct Node {
        std::int64_t work = 0;
        std::int64_t envelope = 0;
    };

    void order(const Engine& engine);
    void insert(std::size_t leaf, const EnergyTask& task, Value earliest);
    std::size_t leafOfEnvelope() const;
    bool overload(Engine& engine, std::size_t lastInserted);
    void dropNeedless(std::vector<std::size_t>& kept, std::int64_t& excess) const;

    std::vector<EnergyTask> tasks_;
    std::int64_t rate_;
    int pause_ = 0;  ///< calls let pass after the next one that finds nothing
    int rest_ = 0;   ///< of those, still to come
    std::size_t leaves_ = 1;
    std::vector<Node> tree_;            ///< root at 1, leaves from leaves_
    std::vector<std::size_t> byStart_;  ///< tasks by earliest start
    std::vector<std::size_t> byEnd_;    ///< tasks by latest end
    std::vector<std::size_t> leafOf_;   ///< by task
    std::vector<Literal> because_;
};

/// Builds the propagator and hands it to the engine.
void addEnergy(Engine& engine, std::vector<EnergyTask> tasks, std::int64_t rate);

}  // namespace rangeline::engine
