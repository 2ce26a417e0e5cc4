// One temperature and one mode at a time, and time enough to change them while the oven is empty.

#include "check/checks.h"
#include "check/find.h"
#include "check/oven.h"

namespace rangeline {

void checkOvenSettings(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    forOverlaps(index.ovenUses(unit), [&](const OvenUse& a, const OvenUse& b) {
        const Interval both = intersection(a.interval, b.interval);
        const EquipmentRef oven{EquipmentSort::Oven, unit};
        if (a.setTo != b.setTo) {
            findings.push_back(collision(FindingCode::OvenTwoTemperatures,
                                         {keyOfLoad(index, a), keyOfLoad(index, b)}, oven, both,
                                         {a.setTo, b.setTo}));
        } else if (a.mode != b.mode) {
            findings.push_back(collision(FindingCode::OvenTwoModes,
                                         {keyOfLoad(index, a), keyOfLoad(index, b)}, oven, both,
                                         {modeKey(a.mode), modeKey(b.mode)}));
        }
    });
}

void checkOvenChange(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    const Oven& oven = index.ovenOf(unit);
    const OvenUse* last = nullptr;  // the one that leaves last of those before
    for (const OvenUse& use : index.ovenUses(unit)) {
        if (last != nullptr && use.interval.begin >= last->interval.end) {
            const Duration needed = oven.changeOver(last->setTo, last->mode, use.setTo, use.mode);
            const Duration given = use.interval.begin - last->interval.end;
            if (given < needed) {
                findings.push_back(collision(FindingCode::OvenChangedTooFast,
                                             {keyOfLoad(index, *last), keyOfLoad(index, use)},
                                             {EquipmentSort::Oven, unit},
                                             {last->interval.end, use.interval.begin},
                                             {needed, given, last->setTo, use.setTo}));
            }
        }
        if (last == nullptr || use.interval.end > last->interval.end) {
            last = &use;
        }
    }
}

}  // namespace rangeline
