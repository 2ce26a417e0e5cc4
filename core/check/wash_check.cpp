// Between two chains in one ware lies an unbroken wash that is long enough.

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

bool needsWash(const UseIndex& index, int unit, int before, int after) {
    const int family = at(index.expanded().chains, before).family;
    const bool together = family >= 0 && family == at(index.expanded().chains, after).family;
    return !together && index.wareOfUnit(unit).cleaning.takes > Duration();
}

/// A wash that overlaps one of the two is said by the check for one ware in two uses.
bool washedBetween(const Placed& wash, const WareUse& before, const WareUse& after) {
    const bool between = wash && wash.interval.begin >= before.interval.end &&
                         wash.interval.end <= after.interval.begin;
    return between || (wash && (wash.interval.overlaps(before.interval) ||
                                wash.interval.overlaps(after.interval)));
}

/// How long the wash takes the cook placed on it.
Duration washTakes(const UseIndex& index, int chain, Duration takes) {
    const Placed& wash = index.placed(index.washNode(chain));
    if (!wash || wash.placement->hands.empty()) {
        return takes;
    }
    const int cook = index.cookUnit(wash.placement->hands.front().cook,
                                    at(index.expanded().chains, chain).group);
    return atPace(takes, cook < 0 ? 100 : index.cookOf(cook).pacePercent);
}

}  // namespace

void checkNotYetWashed(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    const WareUse* before = nullptr;
    for (const WareUse& use : index.wareUses(unit)) {
        if (use.wash) {
            continue;
        }
        if (before != nullptr && before->interval.end <= use.interval.begin &&
            needsWash(index, unit, before->chain, use.chain) &&
            !washedBetween(index.placed(index.washNode(before->chain)), *before, use)) {
            findings.push_back(collision(FindingCode::NotYetWashed,
                                         {keyInWare(index, before->chain, before->interval.end),
                                          keyInWare(index, use.chain, use.interval.begin),
                                          index.keyOf(index.washNode(before->chain))},
                                         {EquipmentSort::Ware, unit},
                                         {before->interval.end, use.interval.begin},
                                         {index.wareOfUnit(unit).cleaning.takes}));
        }
        before = &use;
    }
}

void checkWash(const UseIndex& index, int chain, std::vector<Finding>& findings) {
    const Placed& wash = index.placed(index.washNode(chain));
    const int unit = index.wareUnit(chain);
    if (!wash || unit < 0) {
        return;
    }
    const PlacementKey key = index.keyOf(index.washNode(chain));
    const EquipmentRef ware{EquipmentSort::Ware, unit};
    const Duration needed = washTakes(index, chain, index.wareOfUnit(unit).cleaning.takes);
    // One that was begun at the stove is done when the cook says so.
    if (!wash.placement->started && wash.timing.length < needed) {
        findings.push_back(collision(FindingCode::WashTooShort, {key}, ware, wash.interval,
                                     {needed, wash.timing.length}));
    }
    const Chain& before = at(index.expanded().chains, chain);
    const auto used = index.intervalOf(before.span, before.tasks);
    if (used && !used->empty() && wash.interval.end <= used->begin) {
        findings.push_back(collision(
            FindingCode::TooEarlyAfter, {keyInWare(index, chain, used->end), key}, ware,
            {wash.interval.begin, used->end}, {wash.interval.begin - used->end, Duration()}));
    }
}

}  // namespace rangeline
