#pragma once
// What a lesson comes down to: batches with their times, and everything that must hold between them
// and the equipment, with indexes instead of names. The checker, the planner and the timeline all
// read this; it is the only code that checker and planner share.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "model/lesson.h"
#include "model/stations.h"

namespace rangeline {

/// One batch of one step for one group.
struct Task {
    StepKey key;
    int serving = 0;  ///< indexes into the lesson
    int component = 0;
    int step = 0;
    int batches = 1;                ///< of the step, this one included
    int pieces = 0;                 ///< in this batch
    DurationRange time;             ///< of this batch, at pace 1
    std::vector<Segment> segments;  ///< lengths at the likely time and pace 1; none for an event
    int stretching = -1;            ///< index into segments
};

/// An instant of a step: the start of its first batch or the end of its last one.
struct StepPoint {
    std::vector<int> tasks;  ///< the batches meant; one where the step has one or batch by batch
    StepEnd end = StepEnd::End;
    Instant fixed;  ///< used where tasks is empty (food made before the lesson)
};

enum class WaitOrigin : std::uint8_t {
    Link,       ///< stated in the dish; `source` is its index there
    Uses,       ///< the food of one goes into the other
    CarriesOn,  ///< goes on in the same ware
    Keeping     ///< the food keeps only so long
};

/// to - from is at least `least` and at most `most`.
struct Wait {
    StepPoint from;
    StepPoint to;
    std::optional<Duration> least;
    std::optional<Duration> most;
    WaitOrigin origin = WaitOrigin::Link;
    int serving = 0;
    int source = -1;  ///< Keeping of food made before the lesson: index into Choices::doneAhead
    Storage storage = Storage::Room;  ///< for Keeping
};

enum class WindowOrigin : std::uint8_t {
    KitchenOpens,
    CookingMayStart,
    PlateKeeps,
    Serving,
    AfterServing,
    EveryoneOut
};

/// A task's start or end against the clock.
struct Window {
    int task = 0;
    StepEnd end = StepEnd::Start;
    std::optional<Instant> earliest;
    std::optional<Instant> latest;
    WindowOrigin origin = WindowOrigin::KitchenOpens;
};

enum class SpanBegin : std::uint8_t { TaskStart, TaskEnd, Opening };

/// How long something is taken: from a begin to the latest of the end of `endOf` (if >= 0) and the
/// starts of `untilStartOf`. Opening stands for "since before the lesson".
struct Span {
    SpanBegin begin = SpanBegin::TaskStart;
    int beginTask = -1;
    int endOf = -1;
    std::vector<int> untilStartOf;
};

/// A sequence of tasks in one ware.
struct Chain {
    WashKey key;  ///< names the chain, and its wash
    std::vector<int>
        tasks;  ///< in order; empty for food stored in its ware that nothing carries on
    std::string kind;
    Length leastWidth;
    std::optional<std::int64_t> leastMillilitres;
    int group = 0;
    int owner = -1;  ///< task whose placement names the ware at index key.spot; -1: fixedSpot does
    std::optional<WareSpot> fixedSpot;
    Span span;
    int family = -1;  ///< chains with the same number >= 0 follow each other without a wash
};

/// One burner, taken for one task or for several with the vessel staying on the heat.
struct BurnerHold {
    std::vector<int> tasks;   ///< empty where food is only kept hot
    int owner = 0;            ///< task whose placement names the burner
    int spot = 0;             ///< index into Placement::burners, or keptOn
    bool kept = false;        ///< names it in keptOn
    std::vector<int> chains;  ///< vessels that stand on it
    Span span;
    int group = 0;
};

/// Food that stays on the heat between two steps, the first of which ends in watching: the cook who
/// watched its last segment goes on until the next starts.
struct WatchedWait {
    int task = 0;
    int next = 0;
};

/// One load in an oven.
struct OvenLoad {
    int owner = 0;      ///< task whose placement names the spot
    bool kept = false;  ///< names it in keptIn
    OvenHeat heat;
    std::vector<int> chains;  ///< vessels in it, which decide its slots; if none heat.slots does
    Span span;
    int group = 0;
};

/// An amount of a pool.
struct PoolHold {
    int unit = 0;  ///< of Stations::pools
    int amount = 1;
    int owner = -1;  ///< task, or -1 for food stored since before the lesson
    Span span;
};

struct Expanded {
    std::vector<Task> tasks;  ///< by group, then in lesson order, then by batch
    std::vector<Wait> waits;
    std::vector<Window> windows;
    std::vector<Chain> chains;
    std::vector<BurnerHold> burnerHolds;
    std::vector<WatchedWait> watchedWaits;
    std::vector<OvenLoad> ovenLoads;
    std::vector<PoolHold> poolHolds;
    Stations stations;
    std::vector<StepId> aheadBeforeParts;  ///< done ahead although food they use is not

    /// -1 if the lesson has no such task.
    int taskOf(const StepKey& key) const;

    std::unordered_map<StepId, int> firstTask;  ///< of group 0; look up with taskOf
    int tasksPerGroup = 0;
};

/// Requires validate(lesson) to be empty.
Expanded expand(const Lesson& lesson);

const Step& stepOf(const Lesson& lesson, const Task& task);
/// When this task's dish is served to its group.
Instant servingOf(const Lesson& lesson, const Task& task);
/// How many rack slots the load takes in the wares given (one per chain of the load).
int slotsOf(const OvenLoad& load, std::span<const Ware* const> wares);

// ---- times of a placed task -----------------------------------------------------------------

/// A cook's part in a task: the pace, and the pieces if the pieces are split (else 0).
struct HandShare {
    int pacePercent = 100;
    int pieces = 0;
};

struct TimedSegment {
    Attention attention = Attention::Away;
    Duration offset;  ///< from the task's start
    Duration length;
    /// For hands: how long each share works from `offset` on; at most length.
    std::vector<Duration> shares;
};

struct Timing {
    Duration length;
    std::vector<TimedSegment> segments;
};

/// Pace times hands segments (rounded up to a whole second), the slowest cook deciding unless
/// pieces are split. `lasts` (>= 0) states the whole length; the stretching segment takes the
/// difference. Where the others alone are longer, what came last is cut short.
Timing timingOf(const Task& task, std::span<const HandShare> shares,
                std::optional<Duration> lasts = std::nullopt);
/// A length of hands work at a pace, rounded up.
Duration atPace(Duration length, int pacePercent);

/// Turning an oven on takes one cook's hands for this long (at pace 1); warming up starts after it.
inline constexpr Duration turnOnTakes = Duration::seconds(30);

}  // namespace rangeline
