// Every load has rack slots of its own, next to each other.

#include <algorithm>

#include "check/checks.h"
#include "check/find.h"
#include "check/oven.h"

namespace rangeline {

void checkOvenSlots(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    const EquipmentRef oven{EquipmentSort::Oven, unit};
    forOverlaps(index.ovenUses(unit), [&](const OvenUse& a, const OvenUse& b) {
        const int first = std::max(a.firstSlot, b.firstSlot);
        if (first < std::min(a.firstSlot + a.slots, b.firstSlot + b.slots)) {
            findings.push_back(
                collision(FindingCode::OvenSlotTwice, {keyOfLoad(index, a), keyOfLoad(index, b)},
                          oven, intersection(a.interval, b.interval), {std::int64_t{first} + 1}));
        }
    });
    const int slots = index.ovenOf(unit).slots;
    for (const OvenUse& use : index.ovenUses(unit)) {
        if (use.firstSlot < 0 || use.firstSlot + use.slots > slots) {
            const int left = use.firstSlot < 0 ? 0 : std::max(slots - use.firstSlot, 0);
            findings.push_back(collision(FindingCode::OvenTooFewSlots, {keyOfLoad(index, use)},
                                         oven, use.interval,
                                         {std::int64_t{use.slots}, std::int64_t{left}}));
        }
    }
}

}  // namespace rangeline
