// Reading placements into a UseIndex, from scratch and after an edit.

#include <algorithm>
#include <set>

#include "analysis/at.h"
#include "analysis/use_index.h"

namespace rangeline {
namespace {

/// Takes the old use out of the lists and puts the new one in; both units are touched.
template <class AtUnit, class Use>
void replace(AtUnit& old, const AtUnit& now, UnitUses<Use>& uses, Subject sort,
             TouchedSubjects& touched) {
    touched.add(sort, old.unit);
    touched.add(sort, now.unit);
    if (old == now) {
        return;
    }
    if (old.unit >= 0 && !old.use.interval.empty()) {
        uses.remove(old.unit, old.use);
    }
    if (now.unit >= 0 && !now.use.interval.empty()) {
        uses.add(now.unit, now.use);
    }
    old = now;
}

}  // namespace

// ---- placements -----------------------------------------------------------------------------

void UseIndex::readAll() {
    TouchedSubjects ignored;
    for (int node = 0; node < nodes(); ++node) {
        readPlaced(node);
    }
    for (int chain = 0; chain < count(Subject::Wash); ++chain) {
        readChain(chain, ignored);
    }
    for (std::size_t i = 0; i < burnerAt_.size(); ++i) {
        const int hold = static_cast<int>(i);
        replace(burnerAt_[i], findBurner(hold), burners_, Subject::Burner, ignored);
    }
    for (std::size_t i = 0; i < ovenAt_.size(); ++i) {
        replace(ovenAt_[i], findOven(static_cast<int>(i)), ovens_, Subject::Oven, ignored);
    }
    for (std::size_t i = 0; i < poolAt_.size(); ++i) {
        replace(poolAt_[i], findPool(static_cast<int>(i)), pools_, Subject::Pool, ignored);
    }
    for (int node = 0; node < nodes(); ++node) {
        readCooks(node, ignored);
    }
}

void UseIndex::readPlaced(int node) {
    Placed& here = at(placed_, node);
    if (!here) {
        here = Placed();
    } else if (isTask(node)) {
        here = readTask(node);
    } else if (isWash(node)) {
        here = readWash(chainOfWash(node));
    } else {
        here = handsOnly(node, turnOnTakes);
    }
}

std::vector<HandShare> UseIndex::sharesOf(int node) const {
    std::vector<HandShare> shares;
    for (const Share& share : placed(node).placement->hands) {
        const int unit = cookUnit(share.cook, groupOf(node));
        shares.push_back({unit < 0 ? 100 : cookOf(unit).pacePercent, share.pieces});
    }
    return shares;
}

Placed UseIndex::readTask(int task) const {
    const Placement& placement = *placed(task).placement;
    Timing timing = timingOf(at(expanded_->tasks, task), sharesOf(task), placement.lasts);
    const Interval interval{placement.start, placement.start + timing.length};
    return {&placement, interval, std::move(timing)};
}

Placed UseIndex::readWash(int chain) const {
    const Ware* ware = wareOf(chain);
    return handsOnly(washNode(chain), ware == nullptr ? Duration() : ware->cleaning.takes);
}

/// A placement that is nothing but the hands of one cook, for `length` at pace 1.
Placed UseIndex::handsOnly(int node, Duration length) const {
    const Placement& placement = *placed(node).placement;
    const auto shares = sharesOf(node);
    const Duration takes =
        placement.lasts.value_or(atPace(length, shares.empty() ? 100 : shares.front().pacePercent));
    return {&placement,
            {placement.start, placement.start + takes},
            {takes, {{Attention::Hands, Duration(), takes, {takes}}}}};
}

// ---- uses of equipment ----------------------------------------------------------------------

UseIndex::At<BurnerUse> UseIndex::findBurner(int hold) const {
    const BurnerHold& wanted = at(expanded_->burnerHolds, hold);
    const Placement* placement = placed(wanted.owner).placement;
    const auto interval = intervalOf(wanted.span, wanted.tasks);
    if (placement == nullptr || !interval) {
        return {};
    }
    const auto& named = wanted.kept ? placement->keptOn : placement->burners;
    const int item = wanted.spot < static_cast<int>(named.size())
                         ? burnerItem(kitchen(), at(named, wanted.spot))
                         : -1;
    return item < 0
               ? At<BurnerUse>()
               : At<BurnerUse>{stations().burners.unitOf(item, wanted.group), {*interval, hold}};
}

UseIndex::At<OvenUse> UseIndex::findOven(int load) const {
    const OvenLoad& wanted = at(expanded_->ovenLoads, load);
    const Placement* placement = placed(wanted.owner).placement;
    const auto interval = intervalOf(wanted.span);
    if (placement == nullptr || !interval) {
        return {};
    }
    const auto& spot = wanted.kept ? placement->keptIn : placement->oven;
    const int item = spot ? ovenItem(kitchen(), spot->oven) : -1;
    if (item < 0) {
        return {};
    }
    std::vector<const Ware*> wares;
    for (const int chain : wanted.chains) {
        if (const Ware* ware = wareOf(chain)) {
            wares.push_back(ware);
        }
    }
    return {stations().ovens.unitOf(item, wanted.group),
            {*interval, load, spot->firstSlot, slotsOf(wanted, wares), spot->setTo, spot->mode}};
}

UseIndex::At<WareUse> UseIndex::findWare(int chain) const {
    const Chain& wanted = at(expanded_->chains, chain);
    const auto interval = intervalOf(wanted.span, wanted.tasks);
    const WareSpot* spot = wanted.fixedSpot ? &*wanted.fixedSpot : nullptr;
    if (wanted.owner >= 0 && placed(wanted.owner)) {
        const auto& named = placed(wanted.owner).placement->wares;
        const int index = wanted.key.spot;
        spot = index < static_cast<int>(named.size()) ? &at(named, index) : nullptr;
    }
    const int item = spot == nullptr ? -1 : wareItem(kitchen(), spot->ware);
    if (!interval || item < 0 || spot->number < 0 ||
        spot->number >= at(kitchen().wares, item).count) {
        return {};
    }
    return {stations().wares.unitOf(item, wanted.group, spot->number), {*interval, chain, false}};
}

UseIndex::At<WareUse> UseIndex::findWash(int chain) const {
    const Placed& wash = placed(washNode(chain));
    return wash ? At<WareUse>{wareUnit(chain), {wash.interval, chain, true}} : At<WareUse>();
}

UseIndex::At<PoolUse> UseIndex::findPool(int hold) const {
    const PoolHold& wanted = at(expanded_->poolHolds, hold);
    const auto interval = intervalOf(wanted.span);
    return interval ? At<PoolUse>{wanted.unit, {*interval, wanted.owner, hold, wanted.amount}}
                    : At<PoolUse>();
}

UseIndex::At<PoolUse> UseIndex::findSink(int chain) const {
    const Placed& wash = placed(washNode(chain));
    const Ware* ware = wareOf(chain);
    if (!wash || ware == nullptr || !ware->cleaning.sink) {
        return {};
    }
    const int item = poolItem(kitchen(), *ware->cleaning.sink);
    return {stations().pools.unitOf(item, at(expanded_->chains, chain).group),
            {wash.interval, washNode(chain), -1, 1}};
}

// ---- uses of cooks --------------------------------------------------------------------------

/// When a watch segment must be watched: also while the vessel stays on the heat after the last.
Interval UseIndex::watchOf(int task, std::size_t segment) const {
    const Placed& here = placed(task);
    const TimedSegment& timed = here.timing.segments[segment];
    const Instant begin = here.interval.begin + timed.offset;
    Instant end = begin + timed.length;
    const int next = touches_.watchedUntil(task);
    if (segment + 1 == here.timing.segments.size() && next >= 0 && placed(next)) {
        end = std::max(end, placed(next).interval.begin);
    }
    return {begin, end};
}

std::vector<UseIndex::CookAt> UseIndex::findCooks(int node) const {
    std::vector<CookAt> found;
    const Placed& here = placed(node);
    const auto add = [&](const CookId& cook, bool hands, const Interval& interval, std::size_t s) {
        const int unit = cookUnit(cook, groupOf(node));
        if (unit >= 0 && !interval.empty()) {
            found.push_back({unit, hands, {interval, node, static_cast<int>(s)}});
        }
    };
    std::size_t watches = 0;
    for (std::size_t s = 0; s < here.timing.segments.size(); ++s) {
        const TimedSegment& segment = here.timing.segments[s];
        const Instant begin = here.interval.begin + segment.offset;
        if (segment.attention == Attention::Hands) {
            const auto& hands = here.placement->hands;
            for (std::size_t i = 0; i < hands.size() && i < segment.shares.size(); ++i) {
                add(hands[i].cook, true, {begin, begin + segment.shares[i]}, s);
            }
        } else if (segment.attention == Attention::Watch) {
            if (watches < here.placement->watchers.size()) {
                add(here.placement->watchers[watches], false, watchOf(node, s), s);
            }
            ++watches;
        }
    }
    return found;
}

// ---- reading again --------------------------------------------------------------------------

void UseIndex::readChain(int chain, TouchedSubjects& touched) {
    replace(at(wareAt_, chain), findWare(chain), wares_, Subject::Ware, touched);
    readPlaced(washNode(chain));
    readCleaning(chain, touched);
    for (const int task : at(expanded_->chains, chain).tasks) {
        touched.add(Subject::Task, task);
    }
}

void UseIndex::readCleaning(int chain, TouchedSubjects& touched) {
    touched.add(Subject::Wash, chain);
    touched.add(Subject::Ware, wareUnit(chain));
    replace(at(washAt_, chain), findWash(chain), wares_, Subject::Ware, touched);
    replace(at(sinkAt_, chain), findSink(chain), pools_, Subject::Pool, touched);
    readCooks(washNode(chain), touched);
}

void UseIndex::readCooks(int node, TouchedSubjects& touched) {
    const auto usesOf = [this](const CookAt& cook) -> UnitUses<CookUse>& {
        return cook.hands ? hands_ : watches_;
    };
    for (const CookAt& old : at(cooksAt_, node)) {
        usesOf(old).remove(old.unit, old.use);
        touched.add(Subject::Cook, old.unit);
    }
    at(cooksAt_, node) = findCooks(node);
    for (const CookAt& now : at(cooksAt_, node)) {
        usesOf(now).add(now.unit, now.use);
        touched.add(Subject::Cook, now.unit);
    }
}

/// What depends on the placement of a task.
void UseIndex::readUses(int task, TouchedSubjects& touched) {
    const Touches::OfTask& mine = touches_.of(task);
    for (const int chain : mine.chains) {
        readChain(chain, touched);
    }
    for (const int hold : mine.burnerHolds) {
        replace(at(burnerAt_, hold), findBurner(hold), burners_, Subject::Burner, touched);
    }
    for (const int load : mine.ovenLoads) {
        replace(at(ovenAt_, load), findOven(load), ovens_, Subject::Oven, touched);
    }
    for (const int hold : mine.poolHolds) {
        replace(at(poolAt_, hold), findPool(hold), pools_, Subject::Pool, touched);
    }
    readCooks(task, touched);
    if (const int before = touches_.watchedSince(task); before >= 0) {
        readCooks(before, touched);
    }
}

/// The waits for what goes into the makers of what the task uses: whether a clock ends with one of
/// them depends on whether the food goes further.
void UseIndex::touchWaitsOfMakers(int task, TouchedSubjects& touched) const {
    const auto isUser = [](const Wait& wait, int user) {
        return wait.origin == WaitOrigin::Uses &&
               std::ranges::find(wait.to.tasks, user) != wait.to.tasks.end();
    };
    for (const int number : touches_.of(task).waits) {
        const Wait& wait = at(expanded_->waits, number);
        if (!isUser(wait, task)) {
            continue;
        }
        for (const int maker : wait.from.tasks) {
            for (const int earlier : touches_.of(maker).waits) {
                if (isUser(at(expanded_->waits, earlier), maker)) {
                    touched.add(Subject::Wait, earlier);
                }
            }
        }
    }
}

/// Also those of the steps that take the food further without heating it: how long it has been out
/// by then changes with it.
void UseIndex::touchWaits(int task, TouchedSubjects& touched) const {
    touchWaitsOfMakers(task, touched);
    std::set<int> seen{task};
    std::vector<int> open{task};
    while (!open.empty()) {
        const int next = open.back();
        open.pop_back();
        for (const int number : touches_.of(next).waits) {
            const Wait& wait = at(expanded_->waits, number);
            touched.add(Subject::Wait, number);
            if (wait.origin != WaitOrigin::Uses ||
                std::ranges::find(wait.from.tasks, next) == wait.from.tasks.end()) {
                continue;
            }
            for (const int user : wait.to.tasks) {
                const bool goesOn = std::holds_alternative<std::monostate>(step(user).heat);
                if (goesOn && seen.insert(user).second) {
                    open.push_back(user);
                }
            }
        }
    }
}

void UseIndex::touch(int task, TouchedSubjects& touched) const {
    touched.add(Subject::Task, task);
    touchWaits(task, touched);
    for (const int window : touches_.of(task).windows) {
        touched.add(Subject::Window, window);
    }
    if (step(task).classWatches) {
        for (int cook = 0; cook < stations().cooks.size(); ++cook) {
            touched.add(Subject::Cook, cook);
        }
    }
}

void UseIndex::readNode(int node, TouchedSubjects& touched) {
    if (isTask(node)) {
        readUses(node, touched);
        touch(node, touched);
    } else if (isWash(node)) {
        readCleaning(chainOfWash(node), touched);
    } else {
        touched.add(Subject::TurnOn, ovenOfTurnOn(node));
        touched.add(Subject::Oven, ovenOfTurnOn(node));
        readCooks(node, touched);
    }
}

TouchedSubjects UseIndex::update(std::span<const PlacementKey> changed) {
    std::vector<int> again;
    for (const PlacementKey& key : changed) {
        const int node = nodeOf(key);
        if (node < 0) {
            continue;
        }
        const auto found = lesson_->placements.find(key);
        at(placed_, node).placement = found == lesson_->placements.end() ? nullptr : &found->second;
        again.push_back(node);
    }
    for (const int node : again) {
        readPlaced(node);
    }
    TouchedSubjects touched;
    for (const int node : again) {
        readNode(node, touched);
    }
    touched.tidy();
    return touched;
}

}  // namespace rangeline
