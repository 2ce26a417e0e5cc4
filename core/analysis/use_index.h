#pragma once
// Who uses what and when, read from a lesson's placements: nothing here is planned or derived anew.
// The checks, the critical path and the timeline all read this index, and an edit of placements
// updates it in time proportional to what the edit touches.

#include <optional>
#include <span>
#include <vector>

#include "analysis/subject.h"
#include "analysis/touches.h"
#include "analysis/uses.h"
#include "model/expand.h"

namespace rangeline {

/// The begin of what was there before the lesson.
inline constexpr Instant longBefore = Instant::atSeconds(-(std::int64_t{1} << 40));

/// A placement as it lies in time. Unplaced: placement is null and the rest is empty.
struct Placed {
    const Placement* placement = nullptr;
    Interval interval;
    Timing timing;

    explicit operator bool() const { return placement != nullptr; }
};

/// Where a StepPoint lies, and the task that decides it (-1 where it is fixed).
struct PointInTime {
    Instant at;
    int task = -1;
};

/// Every placement that a lesson may have carries a number, its node: first the tasks (node =
/// task), then the wash of each chain, then turning on each oven. Things that are not placed, or
/// placed on equipment that the kitchen lacks, do not appear among the uses. A use whose end
/// depends on steps that are not placed ends at what is known.
class UseIndex {
  public:
    /// `expanded` is that of the lesson; both outlive the index. After a change of anything but the
    /// lesson's placements, or when the lesson is assigned to, make a new index.
    UseIndex(const Lesson& lesson, const Expanded& expanded);

    /// Call after placements with these keys were put, changed or taken away. Keys that the lesson
    /// does not know are ignored.
    TouchedSubjects update(std::span<const PlacementKey> changed);

    const Lesson& lesson() const { return *lesson_; }
    const Kitchen& kitchen() const { return lesson_->kitchen; }
    const Expanded& expanded() const { return *expanded_; }
    const Stations& stations() const { return expanded_->stations; }
    /// How many subjects of that sort there are.
    int count(Subject sort) const;

    // ---- placements ----
    int nodes() const { return static_cast<int>(placed_.size()); }
    int tasks() const { return static_cast<int>(expanded_->tasks.size()); }
    int washNode(int chain) const { return tasks() + chain; }
    int turnOnNode(int ovenUnit) const { return firstTurnOn_ + ovenUnit; }
    bool isTask(int node) const { return node < tasks(); }
    bool isWash(int node) const { return node >= tasks() && node < firstTurnOn_; }
    bool isTurnOn(int node) const { return node >= firstTurnOn_; }
    /// Requires isWash(node).
    int chainOfWash(int node) const { return node - tasks(); }
    /// Requires isTurnOn(node).
    int ovenOfTurnOn(int node) const { return node - firstTurnOn_; }
    /// -1 if the lesson has no such placement.
    int nodeOf(const PlacementKey& key) const;
    PlacementKey keyOf(int node) const;
    int groupOf(int node) const;
    const Placed& placed(int node) const { return placed_[static_cast<std::size_t>(node)]; }
    /// The step of a task.
    const Step& step(int task) const;

    // ---- times ----
    /// Nothing while one of its batches is not placed.
    std::optional<PointInTime> timeOf(const StepPoint& point) const;
    /// Nothing while the begin is not placed. Lasts at least until the end of `tasks`.
    std::optional<Interval> intervalOf(const Span& span, std::span<const int> tasks = {}) const;

