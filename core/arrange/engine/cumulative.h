#pragma once
// A resource of limited capacity and what takes it, by the time-table rule: where a task must run
// whatever happens, it counts; nothing else may be pushed over the capacity there.

#include <cstdint>
#include <vector>

#include "arrange/engine/engine.h"

namespace rangeline::engine {

/// Takes `demand` from `start` to `end` if `presence` holds. Takes nothing while end <= start.
struct CumulativeTask {
    TimePoint start;
    TimePoint end;
    Value demand = 1;
    Literal presence;
};

class Cumulative : public Propagator {
  public:
    Cumulative(std::vector<CumulativeTask> tasks, Value capacity);

    /// The views whose bounds matter to this resource; the parts are the tasks.
    std::vector<Watched> watched() const;
    void moved(std::uint32_t part) override;
    bool propagate(Engine& engine) override;

  private:
    struct Stretch {
        Value begin = 0, end = 0, height = 0;
    };

    /// What is known of a task.
    struct Known {
        Value earliestStart = 0, latestStart = 0, earliestEnd = 0, latestEnd = 0;
        bool isThere = false;

        bool runs() const { return isThere && latestStart < earliestEnd; }
        bool runsAs(const Known& other) const {
            return runs() == other.runs() && latestStart == other.latestStart &&
                   earliestEnd == other.earliestEnd;
        }
    };

    static Known known(const Engine& engine, const CumulativeTask& task);
    void readMoves(const Engine& engine);
    void wakeWithin(Value from, Value to);
    void orderEvents();
    void buildProfile();
    bool overload(Engine& engine);
    bool narrow(Engine& engine, const CumulativeTask& task);
    std::size_t firstEndingAfter(Value instant) const;
    bool blocks(const Engine& engine, const Stretch& stretch, const CumulativeTask& task) const;
    bool narrowPresent(Engine& engine, const CumulativeTask& task);
    bool narrowAbsent(Engine& engine, const CumulativeTask& task);
    bool pushStart(Engine& engine, const CumulativeTask& task, const Stretch& stretch);
    bool pullEnd(Engine& engine, const CumulativeTask& task, const Stretch& stretch);
    bool rule(Engine& engine, const CumulativeTask& task, Value instant, Literal conclusion,
              bool needsStart, bool needsEnd, bool needsPresence);
    Value explainLoad(const Engine& engine, const CumulativeTask* except, Value instant,
                      Value atLeast);

    std::vector<CumulativeTask> tasks_;
    Value capacity_;
    std::vector<Known> known_;           ///< by task
    std::vector<std::uint8_t> isAwake_;  ///< by task: 1 if the profile may have something to say
    std::vector<std::uint32_t> moved_;   ///< tasks, since the last call
    std::vector<std::uint8_t> isMoved_;  ///< by task
    std::vector<Value> instants_;        ///< of a task's latest start and earliest end, in turn
    std::vector<std::uint8_t> runs_;     ///< by task: 1 if at some instant in every solution
    std::vector<std::uint32_t> byTime_;  ///< indices of instants, as they last stood in order
    std::vector<std::uint32_t> events_;  ///< of those, the ones of tasks that run
    std::vector<Stretch> profile_;
    Value highest_ = 0;  ///< of the profile
    std::vector<Literal> because_;
};

/// Builds the propagator and hands it to the engine. Tasks that can never collide are left out.
void addCumulative(Engine& engine, std::vector<CumulativeTask> tasks, Value capacity);

}  // namespace rangeline::engine
