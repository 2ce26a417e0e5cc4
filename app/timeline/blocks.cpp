#include "timeline/blocks.h"

#include <algorithm>

#include "analysis/at.h"
#include "timeline/main_lane.h"

namespace rangeline {
namespace {

class BlockMaker {
  public:
    BlockMaker(const UseIndex& index, const Lanes& lanes, Instant earliest)
        : index_(index), lanes_(lanes), earliest_(earliest) {}

    std::vector<TimelineBlock> run() {
        addMains();
        const Stations& stations = index_.stations();
        for (int unit = 0; unit < stations.ovens.size(); ++unit) {
            addOven(unit);
        }
        for (int unit = 0; unit < stations.burners.size(); ++unit) {
            addBurner(unit);
        }
        for (int unit = 0; unit < stations.wares.size(); ++unit) {
            addWare(unit);
        }
        for (int unit = 0; unit < stations.cooks.size(); ++unit) {
            addCook(unit);
        }
        for (int unit = 0; unit < stations.pools.size(); ++unit) {
            addPool(unit);
        }
        return std::move(blocks_);
    }

  private:
    void addMains() {
        mainLane_.assign(static_cast<std::size_t>(index_.nodes()), -1);
        for (int node = 0; node < index_.nodes(); ++node) {
            if (!index_.placed(node)) {
                continue;
            }
            TimelineBlock block;
            block.item = node;
            block.lane = at(mainLane_, node) = mainLaneOf(index_, lanes_, node);
            block.kind = kindOf(node);
            block.main = true;
            block.interval = index_.isTurnOn(node)
                                 ? turnOnInterval(index_, index_.ovenOfTurnOn(node))
                                 : index_.placed(node).interval;
            if (at(lanes_.all(), block.lane).kind == LaneKind::Cook) {
                block.segments = segmentsOf(node);
            }
            blocks_.push_back(std::move(block));
        }
    }

    BlockKind kindOf(int node) const {
        if (index_.isTask(node)) {
            return BlockKind::Work;
        }
        return index_.isWash(node) ? BlockKind::Wash : BlockKind::TurnOn;
    }

    std::vector<BlockSegment> segmentsOf(int node) const {
        const Placed& placed = index_.placed(node);
        std::vector<BlockSegment> segments;
        for (const TimedSegment& segment : placed.timing.segments) {
            const Instant begin = placed.interval.begin + segment.offset;
            segments.push_back({segment.attention, {begin, begin + segment.length}});
        }
        return segments;
    }

    void add(int node, int lane, BlockKind kind, Interval interval) {
        interval.begin = std::max(interval.begin, earliest_);
        if (node >= 0 && index_.placed(node) && !interval.empty()) {
            blocks_.push_back({node, lane, kind, false, interval, {}});
        }
    }

    /// The task's own stretch of a lane, unless that is its main block.
    void addWork(int task, int lane) {
        if (index_.placed(task) && at(mainLane_, task) != lane) {
            add(task, lane, BlockKind::Work, index_.placed(task).interval);
        }
    }

    /// Something taken for several tasks in turn, with the waits between and after them.
    void addSequence(int lane, const std::vector<int>& tasks, const Interval& taken) {
        Instant free = taken.begin;
        int before = -1;
        for (const int task : tasks) {
            if (!index_.placed(task)) {
                continue;
            }
            addWork(task, lane);
            const Interval& own = index_.placed(task).interval;
            add(before >= 0 ? before : task, lane, BlockKind::Waiting, {free, own.begin});
            free = std::max(free, own.end);
            before = task;
        }
        add(before, lane, BlockKind::Waiting, {free, taken.end});
    }

    void addOven(int unit) {
        const int slots = index_.ovenOf(unit).slots;
        for (const OvenUse& use : index_.ovenUses(unit)) {
            const OvenLoad& load = at(index_.expanded().ovenLoads, use.load);
            for (int slot = use.firstSlot; slot < use.firstSlot + use.slots; ++slot) {
                if (slot < 0 || slot >= slots) {
                    continue;
                }
                const int lane = lanes_.slotOf(unit, slot);
                if (load.kept) {
                    add(load.owner, lane, BlockKind::Waiting, use.interval);
                } else {
                    addWork(load.owner, lane);
                }
            }
        }
    }

