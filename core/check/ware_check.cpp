// One ware in two uses at once, and wares that are not what the steps in them need.

#include <algorithm>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

PlacementKey keyOfUse(const UseIndex& index, const WareUse& use, Instant then) {
    return use.wash ? index.keyOf(index.washNode(use.chain)) : keyInWare(index, use.chain, then);
}

void fit(const UseIndex& index, int unit, const WareUse& use, std::vector<Finding>& findings) {
    const Chain& chain = at(index.expanded().chains, use.chain);
    const Ware& ware = index.wareOfUnit(unit);
    const auto add = [&](FindingCode code, std::vector<Figure> figures) {
        findings.push_back(collision(code, {PlacementKey(chain.key.after)},
                                     {EquipmentSort::Ware, unit}, use.interval,
                                     std::move(figures)));
    };
    if (ware.kind != chain.kind) {
        add(FindingCode::WareWrongKind, {ware.kind, chain.kind});
    }
    if (ware.width < chain.leastWidth) {
        add(FindingCode::WareTooSmall, {ware.width, chain.leastWidth});
    }
    if (chain.leastMillilitres && ware.millilitres.value_or(0) < *chain.leastMillilitres) {
        add(FindingCode::WareTooSmall, {ware.millilitres.value_or(0), *chain.leastMillilitres});
    }
}

}  // namespace

void checkWareTwice(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    forOverlaps(index.wareUses(unit), [&](const WareUse& a, const WareUse& b) {
        const Interval both = intersection(a.interval, b.interval);
        findings.push_back(
            collision(FindingCode::WareTwice,
                      {keyOfUse(index, a, both.begin), keyOfUse(index, b, both.begin)},
                      {EquipmentSort::Ware, unit}, both));
    });
}

void checkWareFit(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    for (const WareUse& use : index.wareUses(unit)) {
        if (!use.wash) {
            fit(index, unit, use, findings);
        }
    }
}

}  // namespace rangeline
