// Nothing goes in or out, and no hands reach in, while a load wants the door shut.

#include <algorithm>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"
#include "check/oven.h"

namespace rangeline {
namespace {

bool strictlyInside(Instant t, const Interval& interval) {
    return interval.begin < t && t < interval.end;
}

bool wantsDoorShut(const UseIndex& index, const OvenUse& use) {
    return at(index.expanded().ovenLoads, use.load).heat.doorShut;
}

/// From the first to the last hands that have something else before and after them.
Interval handsInTheMiddle(const Placed& placed) {
    const auto other = [](const TimedSegment& segment) {
        return segment.attention != Attention::Hands && segment.length > Duration();
    };
    const auto& segments = placed.timing.segments;
    const auto first = std::ranges::find_if(segments, other);
    const auto last = std::find_if(segments.rbegin(), segments.rend(), other).base();
    Interval found;
    for (auto segment = first; segment < last; ++segment) {
        if (segment->attention == Attention::Hands && segment->length > Duration()) {
            const Instant begin = placed.interval.begin + segment->offset;
            found = {found.empty() ? begin : found.begin, begin + segment->length};
        }
    }
    return found;
}

}  // namespace

void checkDoorOpened(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    const auto opens = [&](const OvenUse& shut, const OvenUse& other) {
        if (wantsDoorShut(index, shut) && (strictlyInside(other.interval.begin, shut.interval) ||
                                           strictlyInside(other.interval.end, shut.interval))) {
            findings.push_back(collision(
                FindingCode::DoorOpened, {keyOfLoad(index, shut), keyOfLoad(index, other)},
                {EquipmentSort::Oven, unit}, intersection(shut.interval, other.interval)));
        }
    };
    forOverlaps(index.ovenUses(unit), [&](const OvenUse& a, const OvenUse& b) {
        opens(a, b);
        opens(b, a);
    });
}

void checkHandsBehindDoor(const UseIndex& index, int unit, std::vector<Finding>& findings) {
    for (const OvenUse& use : index.ovenUses(unit)) {
        const OvenLoad& load = at(index.expanded().ovenLoads, use.load);
        if (load.kept || !wantsDoorShut(index, use)) {
            continue;
        }
        const Interval hands = handsInTheMiddle(index.placed(load.owner));
        if (!hands.empty()) {
            findings.push_back(collision(FindingCode::HandsBehindShutDoor, {keyOfLoad(index, use)},
                                         {EquipmentSort::Oven, unit}, hands));
        }
    }
}

}  // namespace rangeline
