// Whether the cooks placed on a step are enough, can do it, and share its pieces whole.

#include <algorithm>
#include <set>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

bool needsHands(const Placed& placed) {
    return std::ranges::any_of(placed.timing.segments, [](const TimedSegment& segment) {
        return segment.attention == Attention::Hands;
    });
}

void abilities(const UseIndex& index, int task, std::vector<Finding>& findings) {
    const std::string& ability = index.step(task).needsAbility;
    if (ability.empty()) {
        return;
    }
    for (const Share& share : index.placed(task).placement->hands) {
        const int unit = index.cookUnit(share.cook, index.groupOf(task));
        if (unit >= 0 && std::ranges::count(index.cookOf(unit).can, ability) == 0) {
            findings.push_back(collision(FindingCode::CannotDo, {index.keyOf(task)},
                                         {EquipmentSort::Cook, unit}, index.placed(task).interval,
                                         {ability}));
        }
    }
}

void pieces(const UseIndex& index, int task, std::vector<Finding>& findings) {
    const Placed& placed = index.placed(task);
    std::int64_t shared = 0;
    for (const Share& share : placed.placement->hands) {
        shared += share.pieces;
    }
    const std::int64_t mayBeShared =
        index.step(task).mayBeShared ? at(index.expanded().tasks, task).pieces : 0;
    if (shared != 0 && shared != mayBeShared) {
        findings.push_back(collision(FindingCode::PiecesDoNotAdd, {index.keyOf(task)}, {},
                                     placed.interval, {shared, mayBeShared}));
    }
}

}  // namespace

void checkCrew(const UseIndex& index, int task, std::vector<Finding>& findings) {
    const Placed& placed = index.placed(task);
    if (!placed || placed.placement->hands.empty() || !needsHands(placed)) {
        return;
    }
    std::set<CookId> cooks;
    for (const Share& share : placed.placement->hands) {
        cooks.insert(share.cook);
    }
    // Who is named twice cannot be in two places.
    const std::int64_t needed =
        std::max<std::int64_t>(index.step(task).cooks, std::ssize(placed.placement->hands));
    if (std::ssize(cooks) < needed) {
        findings.push_back(collision(FindingCode::TooFewHands, {index.keyOf(task)}, {},
                                     placed.interval,
                                     {static_cast<std::int64_t>(cooks.size()), needed}));
    }
    abilities(index, task, findings);
    pieces(index, task, findings);
}

}  // namespace rangeline
