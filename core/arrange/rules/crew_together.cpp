// All cooks together cannot do more work than there is time: implied by the rules for each, but
// seen much earlier.

#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "arrange/rules/together.h"

namespace rangeline::rules {
namespace {

using engine::EnergyTask;

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// Work of a cook at that pace in a second; ten thousand at the pace on the card.
std::int64_t rateOf(const Cook& cook) {
    return 1'000'000 / std::max(cook.pacePercent, 1);
}

class CrewTogether {
  public:
    explicit CrewTogether(Formulation& f) : f_(f) {}

    void add() {
        for (std::size_t i = 0; i < f_.tasks.size(); ++i) {
            addTask(f_.tasks[i], of(f_.expanded.tasks[i].key.group));
        }
        for (std::size_t chain = 0; chain < f_.washes.size(); ++chain) {
            if (f_.washes[chain]) {
                addOneHand(f_.washes[chain]->start, f_.washes[chain]->ways,
                           f_.washes[chain]->presence, of(f_.expanded.chains[chain].group));
            }
        }
        for (const TurnOnVars& turnOn : f_.turnOns) {
            if (!turnOn.ways.empty()) {
                addOneHand(turnOn.start, turnOn.ways, turnOn.presence,
                           of(f_.expanded.stations.ovens[turnOn.oven].group));
            }
        }
        if (!f_.requirements.switched()) {
            addNeededWashes();  // what follows from that many requirements says little of each
        }
        for (auto& [crew, work] : works_) {
            std::int64_t rate = 0;
            Literal where = f_.yes();
            for (const int cook : crew) {
                rate += rateOf(f_.cook(cook));
                const int item = f_.expanded.stations.cooks[cook].item;
                where = f_.both(where, f_.asked(RequirementKind::Hands, item));
            }
            limitWork(f_, std::move(work.energy), rate, where);
            work.steps.insert(work.steps.end(), work.washes.begin(), work.washes.end());
            limitWork(f_, std::move(work.steps), rate, where);
            f_.limit(std::move(work.hands), static_cast<Value>(crew.size()), where);
        }
    }

  private:
    struct Work {
        std::vector<EnergyTask> energy;
        std::vector<EnergyTask> steps;   ///< the energy of steps, with their latest ends closer
        std::vector<EnergyTask> washes;  ///< as many as there must be, whichever they are
        std::vector<CumulativeTask> hands;
    };

    Work& of(int group) { return works_[f_.crewOf(group)]; }

    /// The time within which a segment lies whoever works, that which it takes in any case, and the
    /// least work.
    struct Extent {
        Value firstBegin = 0, lastBegin = 0, firstEnd = 0;
        Value lastEnd = 0;
        Value toEnd = 0;  ///< from its end to that of the step
        std::int64_t work = 0;
        Value cooks = 0;
    };

    Extent extentIn(const Staffing& staffing, std::size_t index) const {
        const TimedSegment& segment = staffing.timing.segments[index];
        Extent extent;
        extent.firstBegin = extent.lastBegin = toValue(segment.offset);
        extent.firstEnd = extent.lastEnd = toValue(segment.offset + segment.length);
        extent.toEnd = toValue(staffing.timing.length) - extent.firstEnd;
        extent.cooks = static_cast<Value>(staffing.cooks.size());
        for (std::size_t i = 0; i < segment.shares.size(); ++i) {
            extent.firstEnd =
                std::min(extent.firstEnd, extent.firstBegin + toValue(segment.shares[i]));
            extent.work += toValue(segment.shares[i]) * rateOf(f_.cook(staffing.cooks[i]));
        }
        return extent;
    }

    void addTask(const TaskVars& task, Work& work) {
        if (task.staffings.empty() || task.staffings.front().cooks.empty()) {
            return;
        }
        const auto& segments = task.staffings.front().timing.segments;
        for (std::size_t i = 0; i < segments.size(); ++i) {
            if (segments[i].attention != Attention::Hands) {
                continue;
            }
            Extent all = extentIn(task.staffings.front(), i);
            for (const Staffing& staffing : task.staffings) {
                const Extent one = extentIn(staffing, i);
                all.firstBegin = std::min(all.firstBegin, one.firstBegin);
                all.lastBegin = std::max(all.lastBegin, one.lastBegin);
                all.firstEnd = std::min(all.firstEnd, one.firstEnd);
                all.lastEnd = std::max(all.lastEnd, one.lastEnd);
                all.toEnd = std::min(all.toEnd, one.toEnd);
                all.work = std::min(all.work, one.work);
                all.cooks = std::min(all.cooks, one.cooks);
            }
            const TimePoint begin{task.start, all.firstBegin};
            // By the end of the step, which is known closer than its start and the slowest cook.
            const TimePoint end{task.end.view, task.end.offset - all.toEnd};
            work.steps.push_back({begin, end, all.work, f_.yes()});
            work.energy.push_back({begin, {task.start, all.lastEnd}, all.work, f_.yes()});
            if (all.lastBegin < all.firstEnd) {
                work.hands.push_back(
                    {{task.start, all.lastBegin}, {task.start, all.firstEnd}, all.cooks, f_.yes()});
            }
        }
    }

