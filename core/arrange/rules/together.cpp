// What follows from several rules at once: implied by the others, but seen much earlier. All alike
// vessels do not hold more food at once than they are, nor all burners.

#include "arrange/rules/together.h"

#include <algorithm>

namespace rangeline::rules {
namespace {

using engine::EnergyTask;

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

Value shortestOf(const Formulation& f, const std::vector<int>& tasks) {
    Value total = 0;
    for (const int task : tasks) {
        const auto& staffings = f.tasks[at(task)].staffings;
        Value shortest = staffings.empty() ? 0 : toValue(staffings.front().timing.length);
        for (const Staffing& staffing : staffings) {
            shortest = std::min(shortest, toValue(staffing.timing.length));
        }
        total += shortest;
    }
    return total;
}

Value shortestWay(const WashVars& wash) {
    return std::ranges::min_element(wash.ways, {}, &WashVars::Way::takes)->takes;
}

/// What surely lies between the end of the chain and the next in its vessel. Nothing where one of
/// its family may follow unwashed, though its wash may still come late.
Value leastWashing(const Formulation& f, std::size_t chain) {
    const bool alone = f.expanded.chains[chain].family < 0;
    return f.washes[chain] && alone ? shortestWay(*f.washes[chain]) : 0;
}

/// Chains that can only be in some vessels never hold more than those at once, washing included.
void addWaresTogether(Formulation& f) {
    std::vector<std::vector<int>> sets;
    for (const UnitChoice& choice : f.wareOfChain) {
        if (choice.units.size() > 1 && std::ranges::count(sets, choice.units) == 0) {
            sets.push_back(choice.units);
        }
    }
    for (const std::vector<int>& set : sets) {
        std::vector<CumulativeTask> held;
        std::vector<EnergyTask> energy;
        for (std::size_t c = 0; c < f.wareOfChain.size(); ++c) {
            const bool inside = std::ranges::all_of(f.wareOfChain[c].units, [&](int unit) {
                return std::ranges::count(set, unit) > 0;
            });
            if (!inside) {
                continue;
            }
            const Taken& taken = f.chainTaken[c];
            const Value used = shortestOf(f, f.expanded.chains[c].tasks);
            const Value washing = leastWashing(f, c);
            const TimePoint clean{taken.end.view, taken.end.offset + washing};
            const Literal asked = f.asked(RequirementKind::Wash, static_cast<int>(c));
            if (f.engine.isTrue(asked)) {
                held.push_back({taken.begin, clean, 1, f.yes()});
                energy.push_back({taken.begin, clean, used + washing, f.yes()});
            } else {
                held.push_back({taken.begin, taken.end, 1, f.yes()});
                held.push_back({taken.end, clean, 1, asked});
                energy.push_back({taken.begin, taken.end, used, f.yes()});
                energy.push_back({taken.end, clean, washing, asked});
            }
            if (f.washes[c]) {
                const WashVars& wash = *f.washes[c];
                held.push_back(
                    {clean, {wash.start, shortestWay(wash)}, 1, f.both(wash.presence, asked)});
            }
        }
        const auto capacity = static_cast<Value>(set.size());
        if (held.size() > set.size()) {
            Literal where = f.yes();
            for (const int unit : set) {
                const int item = f.expanded.stations.wares[unit].item;
                where = f.both(where, f.asked(RequirementKind::Wares, item));
            }
            f.limit(std::move(held), capacity, where);
            limitWork(f, std::move(energy), capacity, where);
        }
    }
}

void addBurnersTogether(Formulation& f) {
    std::vector<EnergyTask> energy;
    for (const BurnerHold& hold : f.expanded.burnerHolds) {
        const Taken taken = f.taken(hold.span);
        energy.push_back({taken.begin, taken.end, shortestOf(f, hold.tasks), f.yes()});
    }
    if (f.lesson.head.groups.count == 1) {
        limitWork(f, std::move(energy), static_cast<std::int64_t>(f.lesson.kitchen.burners.size()),
                  f.asked(RequirementKind::Burners));
    }
}

}  // namespace

void limitWork(Formulation& f, std::vector<EnergyTask> work, std::int64_t rate, Literal where) {
    if (!f.engine.isTrue(where)) {
        for (EnergyTask& task : work) {
            task.presence = f.both(task.presence, where);
        }
    }
    engine::addEnergy(f.engine, std::move(work), rate);
}

void addTogether(Formulation& f) {
    // Once cooking has begun what is already broken would have to be left out of these too.
    if (!f.possible || f.underway != nullptr) {
        return;
    }
    // What the links alone say of the instants is used below.
    if (!f.engine.propagate()) {
        f.possible = false;
        return;
    }
    addCrewTogether(f);
    addWaresTogether(f);
    addBurnersTogether(f);
}

}  // namespace rangeline::rules
