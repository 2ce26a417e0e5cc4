// An oven at its highest setting may not reach it, or not hold it with the door opened often. Told
// once for each oven, at the first such load; a broiler always runs flat out.

#include <algorithm>

#include "analysis/at.h"
#include "check/cautions.h"

namespace rangeline {

void cautionOvenLimit(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings) {
    const Temperature highest = index.ovenOf(ovenUnit).highest;
    const auto uses = index.ovenUses(ovenUnit);
    const auto found = std::ranges::find_if(uses, [&](const OvenUse& use) {
        return use.mode != OvenMode::Broil && use.setTo == highest;
    });
    if (found == uses.end()) {
        return;
    }
    const int owner = at(index.expanded().ovenLoads, found->load).owner;
    findings.push_back({FindingCode::AtItsLimit,
                        Severity::Caution,
                        {index.keyOf(owner)},
                        {EquipmentSort::Oven, ovenUnit},
                        found->interval,
                        {found->setTo, highest}});
}

}  // namespace rangeline
