// The first load goes into an oven that was turned on to its setting and had the time to warm up.

#include "check/checks.h"
#include "check/find.h"
#include "check/oven.h"

namespace rangeline {
namespace {

void otherSetting(const UseIndex& index, int unit, const OvenUse& first,
                  std::vector<Finding>& findings) {
    const int node = index.turnOnNode(unit);
    const auto& set = index.placed(node).placement->oven;
    if (!set || index.placed(node).placement->started) {
        return;  // once it is on, the cook turns the dial to what goes in first
    }
    const std::vector<PlacementKey> keys{index.keyOf(node), keyOfLoad(index, first)};
    const EquipmentRef oven{EquipmentSort::Oven, unit};
    const Interval until{index.placed(node).interval.begin, first.interval.begin};
    if (set->setTo != first.setTo) {
        findings.push_back(collision(FindingCode::OvenTwoTemperatures, keys, oven, until,
                                     {set->setTo, first.setTo}));
    } else if (set->mode != first.mode) {
        findings.push_back(collision(FindingCode::OvenTwoModes, keys, oven, until,
                                     {modeKey(set->mode), modeKey(first.mode)}));
    }
}

}  // namespace

void checkOvenWarm(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    if (index.ovenUses(unit).empty()) {
        return;
    }
    const OvenUse& first = index.ovenUses(unit).front();
    const Placed& turnOn = index.placed(index.turnOnNode(unit));
    const EquipmentRef oven{EquipmentSort::Oven, unit};
    if (!turnOn) {
        findings.push_back(collision(FindingCode::OvenNotTurnedOn, {keyOfLoad(index, first)}, oven,
                                     first.interval));
        return;
    }
    const Duration needed = index.ovenOf(unit).warmUpTo(first.setTo);
    const Duration given = first.interval.begin - turnOn.interval.end;
    if (given < needed) {
        findings.push_back(collision(FindingCode::OvenNotWarm, {keyOfLoad(index, first)}, oven,
                                     {first.interval.begin, turnOn.interval.end + needed},
                                     {needed, given}));
    }
    otherSetting(index, unit, first, findings);
}

}  // namespace rangeline
