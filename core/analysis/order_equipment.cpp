// The arcs of an OrderGraph that come from equipment and cooks.

#include <algorithm>

#include "analysis/at.h"
#include "analysis/order_graph.h"

namespace rangeline {
namespace {

template <class List>
int sizeOf(const List& list) {
    return static_cast<int>(list.size());
}

std::size_t asSize(int count) {
    return static_cast<std::size_t>(count);
}

}  // namespace

void OrderGraph::addBurners() {
    std::vector<std::vector<Taken>> takens(asSize(index_.count(Subject::Burner)));
    for (int i = 0; i < sizeOf(index_.expanded().burnerHolds); ++i) {
        if (const int unit = index_.burnerUnit(i); unit >= 0) {
            const BurnerHold& hold = at(index_.expanded().burnerHolds, i);
            at(takens, unit).push_back(takenBySpan(hold.span, hold.tasks));
        }
    }
    for (int unit = 0; unit < sizeOf(takens); ++unit) {
        withinCapacity(at(takens, unit), 1, {HeldBy::Equipment, {EquipmentSort::Burner, unit}, -1});
    }
}

void OrderGraph::addWares() {
    std::vector<std::vector<Taken>> takens(asSize(index_.count(Subject::Ware)));
    for (int i = 0; i < sizeOf(index_.expanded().chains); ++i) {
        if (const int unit = index_.wareUnit(i); unit >= 0) {
            const Chain& chain = at(index_.expanded().chains, i);
            at(takens, unit).push_back(takenBySpan(chain.span, chain.tasks));
            if (index_.placed(index_.washNode(i))) {
                at(takens, unit).push_back(takenByNode(index_.washNode(i)));
            }
        }
    }
    for (int unit = 0; unit < sizeOf(takens); ++unit) {
        withinCapacity(at(takens, unit), 1, {HeldBy::Equipment, {EquipmentSort::Ware, unit}, -1});
    }
}

void OrderGraph::addPools() {
    std::vector<std::vector<Taken>> takens(asSize(index_.count(Subject::Pool)));
    for (const PoolHold& hold : index_.expanded().poolHolds) {
        if (index_.intervalOf(hold.span)) {
            at(takens, hold.unit).push_back(takenBySpan(hold.span));
            at(takens, hold.unit).back().amount = hold.amount;
        }
    }
    for (int unit = 0; unit < sizeOf(takens); ++unit) {
        for (const PoolUse& use : index_.poolUses(unit)) {
            if (use.hold < 0) {
                at(takens, unit).push_back(takenByNode(use.node));
            }
        }
        withinCapacity(at(takens, unit), index_.poolOf(unit).capacity,
                       {HeldBy::Equipment, {EquipmentSort::Pool, unit}, -1});
    }
}

void OrderGraph::addCooks() {
    for (int unit = 0; unit < index_.count(Subject::Cook); ++unit) {
        const Reason reason{HeldBy::Cook, {EquipmentSort::Cook, unit}, -1};
        std::vector<Taken> takens;
        for (const CookUse& use : index_.handsUses(unit)) {
            takens.push_back(takenByHands(use));
        }
        inSequence(takens, reason);
        takens.clear();
        for (const CookUse& use : index_.watchUses(unit)) {
            takens.push_back(takenByWatch(use));
        }
        withinCapacity(takens, index_.kitchen().watchLimit, reason);
        for (const int talk : index_.talks()) {
            if (index_.placed(talk) && index_.attends(unit, talk)) {
                addTalk(talk, unit);
            }
        }
    }
}

/// What the cook does before the talk stays before it, and what he does after, after.
void OrderGraph::addTalk(int talk, int cook) {
    const Reason reason{HeldBy::Cook, {EquipmentSort::Cook, cook}, -1};
    const Placed& placed = index_.placed(talk);
    for (const TimedSegment& segment : placed.timing.segments) {
        if (segment.attention != Attention::Hands) {
            continue;
        }
        const Instant begin = placed.interval.begin + segment.offset;
        const Instant end = begin + segment.length;
        const Taken watched{{begin, end},
                            Term{talk, segment.offset},
                            {Term{talk, segment.offset + segment.length}},
                            1};
        for (const CookUse& use : index_.handsUses(cook)) {
            if (use.interval.end <= begin) {
                after(takenByHands(use), watched, Duration(), reason);
            } else if (use.interval.begin >= end) {
                after(watched, takenByHands(use), Duration(), reason);
            }
        }
    }
}

// ---- ovens ----------------------------------------------------------------------------------

void OrderGraph::addOvens() {
    for (int unit = 0; unit < index_.count(Subject::Oven); ++unit) {
        addSlots(unit);
        addSettings(unit);
        addWarmUp(unit);
        addShutDoors(unit);
    }
    addKeptEmpty();
}

/// Food that is kept hot in an oven for no time, as placed, is used at once also when all slips: an
/// oven that has another setting by then would not do.
void OrderGraph::addKeptEmpty() {
    for (int i = 0; i < sizeOf(index_.expanded().ovenLoads); ++i) {
        const Taken taken = takenBySpan(at(index_.expanded().ovenLoads, i).span);
        const int unit = index_.ovenUnit(i);
        if (unit >= 0 && taken.interval.empty()) {
            staysEmpty(taken, {HeldBy::Equipment, {EquipmentSort::Oven, unit}, -1});
        }
    }
}

void OrderGraph::addSlots(int unit) {
    for (int slot = 0; slot < index_.ovenOf(unit).slots; ++slot) {
        std::vector<Taken> takens;
        for (const OvenUse& use : index_.ovenUses(unit)) {
            if (use.firstSlot <= slot && slot < use.firstSlot + use.slots) {
                takens.push_back(takenBySpan(at(index_.expanded().ovenLoads, use.load).span));
            }
        }
        inSequence(takens, {HeldBy::Equipment, {EquipmentSort::Oven, unit}, -1});
    }
}

namespace {

bool sameSetting(const OvenUse& a, const OvenUse& b) {
    return a.setTo == b.setTo && a.mode == b.mode;
}

}  // namespace

/// Every load of one setting comes a change-over after every load of the setting before.
void OrderGraph::addSettings(int unit) {
    const auto uses = index_.ovenUses(unit);
    const Reason reason{HeldBy::Equipment, {EquipmentSort::Oven, unit}, -1};
    const auto taken = [this](const OvenUse& use) {
        return takenBySpan(at(index_.expanded().ovenLoads, use.load).span);
    };
    std::size_t before = 0;  // the loads of the setting before are [before, first)
    std::size_t first = 0;
    for (std::size_t i = 1; i < uses.size(); ++i) {
        if (!sameSetting(uses[i - 1], uses[i])) {
            before = first;
            first = i;
        }
        for (std::size_t j = before; j < first; ++j) {
            const Duration gap = index_.ovenOf(unit).changeOver(uses[j].setTo, uses[j].mode,
                                                                uses[i].setTo, uses[i].mode);
            after(taken(uses[j]), taken(uses[i]), gap, reason);
        }
    }
}

void OrderGraph::addWarmUp(int unit) {
    const int node = index_.turnOnNode(unit);
    const auto uses = index_.ovenUses(unit);
    if (!index_.placed(node)) {
        return;
    }
    for (const OvenUse& use : uses) {
        if (!sameSetting(use, uses.front())) {
            break;
        }
        after(takenByNode(node), takenBySpan(at(index_.expanded().ovenLoads, use.load).span),
              index_.ovenOf(unit).warmUpTo(use.setTo),
              {HeldBy::Equipment, {EquipmentSort::Oven, unit}, -1});
    }
}

/// A load stays before, around or after each load that wants the door shut.
void OrderGraph::addShutDoors(int unit) {
    const Reason reason{HeldBy::Equipment, {EquipmentSort::Oven, unit}, -1};
    const auto& loads = index_.expanded().ovenLoads;
    for (const OvenUse& shut : index_.ovenUses(unit)) {
        if (!at(loads, shut.load).heat.doorShut) {
            continue;
        }
        const Taken inside = takenBySpan(at(loads, shut.load).span);
        for (const OvenUse& use : index_.ovenUses(unit)) {
            const Taken other = takenBySpan(at(loads, use.load).span);
            if (use.load == shut.load) {
                continue;
            }
            if (use.interval.end <= shut.interval.begin) {
                after(other, inside, Duration(), reason);
            } else if (use.interval.begin >= shut.interval.end) {
                after(inside, other, Duration(), reason);
            } else {
                around(other, inside, reason);
            }
        }
    }
}

/// The outer one begins no later than the inner and ends no sooner.
void OrderGraph::around(const Taken& outer, const Taken& inner, const Reason& reason) {
    if (outer.begin && inner.begin) {
        add(*outer.begin, *inner.begin, Duration(), reason);
    }
    const Term& last = *std::ranges::max_element(outer.ends, std::less<>(),
                                                 [this](const Term& term) { return now(term); });
    for (const Term& end : inner.ends) {
        add(end, last, Duration(), reason);
    }
}

}  // namespace rangeline