    void addBurner(int unit) {
        const int lane = lanes_.laneOf({EquipmentSort::Burner, unit});
        for (const BurnerUse& use : index_.burnerUses(unit)) {
            const BurnerHold& hold = at(index_.expanded().burnerHolds, use.hold);
            if (hold.kept) {
                add(hold.owner, lane, BlockKind::Waiting, use.interval);
            } else {
                addSequence(lane, hold.tasks, use.interval);
            }
        }
    }

    void addWare(int unit) {
        const int lane = lanes_.laneOf({EquipmentSort::Ware, unit});
        for (const WareUse& use : index_.wareUses(unit)) {
            const Chain& chain = at(index_.expanded().chains, use.chain);
            if (use.wash) {
                continue;  // its main block is here already
            }
            if (chain.tasks.empty()) {
                add(firstOf(chain.span.untilStartOf), lane, BlockKind::Waiting, use.interval);
            } else {
                addSequence(lane, chain.tasks, use.interval);
            }
        }
    }

    static int firstOf(const std::vector<int>& tasks) { return tasks.empty() ? -1 : tasks.front(); }

    void addPool(int unit) {
        const int lane = lanes_.laneOf({EquipmentSort::Pool, unit});
        for (const PoolUse& use : index_.poolUses(unit)) {
            if (use.hold < 0) {
                add(use.node, lane, kindOf(use.node), use.interval);
                continue;
            }
            const PoolHold& hold = at(index_.expanded().poolHolds, use.hold);
            if (hold.span.begin == SpanBegin::TaskStart) {
                addWork(use.node, lane);
            } else {
                const int node = use.node >= 0 ? use.node : firstOf(hold.span.untilStartOf);
                add(node, lane, BlockKind::Waiting, use.interval);
            }
        }
    }

    void addCook(int unit) {
        std::vector<std::pair<CookUse, Attention>> uses;
        for (const CookUse& use : index_.handsUses(unit)) {
            uses.emplace_back(use, Attention::Hands);
        }
        for (const CookUse& use : index_.watchUses(unit)) {
            uses.emplace_back(use, Attention::Watch);
        }
        std::ranges::stable_sort(uses, {}, [](const auto& use) {
            return std::pair(use.first.node, use.first.interval);
        });
        for (const auto& [use, attention] : uses) {
            addAttention(unit, use, attention);
        }
    }

    /// Stretches of one step that follow each other without a gap become one block.
    void addAttention(int unit, const CookUse& use, Attention attention) {
        const int lane = lanes_.laneOf({EquipmentSort::Cook, unit});
        Interval left = use.interval;
        if (at(mainLane_, use.node) == lane) {
            left.begin = std::max(left.begin, index_.placed(use.node).interval.end);
        }
        if (left.empty()) {
            return;
        }
        TimelineBlock* last = blocks_.empty() ? nullptr : &blocks_.back();
        if (last != nullptr && last->item == use.node && last->lane == lane && !last->main &&
            last->interval.end == left.begin) {
            last->interval.end = left.end;
            last->segments.push_back({attention, left});
        } else {
            blocks_.push_back({use.node, lane, kindOf(use.node), false, left, {{attention, left}}});
        }
    }

    const UseIndex& index_;
    const Lanes& lanes_;
    Instant earliest_;
    std::vector<int> mainLane_;
    std::vector<TimelineBlock> blocks_;
};

}  // namespace

Interval turnOnInterval(const UseIndex& index, int ovenUnit) {
    const Placed& placed = index.placed(index.turnOnNode(ovenUnit));
    Interval interval = placed.interval;
    if (placed.placement->oven) {
        interval.end =
            interval.end + index.ovenOf(ovenUnit).warmUpTo(placed.placement->oven->setTo);
    }
    return interval;
}

std::vector<TimelineBlock> makeBlocks(const UseIndex& index, const Lanes& lanes, Instant earliest) {
    return BlockMaker(index, lanes, earliest).run();
}

}  // namespace rangeline
