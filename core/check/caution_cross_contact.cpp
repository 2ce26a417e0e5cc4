// Raw food and then food that is not cooked on one cutting surface, with no wash between. A wipe
// (a cleaning that takes no sink) is no wash here.

#include "check/cautions.h"
#include "check/ware_history.h"
#include "model/equipment_kinds.h"

namespace rangeline {

void cautionCrossContact(const UseIndex& index, int wareUnit, std::vector<Finding>& findings) {
    const auto* kind = findEquipmentKind(index.wareOfUnit(wareUnit).kind);
    if (kind == nullptr || !kind->isCuttingSurface) {
        return;
    }
    int raw = -1;
    walkWare(
        index, wareUnit, [&] { raw = -1; },
        [&](int task, const Interval& interval) {
            const Hazards& hazards = index.step(task).hazards;
            if (raw >= 0 && hazards.readyToEat) {
                findings.push_back({FindingCode::CrossContact,
                                    Severity::Caution,
                                    {index.keyOf(raw), index.keyOf(task)},
                                    {EquipmentSort::Ware, wareUnit},
                                    interval,
                                    {}});
            }
            if (hazards.raw) {
                raw = task;
            }
        });
}

}  // namespace rangeline
