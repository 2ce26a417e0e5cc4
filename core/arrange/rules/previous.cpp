// Where placements stand before arranging: values to try first, and what moving away from them
// costs.

#include <algorithm>
#include <cstdlib>

#include "arrange/engine/linear.h"
#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

/// Another cook, burner, vessel or rack slot counts like five minutes, and so does what comes or
/// goes.
constexpr Value changeCosts = 300;

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class PreviousPlan {
  public:
    PreviousPlan(const Formulation& f, const Placements& placements)
        : f_(f), placements_(placements), stations_(f.expanded.stations) {}

    Previous read() {
        for (std::size_t i = 0; i < f_.tasks.size(); ++i) {
            if (const Placement* placement = at(f_.expanded.tasks[i].key);
                placement != nullptr && !f_.tasks[i].staffings.empty()) {
                readTask(f_.tasks[i], *placement);
            }
        }
        readWares();
        readBurners();
        readOvens();
        for (std::size_t c = 0; c < f_.washes.size(); ++c) {
            if (f_.washes[c]) {
                readWash(static_cast<int>(c), *f_.washes[c]);
            }
        }
        for (const TurnOnVars& turnOn : f_.turnOns) {
            readTurnOn(turnOn);
        }
        return std::move(previous_);
    }

  private:
    const Placement* at(const PlacementKey& key) const {
        const auto found = placements_.find(key);
        return found == placements_.end() ? nullptr : &found->second;
    }
    const Placement* ofTask(int task) const { return at(f_.expanded.tasks[rules::at(task)].key); }

    void stood(View start, const Placement& placement, Literal presence) {
        previous_.starts.push_back({start, toValue(placement.start), presence});
    }
    void chose(Literal literal) { previous_.chosen.push_back(literal); }

    void readTask(const TaskVars& vars, const Placement& placement) {
        stood(vars.start, placement, f_.yes());
        for (const Staffing& staffing : vars.staffings) {
            if (staffing.shares == placement.hands) {
                chose(staffing.chosen);
            }
        }
        for (std::size_t i = 0; i < vars.watchings.size() && i < placement.watchers.size(); ++i) {
            for (std::size_t w = 0; w < vars.watchings[i].cooks.size(); ++w) {
                if (f_.cook(vars.watchings[i].cooks[w]).id == placement.watchers[i]) {
                    chose(vars.watchings[i].chosen[w]);
                }
            }
        }
    }

    void readWares() {
        for (std::size_t c = 0; c < f_.wareOfChain.size(); ++c) {
            const Chain& chain = f_.expanded.chains[c];
            const Placement* placement = chain.owner < 0 ? nullptr : ofTask(chain.owner);
            const UnitChoice& choice = f_.wareOfChain[c];
            for (std::size_t i = 0; placement != nullptr && i < choice.units.size(); ++i) {
                const Unit& unit = stations_.wares[choice.units[i]];
                const WareSpot spot{f_.lesson.kitchen.wares[rules::at(unit.item)].id, unit.number};
                const auto index = rules::at(chain.key.spot);
                if (index < placement->wares.size() && placement->wares[index] == spot) {
                    chose(choice.chosen[i]);
                }
            }
        }
    }

    void readBurners() {
        for (std::size_t h = 0; h < f_.burnerOfHold.size(); ++h) {
            const BurnerHold& hold = f_.expanded.burnerHolds[h];
            const Placement* placement = ofTask(hold.owner);
            if (placement == nullptr) {
                continue;
            }
            const auto& list = hold.kept ? placement->keptOn : placement->burners;
            const UnitChoice& choice = f_.burnerOfHold[h];
            for (std::size_t i = 0; i < choice.units.size(); ++i) {
                const int item = stations_.burners[choice.units[i]].item;
                if (rules::at(hold.spot) < list.size() &&
                    list[rules::at(hold.spot)] == f_.lesson.kitchen.burners[rules::at(item)].id) {
                    chose(choice.chosen[i]);
                }
            }
        }
    }

    void readOvens() {
        for (std::size_t l = 0; l < f_.ovenOfLoad.size(); ++l) {
            const OvenLoad& load = f_.expanded.ovenLoads[l];
            const Placement* placement = ofTask(load.owner);
            const auto spot = placement == nullptr ? std::nullopt
                              : load.kept          ? placement->keptIn
                                                   : placement->oven;
            if (!spot) {
                continue;
            }
            for (const auto& setting : f_.ovenOfLoad[l].settings) {
                if (isIn(setting.oven, *spot) && setting.setTo == spot->setTo) {
                    chose(setting.chosen);
                }
            }
            for (const auto& place : f_.ovenOfLoad[l].spots) {
                if (isIn(place.oven, *spot) && place.first == spot->firstSlot) {
                    chose(place.chosen);
                }
            }
        }
    }

    bool isIn(int oven, const OvenSpot& spot) const {
        return f_.lesson.kitchen.ovens[rules::at(stations_.ovens[oven].item)].id == spot.oven;
    }

    /// The kind of vessel the chain was in; -1 if that is not known.
    int itemBefore(int chain) const {
        const Chain& before = f_.expanded.chains[rules::at(chain)];
        const Placement* owner = before.owner < 0 ? nullptr : ofTask(before.owner);
        const auto index = rules::at(before.key.spot);
        const bool named = owner != nullptr && index < owner->wares.size();
        return named ? wareItem(f_.lesson.kitchen, owner->wares[index].ware) : -1;
    }

    void readWash(int chain, const WashVars& wash) {
        const Placement* placement = at(PlacementKey{f_.expanded.chains[rules::at(chain)].key});
        if (placement == nullptr) {
            previous_.added.push_back(wash.presence);
            return;
        }
        stood(wash.start, *placement, wash.presence);
        const int item = itemBefore(chain);
        for (const WashVars::Way& way : wash.ways) {
            if (isBy(way.cook, *placement) && (item < 0 || way.ware == item)) {
                chose(way.chosen);
            }
        }
    }

    void readTurnOn(const TurnOnVars& turnOn) {
        if (turnOn.ways.empty()) {
            return;
        }
        const Unit& unit = stations_.ovens[turnOn.oven];
        const OvenId& oven = f_.lesson.kitchen.ovens[rules::at(unit.item)].id;
        const Placement* placement = at(PlacementKey{TurnOnKey{oven, unit.group}});
        if (placement == nullptr) {
            previous_.added.push_back(turnOn.presence);
            return;
        }
        stood(turnOn.start, *placement, turnOn.presence);
        for (const TurnOnVars::Way& way : turnOn.ways) {
            if (isBy(way.cook, *placement)) {
                chose(way.chosen);
            }
        }
    }

    bool isBy(int cook, const Placement& placement) const {
        return !placement.hands.empty() && f_.cook(cook).id == placement.hands.front().cook;
    }

    const Formulation& f_;
    const Placements& placements_;
    const Stations& stations_;
    Previous previous_;
};

}  // namespace

Previous previousPlan(const Formulation& f, const Placements& placements) {
    return PreviousPlan(f, placements).read();
}

View addMovement(Formulation& f, const Previous& previous) {
    std::vector<engine::Term> terms;
    std::int64_t constant = 0;
    for (const auto& [start, value, presence] : previous.starts) {
        if (f.engine.fixed(start) && f.engine.isTrue(presence)) {
            continue;
        }
        const View moved = f.engine.newVariable(0, 2 * (f.latest - f.earliest));
        f.engine.addDifference(start, -value, moved, presence);
        f.engine.addDifference(engine::opposite(start), value, moved, presence);
        terms.push_back({moved, 1});
    }
    for (const Literal literal : previous.added) {
        terms.push_back({literal.view, changeCosts});
    }
    for (const Literal literal : previous.chosen) {
        // 1 - the literal's variable, which is a boolean
        terms.push_back({engine::opposite(literal.view), changeCosts});
        constant += changeCosts;
    }
    const View total = f.engine.newVariable(0, 2'000'000'000);
    engine::addLinearAtMost(f.engine, std::move(terms), constant, total);
    return total;
}

}  // namespace rangeline::rules
