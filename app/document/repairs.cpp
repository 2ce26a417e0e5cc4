#include "document/repairs.h"

#include <algorithm>

#include "analysis/at.h"
#include "document/free_place.h"
#include "document/placing.h"
#include "document/suitable.h"
#include "document/turn_on.h"
#include "model/handwork.h"

namespace rangeline {
namespace {

class RepairFinder {
  public:
    RepairFinder(LessonState& state, const Finding& finding)
        : state_(state), index_(state.index()), finding_(finding) {}

    std::vector<Repair> run() {
        switch (finding_.code) {
            case FindingCode::HandworkUnchanged:
                timeByPiece();
                return std::move(repairs_);
            case FindingCode::NotPlaced:
                placeIt();
                break;
            case FindingCode::NotYetWashed:
                addWash();
                useOther();
                break;
            case FindingCode::OvenNotTurnedOn:
            case FindingCode::OvenNotWarm:
                turnOn();
                moveEach();
                break;
            default:
                useOther();
                moveEach();
        }
        pinOff();
        return std::move(repairs_);
    }

  private:
    /// Offers what leaves fewer collisions.
    void offer(RepairCode code, const PlacementKey& key, SetPlacements edit,
               const EquipmentRef& equipment = {}) {
        if (edit.changes.empty() || state_.collisionsAdded(edit) >= 0) {
            return;
        }
        const auto mine = std::ranges::find(edit.changes, key, &PlacementChange::key);
        std::optional<Instant> at;
        if (mine != edit.changes.end() && mine->placement) {
            at = mine->placement->start;
        }
        repairs_.push_back({code, key, equipment, at, std::move(edit)});
    }

    bool isPinned(const PlacementKey& key) const {
        const auto found = state_.lesson().placements.find(key);
        return found != state_.lesson().placements.end() &&
               (found->second.pinned || found->second.started);
    }

    void placeIt() {
        for (const PlacementKey& key : finding_.keys) {
            const int node = index_.nodeOf(key);
            if (node < 0 || !index_.isTask(node)) {
                continue;
            }
            const Instant wanted = usualStart(index_, node);
            auto edit = firstFreePlace(state_, key, wanted);
            offer(RepairCode::PlaceIt, key,
                  edit ? std::move(*edit)
                       : placeTask(index_, node, onGrain(state_.lesson(), wanted), {}));
        }
    }

    /// Only what is not pinned moves; what comes later in the finding first.
    void moveEach() {
        for (auto key = finding_.keys.rbegin(); key != finding_.keys.rend(); ++key) {
            const auto found = state_.lesson().placements.find(*key);
            if (found == state_.lesson().placements.end() || isPinned(*key)) {
                continue;
            }
            if (auto edit = firstFreePlace(state_, *key, found->second.start)) {
                offer(RepairCode::MoveToFree, *key, std::move(*edit));
            }
        }
    }

    int unitsOf(EquipmentSort sort) const {
        switch (sort) {
            case EquipmentSort::Burner:
                return index_.stations().burners.size();
            case EquipmentSort::Ware:
                return index_.stations().wares.size();
            case EquipmentSort::Cook:
                return index_.stations().cooks.size();
            case EquipmentSort::Oven:
                return index_.stations().ovens.size();
            case EquipmentSort::Pool:
            case EquipmentSort::None:
                break;
        }
        return 0;
    }

    /// One other thing of the same sort for each step, the first that helps.
    void useOther() {
        const EquipmentSort sort = finding_.equipment.sort;
        for (auto key = finding_.keys.rbegin(); key != finding_.keys.rend(); ++key) {
            const int node = index_.nodeOf(*key);
            if (node < 0 || !index_.isTask(node) || !index_.placed(node) || isPinned(*key)) {
                continue;
            }
            const std::size_t before = repairs_.size();
            for (int unit = 0; unit < unitsOf(sort) && repairs_.size() == before; ++unit) {
                useThis(node, {sort, unit});
            }
        }
    }

    void useThis(int task, const EquipmentRef& equipment) {
        const bool isOven = equipment.sort == EquipmentSort::Oven;
        if ((!isOven && equipment == finding_.equipment) || !accepts(index_, task, {equipment})) {
            return;
        }
        const Instant start = index_.placed(task).interval.begin;
        const int slots = isOven ? index_.ovenOf(equipment.unit).slots : 1;
        const std::size_t before = repairs_.size();
        for (int slot = 0; slot < slots && repairs_.size() == before; ++slot) {
            offer(RepairCode::OtherEquipment, index_.keyOf(task),
                  placeTask(index_, task, start, {equipment, isOven ? slot : -1}), equipment);
        }
    }

