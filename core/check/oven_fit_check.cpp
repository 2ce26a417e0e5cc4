// Each load's own setting: inside what the step accepts and what the oven and its dial can do.

#include <algorithm>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"
#include "check/oven.h"

namespace rangeline {
namespace {

/// "25 F" or "10 C": the dial counts in its own scale.
std::string dialText(TemperatureDelta step) {
    const auto celsius = TemperatureDelta::celsius(1).units();
    if (step.units() % celsius == 0) {
        return std::to_string(step.units() / celsius) + " C";
    }
    return std::to_string(step.units() / TemperatureDelta::fahrenheit(1).units()) + " F";
}

void temperature(const UseIndex& index, int unit, const OvenUse& use,
                 std::vector<Finding>& findings) {
    const Oven& oven = index.ovenOf(unit);
    const OvenHeat& heat = at(index.expanded().ovenLoads, use.load).heat;
    const Temperature lowest = std::max(heat.lowest, oven.lowest);
    const Temperature highest = std::min(heat.highest, oven.highest);
    const auto add = [&](FindingCode code, std::vector<Figure> figures) {
        findings.push_back(collision(code, {keyOfLoad(index, use)}, {EquipmentSort::Oven, unit},
                                     use.interval, std::move(figures)));
    };
    if (use.setTo < lowest || use.setTo > highest) {
        add(FindingCode::OvenOutsideRange, {use.setTo, lowest, highest});
    } else if (oven.settingsWithin(use.setTo, use.setTo).empty()) {
        add(FindingCode::OvenOffDial, {use.setTo, dialText(oven.dialStep)});
    }
}

}  // namespace

void checkOvenFit(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    const EquipmentRef oven{EquipmentSort::Oven, unit};
    for (const OvenUse& use : index.ovenUses(unit)) {
        temperature(index, unit, use, findings);
        const OvenMode wanted = at(index.expanded().ovenLoads, use.load).heat.mode;
        if (use.mode != wanted) {
            findings.push_back(collision(FindingCode::OvenWrongMode, {keyOfLoad(index, use)}, oven,
                                         use.interval, {modeKey(use.mode), modeKey(wanted)}));
        } else if (std::ranges::count(index.ovenOf(unit).modes, use.mode) == 0) {
            findings.push_back(collision(FindingCode::UnknownEquipment, {keyOfLoad(index, use)},
                                         oven, use.interval, {modeKey(use.mode)}));
        }
    }
}

}  // namespace rangeline