    template <class Ways>
    void addOneHand(View start, const Ways& ways, Literal presence, Work& work) {
        if (ways.empty()) {
            return;
        }
        Value longest = 0;
        Value shortest = ways.front().takes;
        std::int64_t least = ways.front().takes * rateOf(f_.cook(ways.front().cook));
        for (const auto& way : ways) {
            longest = std::max(longest, way.takes);
            shortest = std::min(shortest, way.takes);
            least = std::min(least, way.takes * rateOf(f_.cook(way.cook)));
        }
        work.energy.push_back({{start, 0}, {start, longest}, least, presence});
        if (shortest > 0) {
            work.hands.push_back({{start, 0}, {start, shortest}, 1, presence});
        }
    }

    /// Vessels that share chains, directly or through others, and those chains.
    struct Pool {
        std::set<int> units;
        std::vector<std::size_t> chains;
    };

    std::vector<Pool> pools() const {
        std::vector<Pool> pools;
        for (std::size_t c = 0; c < f_.wareOfChain.size(); ++c) {
            Pool joined{{f_.wareOfChain[c].units.begin(), f_.wareOfChain[c].units.end()}, {c}};
            std::erase_if(pools, [&](const Pool& pool) {
                const bool shares = std::ranges::any_of(
                    pool.units, [&](int unit) { return joined.units.contains(unit); });
                if (shares) {
                    joined.units.insert(pool.units.begin(), pool.units.end());
                    joined.chains.insert(joined.chains.end(), pool.chains.begin(),
                                         pool.chains.end());
                }
                return shares;
            });
            pools.push_back(std::move(joined));
        }
        return pools;
    }

    /// Batches that follow each other without a wash count once.
    std::size_t usesOf(const Pool& pool) const {
        std::set<int> families;
        std::size_t uses = 0;
        for (const std::size_t c : pool.chains) {
            const int family = f_.expanded.chains[c].family;
            uses += family < 0 || families.insert(family).second ? 1 : 0;
        }
        return uses;
    }

    std::int64_t leastWashWork(const Pool& pool, const std::vector<int>& crew) const {
        std::int64_t least = std::numeric_limits<std::int64_t>::max();
        for (const int unit : pool.units) {
            const int item = f_.expanded.stations.wares[unit].item;
            const Duration takes = f_.lesson.kitchen.wares[at(item)].cleaning.takes;
            for (const int cook : crew) {
                const Cook& washer = f_.cook(cook);
                least =
                    std::min(least, toValue(atPace(takes, washer.pacePercent)) * rateOf(washer));
            }
        }
        return least;
    }

    /// Of the uses of some vessels all but as many as there are vessels come after a wash. Which
    /// washes there are is open for long; that there is so much washing is not.
    void addNeededWashes() {
        for (const Pool& pool : pools()) {
            const int group = f_.expanded.chains[pool.chains.front()].group;
            const std::vector<int> crew = f_.crewOf(group);
            const std::size_t uses = usesOf(pool);
            const std::int64_t work = crew.empty() ? 0 : leastWashWork(pool, crew);
            const bool oneGroup = std::ranges::all_of(
                pool.chains, [&](std::size_t c) { return f_.expanded.chains[c].group == group; });
            if (!oneGroup || uses <= pool.units.size() || work <= 0) {
                continue;
            }
            Value last = f_.earliest;
            for (const std::size_t c : pool.chains) {
                last = std::max(last, f_.engine.high(f_.chainTaken[c].begin));
            }
            for (std::size_t i = pool.units.size(); i < uses; ++i) {
                works_[crew].washes.push_back(
                    {{engine::opposite(f_.earliestStart), 0}, f_.constant(last), work, f_.yes()});
            }
        }
    }

    Formulation& f_;
    std::map<std::vector<int>, Work> works_;  ///< by crew
};

}  // namespace

void addCrewTogether(Formulation& f) {
    CrewTogether(f).add();
}

}  // namespace rangeline::rules
