// Two things on one burner, and burners that are too small or too weak for what stands on them.

#include <cmath>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

PlacementKey keyOnBurner(const UseIndex& index, int hold, Instant then) {
    const BurnerHold& on = at(index.expanded().burnerHolds, hold);
    return index.keyOf(taskThen(index, on.tasks, then, on.owner));
}

void tooWide(const UseIndex& index, int unit, const BurnerUse& use,
             std::vector<Finding>& findings) {
    const Length widest = index.burnerOf(unit).widestVessel;
    for (const int chain : at(index.expanded().burnerHolds, use.hold).chains) {
        const Ware* ware = index.wareOf(chain);
        if (ware != nullptr && ware->width > widest) {
            findings.push_back(collision(
                FindingCode::WareTooWide, {keyOnBurner(index, use.hold, use.interval.begin)},
                {EquipmentSort::Burner, unit}, use.interval, {ware->width, widest}));
        }
    }
}

void tooWeak(const UseIndex& index, int unit, const BurnerUse& use,
             std::vector<Finding>& findings) {
    const auto& power = index.burnerOf(unit).power;
    for (const int task : at(index.expanded().burnerHolds, use.hold).tasks) {
        const auto* heat = std::get_if<BurnerHeat>(&index.step(task).heat);
        if (!power || heat == nullptr || !heat->leastPower ||
            power->watts() >= heat->leastPower->watts()) {
            continue;
        }
        findings.push_back(collision(FindingCode::BurnerTooWeak, {index.keyOf(task)},
                                     {EquipmentSort::Burner, unit}, index.placed(task).interval,
                                     {std::int64_t{std::llround(power->watts())},
                                      std::int64_t{std::llround(heat->leastPower->watts())}}));
    }
}

}  // namespace

void checkBurnerTwice(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    forOverlaps(index.burnerUses(unit), [&](const BurnerUse& a, const BurnerUse& b) {
        const Interval both = intersection(a.interval, b.interval);
        findings.push_back(collision(
            FindingCode::BurnerTwice,
            {keyOnBurner(index, a.hold, both.begin), keyOnBurner(index, b.hold, both.begin)},
            {EquipmentSort::Burner, unit}, both));
    });
}

void checkBurnerFit(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    for (const BurnerUse& use : index.burnerUses(unit)) {
        tooWide(index, unit, use, findings);
        tooWeak(index, unit, use, findings);
    }
}

}  // namespace rangeline
