// Placements that leave out what the step needs, or name what the kitchen or the crew lacks.

#include <algorithm>
#include <string>

#include "analysis/at.h"
#include "check/checks.h"
#include "check/find.h"

namespace rangeline {
namespace {

/// Gathers what one placement lacks; each sort of thing is said once.
class Assignment {
  public:
    Assignment(const UseIndex& index, int node, std::vector<Finding>& findings)
        : index_(index), node_(node), findings_(findings) {}

    void missing(const char* what) { add(FindingCode::MissingAssignment, what); }
    void unknown(const std::string& id) { add(FindingCode::UnknownEquipment, id); }

    /// `named` is what the placement names at the place of a thing that was not found, if anything.
    template <class Named>
    void notFound(const std::vector<Named>& named, int place, const char* what) {
        if (place < static_cast<int>(named.size())) {
            unknown(idOf(at(named, place)));
        } else {
            missing(what);
        }
    }

    void cooks(bool needsHands) {
        const Placement& placement = *index_.placed(node_).placement;
        if (needsHands && placement.hands.empty()) {
            missing("cook");
        }
        for (const Share& share : placement.hands) {
            cook(share.cook);
        }
        for (const CookId& watcher : placement.watchers) {
            cook(watcher);
        }
    }

  private:
    static const std::string& idOf(const BurnerId& burner) { return burner.text; }
    static const std::string& idOf(const WareSpot& spot) { return spot.ware.text; }

    void cook(const CookId& id) {
        if (index_.cookUnit(id, index_.groupOf(node_)) < 0) {
            unknown(id.text);
        }
    }

    void add(FindingCode code, const std::string& figure) {
        Finding finding =
            collision(code, {index_.keyOf(node_)}, {}, index_.placed(node_).interval, {figure});
        if (std::ranges::find(findings_, finding) == findings_.end()) {
            findings_.push_back(std::move(finding));
        }
    }

    const UseIndex& index_;
    int node_;
    std::vector<Finding>& findings_;
};

void heat(const UseIndex& index, int task, Assignment& assignment) {
    const Placement& placement = *index.placed(task).placement;
    const Touches::OfTask& mine = index.touches().of(task);
    for (const int i : mine.burnerHolds) {
        const BurnerHold& hold = at(index.expanded().burnerHolds, i);
        if (hold.owner == task && index.burnerUnit(i) < 0) {
            assignment.notFound(hold.kept ? placement.keptOn : placement.burners, hold.spot,
                                "burner");
        }
    }
    for (const int i : mine.ovenLoads) {
        const OvenLoad& load = at(index.expanded().ovenLoads, i);
        if (load.owner != task || index.ovenUnit(i) >= 0) {
            continue;
        }
        const auto& spot = load.kept ? placement.keptIn : placement.oven;
        if (spot) {
            assignment.unknown(spot->oven.text);
        } else {
            assignment.missing("oven");
        }
    }
}

void wares(const UseIndex& index, int task, Assignment& assignment) {
    for (const int i : index.touches().of(task).chains) {
        const Chain& chain = at(index.expanded().chains, i);
        if (chain.owner == task && index.wareUnit(i) < 0) {
            assignment.notFound(index.placed(task).placement->wares, chain.key.spot, "ware");
        }
    }
}

}  // namespace

void checkTaskAssignment(const UseIndex& index, int task, std::vector<Finding>& findings) {
    const Placed& placed = index.placed(task);
    if (!placed) {
        return;
    }
    Assignment assignment(index, task, findings);
    heat(index, task, assignment);
    wares(index, task, assignment);
    const auto segments = [&](Attention attention) {
        return std::ranges::count(placed.timing.segments, attention, &TimedSegment::attention);
    };
    assignment.cooks(segments(Attention::Hands) > 0);
    if (std::ssize(placed.placement->watchers) < segments(Attention::Watch)) {
        assignment.missing("watcher");
    }
}

void checkWashAssignment(const UseIndex& index, int chain, std::vector<Finding>& findings) {
    const int node = index.washNode(chain);
    if (index.placed(node)) {
        Assignment(index, node, findings).cooks(true);
    }
}

void checkTurnOnAssignment(const UseIndex& index, int ovenUnit, std::vector<Finding>& findings) {
    const int node = index.turnOnNode(ovenUnit);
    if (!index.placed(node)) {
        return;
    }
    Assignment assignment(index, node, findings);
    assignment.cooks(true);
    if (!index.placed(node).placement->oven) {
        assignment.missing("oven");
    }
}

}  // namespace rangeline
