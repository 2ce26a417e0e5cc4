// A solution as placements.

#include <algorithm>

#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class Reader {
  public:
    explicit Reader(const Formulation& f) : f_(f), stations_(f.expanded.stations) {}

    Placements read() {
        for (std::size_t i = 0; i < f_.tasks.size(); ++i) {
            placements_[f_.expanded.tasks[i].key] = task(f_.tasks[i]);
        }
        for (std::size_t c = 0; c < f_.wareOfChain.size(); ++c) {
            readWare(f_.expanded.chains[c], f_.wareOfChain[c]);
        }
        for (std::size_t h = 0; h < f_.burnerOfHold.size(); ++h) {
            if (!f_.burnerOfHold[h].units.empty()) {
                readBurner(f_.expanded.burnerHolds[h], f_.burnerOfHold[h]);
            }
        }
        for (std::size_t l = 0; l < f_.ovenOfLoad.size(); ++l) {
            readOven(f_.expanded.ovenLoads[l], f_.ovenOfLoad[l]);
        }
        for (std::size_t c = 0; c < f_.washes.size(); ++c) {
            readWash(static_cast<int>(c));
        }
        for (const TurnOnVars& turnOn : f_.turnOns) {
            readTurnOn(turnOn);
        }
        if (f_.underway != nullptr) {
            keepWhatBegan();
        }
        return std::move(placements_);
    }

  private:
    bool holds(Literal literal) const { return f_.engine.isTrue(literal); }
    Instant instant(View view) const { return Instant::atSeconds(f_.engine.low(view)); }

    Placement& owner(int task) { return placements_.at(f_.expanded.tasks[at(task)].key); }

    Placement task(const TaskVars& vars) const {
        Placement placement = vars.pinned != nullptr ? *vars.pinned : Placement{};
        placement.start = instant(vars.start);
        for (const Staffing& staffing : vars.staffings) {
            if (holds(staffing.chosen) && placement.hands.empty()) {
                placement.hands = staffing.shares;
            }
        }
        for (std::size_t i = placement.watchers.size(); i < vars.watchings.size(); ++i) {
            const Watching& watching = vars.watchings[i];
            for (std::size_t w = 0; w < watching.cooks.size(); ++w) {
                if (holds(watching.chosen[w])) {
                    placement.watchers.push_back(f_.cook(watching.cooks[w]).id);
                    break;
                }
            }
        }
        return placement;
    }

    int chosenUnit(const UnitChoice& choice) const {
        for (std::size_t i = 0; i < choice.units.size(); ++i) {
            if (holds(choice.chosen[i])) {
                return choice.units[i];
            }
        }
        return choice.units.front();
    }

    /// Puts a value where the placement has none yet; pinned ones may already have it.
    template <class T>
    static void put(std::vector<T>& list, int spot, T value) {
        if (list.size() <= at(spot)) {
            list.resize(at(spot) + 1);
            list[at(spot)] = std::move(value);
        } else if (list[at(spot)] == T{}) {
            list[at(spot)] = std::move(value);
        }
    }

    void readWare(const Chain& chain, const UnitChoice& choice) {
        if (chain.owner >= 0) {
            const Unit& unit = stations_.wares[chosenUnit(choice)];
            put(owner(chain.owner).wares, chain.key.spot,
                WareSpot{f_.lesson.kitchen.wares[at(unit.item)].id, unit.number});
        }
    }

    void readBurner(const BurnerHold& hold, const UnitChoice& choice) {
        const Unit& unit = stations_.burners[chosenUnit(choice)];
        auto& list = hold.kept ? owner(hold.owner).keptOn : owner(hold.owner).burners;
        put(list, hold.spot, f_.lesson.kitchen.burners[at(unit.item)].id);
    }

    void readOven(const OvenLoad& load, const OvenChoice& choice) {
        auto& place = load.kept ? owner(load.owner).keptIn : owner(load.owner).oven;
        if (place) {
            return;
        }
        OvenSpot result;
        result.mode = load.heat.mode;
        for (const auto& spot : choice.spots) {
            if (holds(spot.chosen)) {
                const int item = stations_.ovens[spot.oven].item;
                result.oven = f_.lesson.kitchen.ovens[at(item)].id;
                result.firstSlot = spot.first;
            }
        }
        for (const auto& setting : choice.settings) {
            if (holds(setting.chosen)) {
                result.setTo = setting.setTo;
            }
        }
        place = result;
    }

    /// Washed only where another food comes next into the same ware.
    bool usedNext(int chain) const {
        const int unit = chosenUnit(f_.wareOfChain[at(chain)]);
        const Chain& self = f_.expanded.chains[at(chain)];
        int next = -1;
        for (std::size_t c = 0; c < f_.wareOfChain.size(); ++c) {
            const bool later = static_cast<int>(c) != chain &&
                               chosenUnit(f_.wareOfChain[c]) == unit &&
                               begin(static_cast<int>(c)) >= begin(chain) &&
                               f_.expanded.chains[c].span.begin != SpanBegin::Opening &&
                               !f_.allLeftOut(f_.expanded.chains[c].tasks);
            if (later && (next < 0 || begin(static_cast<int>(c)) < begin(next))) {
                next = static_cast<int>(c);
            }
        }
        return next >= 0 && (self.family < 0 || f_.expanded.chains[at(next)].family != self.family);
    }

    /// Washes and turning on that nothing needs any more, too.
    void keepWhatBegan() {
        for (const auto& [key, placement] : f_.lesson.placements) {
            // An oven that food has gone into was turned on, whether or not anybody said so.
            const bool evident =
                std::holds_alternative<TurnOnKey>(key) && placement.start <= f_.underway->now;
            if (placement.started || evident) {
                placements_.try_emplace(key, placement);
            }
        }
        for (const PlacementKey& key : f_.underway->leftOut) {
            placements_.erase(key);
        }
    }

    Value begin(int chain) const { return f_.engine.low(f_.chainTaken[at(chain)].begin); }

    void readWash(int chain) {
        const auto& wash = f_.washes[at(chain)];
        const PlacementKey key{f_.expanded.chains[at(chain)].key};
        const Placement* pinned = f_.pinnedPlacement(key);
        if (!wash || !holds(wash->presence) || (pinned == nullptr && !usedNext(chain))) {
            return;
        }
        Placement placement = pinned != nullptr ? *pinned : Placement{};
        placement.start = instant(wash->start);
        for (const WashVars::Way& way : wash->ways) {
            if (holds(way.chosen)) {
                placement.hands = {{f_.cook(way.cook).id, 0}};
            }
        }
        placements_[key] = std::move(placement);
    }

    void readTurnOn(const TurnOnVars& turnOn) {
        if (turnOn.ways.empty() || !holds(turnOn.presence)) {
            return;
        }
        const Unit& unit = stations_.ovens[turnOn.oven];
        const PlacementKey key{TurnOnKey{f_.lesson.kitchen.ovens[at(unit.item)].id, unit.group}};
        const Placement* pinned = f_.pinnedPlacement(key);
        Placement placement = pinned != nullptr ? *pinned : Placement{};
        placement.start = instant(turnOn.start);
        for (const TurnOnVars::Way& way : turnOn.ways) {
            if (holds(way.chosen) && placement.hands.empty()) {
                placement.hands = {{f_.cook(way.cook).id, 0}};
            }
        }
        if (f_.underway == nullptr || !placement.started) {
            placement.oven = firstSetting(turnOn.oven);
        }
        placements_[key] = std::move(placement);
    }

    /// What the oven is turned on to: the setting of the load that goes in first.
    std::optional<OvenSpot> firstSetting(int oven) const {
        std::optional<OvenSpot> first;
        Instant earliest;
        for (const OvenLoad& load : f_.expanded.ovenLoads) {
            const Task& task = f_.expanded.tasks[at(load.owner)];
            if (f_.isLeftOut(task.key)) {
                continue;
            }
            const Placement& placement = placements_.at(task.key);
            const auto& spot = load.kept ? placement.keptIn : placement.oven;
            const Instant begin = Instant::atSeconds(
                f_.engine.low(load.kept ? f_.endOf(load.owner) : f_.startOf(load.owner)));
            const int item = ovenItem(f_.lesson.kitchen, spot->oven);
            const bool here = stations_.ovens.unitOf(item, load.group) == oven;
            if (here && (!first || begin < earliest)) {
                first = spot;
                first->firstSlot = 0;
                earliest = begin;
            }
        }
        return first;
    }

    const Formulation& f_;
    const Stations& stations_;
    Placements placements_;
};

}  // namespace

Placements readPlacements(const Formulation& f) {
    return Reader(f).read();
}

}  // namespace rangeline::rules