    // ---- where things are; -1: not placed, or on something the kitchen lacks ----
    int burnerUnit(int hold) const { return burnerAt_[static_cast<std::size_t>(hold)].unit; }
    int ovenUnit(int load) const { return ovenAt_[static_cast<std::size_t>(load)].unit; }
    int wareUnit(int chain) const { return wareAt_[static_cast<std::size_t>(chain)].unit; }
    /// Requires ovenUnit(load) >= 0.
    const OvenUse& ovenUse(int load) const { return ovenAt_[static_cast<std::size_t>(load)].use; }
    /// The ware of a chain, or null.
    const Ware* wareOf(int chain) const;
    const Burner& burnerOf(int unit) const;
    const Oven& ovenOf(int unit) const;
    const Ware& wareOfUnit(int unit) const;
    const Pool& poolOf(int unit) const;
    const Cook& cookOf(int unit) const;
    /// The crew's unit for a cook named by a placement of that group, or -1.
    int cookUnit(const CookId& cook, int group) const;
    /// Whether the groups share this cook.
    bool isSharedCook(int unit) const { return sharedCooks_[static_cast<std::size_t>(unit)]; }

    /// Whether the cook has to listen to that placed talk: he is of its group and does not give it.
    bool attends(int cookUnit, int talk) const;

    // ---- uses per unit, sorted by time ----
    std::span<const BurnerUse> burnerUses(int unit) const { return burners_.of(unit); }
    std::span<const OvenUse> ovenUses(int unit) const { return ovens_.of(unit); }
    /// Chains and washes.
    std::span<const WareUse> wareUses(int unit) const { return wares_.of(unit); }
    std::span<const PoolUse> poolUses(int unit) const { return pools_.of(unit); }
    std::span<const CookUse> handsUses(int unit) const { return hands_.of(unit); }
    /// A watch that lasts while the vessel stays on the heat for the next step includes that wait.
    std::span<const CookUse> watchUses(int unit) const { return watches_.of(unit); }

    /// The tasks that the class watches, in order.
    const std::vector<int>& talks() const { return touches_.talks(); }
    /// What depends on which task; fixed for a lesson.
    const Touches& touches() const { return touches_; }

  private:
    template <class Use>
    struct At {
        int unit = -1;
        Use use;

        friend bool operator==(const At&, const At&) = default;
    };
    struct CookAt {
        int unit = 0;
        bool hands = true;
        CookUse use;
    };

    void readAll();
    void readPlaced(int node);
    Placed readTask(int task) const;
    Placed readWash(int chain) const;
    Placed handsOnly(int node, Duration length) const;
    std::vector<HandShare> sharesOf(int node) const;

    At<BurnerUse> findBurner(int hold) const;
    At<OvenUse> findOven(int load) const;
    At<WareUse> findWare(int chain) const;
    At<WareUse> findWash(int chain) const;
    At<PoolUse> findPool(int hold) const;
    At<PoolUse> findSink(int chain) const;
    std::vector<CookAt> findCooks(int node) const;
    Interval watchOf(int task, std::size_t segment) const;

    void readChain(int chain, TouchedSubjects& touched);
    void readCleaning(int chain, TouchedSubjects& touched);
    void readCooks(int node, TouchedSubjects& touched);
    void readUses(int task, TouchedSubjects& touched);
    void readNode(int node, TouchedSubjects& touched);
    void touch(int task, TouchedSubjects& touched) const;
    void touchWaits(int task, TouchedSubjects& touched) const;
    void touchWaitsOfMakers(int task, TouchedSubjects& touched) const;

    const Lesson* lesson_;
    const Expanded* expanded_;
    Touches touches_;
    int firstTurnOn_ = 0;
    std::vector<bool> sharedCooks_;
    std::vector<bool> crew_;  ///< by cook of the kitchen
    std::vector<Placed> placed_;
    std::vector<At<BurnerUse>> burnerAt_;
    std::vector<At<OvenUse>> ovenAt_;
    std::vector<At<WareUse>> wareAt_;
    std::vector<At<WareUse>> washAt_;
    std::vector<At<PoolUse>> poolAt_;
    std::vector<At<PoolUse>> sinkAt_;
    std::vector<std::vector<CookAt>> cooksAt_;
    UnitUses<BurnerUse> burners_;
    UnitUses<OvenUse> ovens_;
    UnitUses<WareUse> wares_;
    UnitUses<PoolUse> pools_;
    UnitUses<CookUse> hands_;
    UnitUses<CookUse> watches_;
};

}  // namespace rangeline
