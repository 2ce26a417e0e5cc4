// Which burner a vessel stands on: strong enough, wide enough, one at a time.

#include <algorithm>

#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

double leastWatts(const Formulation& f, const BurnerHold& hold) {
    double least = 0;
    for (const int task : hold.tasks) {
        const auto* heat =
            std::get_if<BurnerHeat>(&stepOf(f.lesson, f.expanded.tasks[at(task)]).heat);
        if (heat != nullptr && heat->leastPower) {
            least = std::max(least, heat->leastPower->watts());
        }
    }
    return least;
}

std::optional<BurnerId> statedBurner(const Formulation& f, const BurnerHold& hold) {
    const Placement* pinned = f.tasks[at(hold.owner)].pinned;
    if (pinned == nullptr) {
        return std::nullopt;
    }
    const auto& stated = hold.kept ? pinned->keptOn : pinned->burners;
    return at(hold.spot) < stated.size() ? std::optional(stated[at(hold.spot)]) : std::nullopt;
}

UnitChoice candidates(const Formulation& f, const BurnerHold& hold) {
    UnitChoice choice;
    const auto stated = statedBurner(f, hold);
    const double least = leastWatts(f, hold);
    for (std::size_t item = 0; item < f.lesson.kitchen.burners.size(); ++item) {
        const Burner& burner = f.lesson.kitchen.burners[item];
        const bool strong = least <= 0 || (burner.power && burner.power->watts() >= least);
        if (stated ? burner.id == *stated : strong) {
            choice.units.push_back(
                f.expanded.stations.burners.unitOf(static_cast<int>(item), hold.group));
        }
    }
    return choice;
}

/// A vessel wider than the burner's limit does not go on it.
void keepOffNarrowBurners(Formulation& f, const BurnerHold& hold, const UnitChoice& burners,
                          Literal asked) {
    for (const int chain : hold.chains) {
        const UnitChoice& wares = f.wareOfChain[at(chain)];
        for (std::size_t w = 0; w < wares.units.size(); ++w) {
            const int item = f.expanded.stations.wares[wares.units[w]].item;
            const Length width = f.lesson.kitchen.wares[at(item)].width;
            for (std::size_t b = 0; b < burners.units.size(); ++b) {
                const int burner = f.expanded.stations.burners[burners.units[b]].item;
                if (width > f.lesson.kitchen.burners[at(burner)].widestVessel) {
                    f.clause({f.no(asked), f.no(wares.chosen[w]), f.no(burners.chosen[b])});
                }
            }
        }
    }
}

}  // namespace

void addBurners(Formulation& f) {
    std::vector<std::vector<CumulativeTask>> uses(at(f.expanded.stations.burners.size()));
    std::vector<std::vector<CumulativeTask>> together(at(f.lesson.head.groups.count));
    for (std::size_t h = 0; h < f.expanded.burnerHolds.size(); ++h) {
        const BurnerHold& hold = f.expanded.burnerHolds[h];
        if (f.allLeftOut(hold.kept ? std::vector{hold.owner} : hold.tasks)) {
            f.burnerOfHold.emplace_back();
            continue;
        }
        UnitChoice choice = candidates(f, hold);
        if (choice.units.empty()) {
            f.lack(RequirementKind::NoBurner, h);
        }
        const Taken taken = f.taken(hold.span, hold.tasks);
        for (std::size_t i = 0; i < choice.units.size(); ++i) {
            choice.chosen.push_back(choice.units.size() == 1 ? f.yes() : f.boolean(true));
            uses[at(choice.units[i])].push_back({taken.begin, taken.end, 1, choice.chosen[i]});
        }
        f.groups[at(hold.owner)].sets.push_back(choice.chosen);
        f.exactlyOne(choice.chosen, f.yes());
        keepOffNarrowBurners(f, hold, choice,
                             f.asked(RequirementKind::WidestVessel, static_cast<int>(h)));
        together[at(hold.group)].push_back({taken.begin, taken.end, 1, f.yes()});
        f.burnerOfHold.push_back(std::move(choice));
    }
    for (auto& use : uses) {
        f.limit(std::move(use), 1, f.asked(RequirementKind::Burners));
    }
    const bool anyShared =
        f.expanded.stations.burners.size() <
        f.lesson.head.groups.count * static_cast<int>(f.lesson.kitchen.burners.size());
    for (auto& use : together) {
        if (f.underway != nullptr) {
            break;  // what has begun may already be more than there should be
        }
        // Implied, but it sees at once that all burners are full. Not where groups share some.
        if (!anyShared || f.lesson.head.groups.count == 1) {
            f.limit(std::move(use), static_cast<Value>(f.lesson.kitchen.burners.size()),
                    f.asked(RequirementKind::Burners));
        }
    }
}

}  // namespace rangeline::rules
