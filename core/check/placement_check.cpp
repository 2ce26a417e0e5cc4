// Steps without a placement, and placements that lie between the marks of the lesson's grain.

#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

void offGrain(const UseIndex& index, int node, std::vector<Finding>& findings) {
    const Placed& placed = index.placed(node);
    const Duration grain = index.lesson().head.grain;
    if (!placed || placed.placement->started ||
        placed.placement->start.inSeconds() % grain.inSeconds() == 0) {
        return;
    }
    findings.push_back(
        collision(FindingCode::OffGrain, {index.keyOf(node)}, {}, placed.interval, {grain}));
}

}  // namespace

void checkNotPlaced(const UseIndex& index, int task, std::vector<Finding>& findings) {
    if (!index.placed(task)) {
        findings.push_back(
            {FindingCode::NotPlaced, Severity::Open, {index.keyOf(task)}, {}, {}, {}});
    }
}

void checkTaskGrain(const UseIndex& index, int task, std::vector<Finding>& findings) {
    offGrain(index, task, findings);
}

void checkWashGrain(const UseIndex& index, int chain, std::vector<Finding>& findings) {
    offGrain(index, index.washNode(chain), findings);
}

void checkTurnOnGrain(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings) {
    offGrain(index, index.turnOnNode(ovenUnit), findings);
}

}  // namespace rangeline
