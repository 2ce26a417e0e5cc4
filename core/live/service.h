#pragma once
// One cooking of a lesson: which steps run, which are done, and the timers that count to their
// cues. Only apply() changes it, so the same events always lead to the same state.

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "analysis/use_index.h"
#include "live/event.h"

namespace rangeline::live {

enum class Stage : std::uint8_t { Waiting, Running, Done, Skipped };

enum class Bell : std::uint8_t {
    None,      ///< nothing to ring for: hands work without a cue, or nothing runs
    Counting,  ///< rings at Work::cueAt
    Ringing,
    Stopped
};

/// A placement as it really goes.
struct Work {
    Stage stage = Stage::Waiting;
    std::optional<Instant> started;    ///< empty where the cook only said that it is done
    std::optional<Instant> ended;      ///< when it was done, or skipped
    std::optional<Instant> notBefore;  ///< of what waits: the cook put it off until then
    Instant cueAt;                     ///< of what runs: when to look whether it is ready
    Duration afterCue;                 ///< what is left to do then
    int generation = 0;                ///< of its timer; another one after each change
    Bell bell = Bell::None;
    int bellNumber = 0;  ///< 1 to 9 while it rings, each once; 0 where all are taken
    Duration rangLate;   ///< how long after the cue it rang
    int timesNotReady = 0;

    friend bool operator==(const Work&, const Work&) = default;
};

class Service {
  public:
    /// Requires validate(lesson) to be empty. What has no placement is no part of the service.
    explicit Service(Lesson lesson);

    /// To try events out on, or to look at in another thread.
    Service copy() const;

    /// Whether it means anything now; otherwise nothing changes: a step done twice, an alarm of a
    /// timer that is no more.
    bool apply(const Event& event, Instant at);

    /// With what began where and when it did, and as long as it took; what runs as long as
    /// known until now. What was skipped has no placement any more.
    const Lesson& lesson() const { return plan_->lesson; }
    const UseIndex& index() const { return plan_->index; }
    /// The plan that is followed: the lesson as planned or, once that was replaced, as it stood
    /// then with what is planned from there on.
    const UseIndex& followed() const { return followed_->index; }
    /// Of every placement, skipped ones too.
    const std::map<PlacementKey, Work>& works() const { return works_; }
    /// Requires a key of works().
    const Work& work(const PlacementKey& key) const { return works_.at(key); }
    bool hasEnded() const { return ended_; }
    /// By how much every serving was put off, all told.
    Duration servedLater() const { return servedLater_; }

    /// The same lesson with everything that runs lasting until `now` at least: as it stands then.
    Lesson standing(Instant now) const;

  private:
    Service() = default;
    struct Plan {
        explicit Plan(Lesson given)
            : lesson(std::move(given)), expanded(expand(lesson)), index(lesson, expanded) {}
        Lesson lesson;
        Expanded expanded;
        UseIndex index;
    };

    bool on(const Started& event, Instant at);
    bool on(const live::Done& event, Instant at);
    bool on(const MoreTime& event, Instant at);
    bool on(const NotReady& event, Instant at);
    bool on(const live::Skipped& event, Instant at);
    bool on(const AlarmFired& event, Instant at);
    bool on(const AlarmStopped& event, Instant at);
    bool on(const PlanReplaced& event, Instant at);
    bool on(const live::ServedLater& event, Instant at);
    bool on(const ClockSet& event, Instant at);
    bool on(const ClockNoted& event, Instant at);
    bool on(const Ended& event, Instant at);

    Work* find(const PlacementKey& key);
    void begin(const PlacementKey& key, Work& work, Instant at);
    void freeze(const PlacementKey& key, Instant start, Instant end);
    void finish(const PlacementKey& key, Work& work, Stage stage, Instant at);
    bool putOff(const PlacementKey& key, Instant until);
    int freeBellNumber();

    std::unique_ptr<Plan> plan_;  ///< the index points into it
    std::unique_ptr<Plan> followed_;
    std::map<PlacementKey, Work> works_;
    int lastBell_ = 0;  ///< not given again at once: a second press must not stop another alarm
    Duration servedLater_;
    bool ended_ = false;
};

}  // namespace rangeline::live