    Duration grain() const { return state_.lesson().head.grain; }

    /// As soon as somebody has hands for it after the use before.
    void addWash() {
        const PlacementKey key = finding_.keys.back();
        const int node = index_.nodeOf(key);
        if (node < 0 || !index_.isWash(node)) {
            return;
        }
        const Duration takes = index_.wareOfUnit(finding_.equipment.unit).cleaning.takes;
        Instant start = onGrain(state_.lesson(), finding_.interval.begin);
        for (; start + takes <= finding_.interval.end; start = start + grain()) {
            const Interval during{start, start + takes};
            if (start < finding_.interval.begin) {
                continue;
            }
            for (const CookId& cook : cooksOfGroup(index_, index_.groupOf(node), during)) {
                Placement wash;
                wash.start = start;
                wash.hands = {{cook, 0}};
                const std::size_t before = repairs_.size();
                offer(RepairCode::AddWash, key, {{{key, wash}}}, finding_.equipment);
                if (repairs_.size() > before) {
                    return;
                }
            }
        }
    }

    /// In time for the first load; a turning on that comes too late moves.
    void turnOn() {
        const int unit = finding_.equipment.unit;
        if (index_.ovenUses(unit).empty()) {
            return;
        }
        const OvenUse& first = index_.ovenUses(unit).front();
        const int node = index_.turnOnNode(unit);
        const PlacementKey key = index_.keyOf(node);
        const OvenSpot load{index_.ovenOf(unit).id, 0, first.setTo, first.mode};
        Instant start = latestTurnOn(index_, unit, first.setTo, first.interval.begin);
        for (int tries = 0; tries < 60; ++tries, start = start - grain()) {
            const Interval during{start, start + turnOnTakes};
            for (const CookId& cook : cooksOfGroup(index_, index_.groupOf(node), during)) {
                const Placement turnOn = turningOn(index_, unit, load, start, cook);
                const std::size_t before = repairs_.size();
                offer(RepairCode::TurnOnOven, key, {{{key, turnOn}}}, finding_.equipment);
                if (repairs_.size() > before) {
                    return;
                }
            }
        }
    }

    void timeByPiece() {
        const PlacementKey& first = finding_.keys.front();
        if (finding_.keys.size() > 1) {
            const Edit edit = SetServings{timedByPiece(finding_.keys)};
            repairs_.push_back({RepairCode::TimeAllByPiece, first, {}, std::nullopt, edit});
        }
        for (const PlacementKey& key : finding_.keys) {
            const Edit edit = SetServings{timedByPiece({key})};
            repairs_.push_back({RepairCode::TimeByPiece, key, {}, std::nullopt, edit});
        }
    }

    std::vector<Serving> timedByPiece(const std::vector<PlacementKey>& keys) const {
        std::vector<Serving> servings = state_.lesson().servings;
        for (const PlacementKey& key : keys) {
            const Task& task = at(index_.expanded().tasks, index_.nodeOf(key));
            Serving& serving = at(servings, task.serving);
            Step& step = at(at(serving.dish.components, task.component).steps, task.step);
            rangeline::timeByPiece(step, serving.dish.writtenFor);
        }
        return servings;
    }

    void pinOff() {
        for (const PlacementKey& key : finding_.keys) {
            if (isPinned(key) && !hasStarted(index_, key)) {
                repairs_.push_back({RepairCode::PinOff,
                                    key,
                                    {},
                                    std::nullopt,
                                    setPinned(index_, {&key, 1}, false)});
            }
        }
    }

    LessonState& state_;
    const UseIndex& index_;
    const Finding& finding_;
    std::vector<Repair> repairs_;
};

}  // namespace

std::vector<Repair> repairsFor(LessonState& state, const Finding& finding) {
    const bool canBeMended =
        finding.severity != Severity::Caution || finding.code == FindingCode::HandworkUnchanged;
    return !canBeMended ? std::vector<Repair>() : RepairFinder(state, finding).run();
}

}  // namespace rangeline
