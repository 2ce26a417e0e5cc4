#include "arrange/rules/oven_choice.h"

#include <algorithm>

namespace rangeline::rules {
namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

class Choices {
  public:
    explicit Choices(Formulation& f) : f_(f) {}

    void add(const OvenLoad& load, std::size_t index) {
        OvenChoice& choice = f_.ovenOfLoad.emplace_back(candidates(load));
        if (choice.settings.empty() || choice.spots.empty()) {
            f_.lack(RequirementKind::NoOven, index);
        } else if (load.heat.doorShut && worksInside(load)) {
            f_.lack(RequirementKind::HandsInside, index);
        }
        choose(load, choice, f_.asked(RequirementKind::OvenFits, static_cast<int>(index)));
    }

  private:
    const Oven& ovenOf(int unit) const {
        return f_.lesson.kitchen.ovens[at(f_.expanded.stations.ovens[unit].item)];
    }

    /// Whether a cook's hands are needed while the shut door forbids them.
    bool worksInside(const OvenLoad& load) const {
        const auto& segments = f_.expanded.tasks[at(load.owner)].segments;
        for (std::size_t i = 1; i + 1 < segments.size() && !load.kept; ++i) {
            if (segments[i].attention == Attention::Hands) {
                return true;
            }
        }
        return false;
    }

    /// Every number of slots the load may take, by the wares it may stand in.
    std::vector<int> slotCounts(const OvenLoad& load) const {
        if (load.chains.empty()) {
            return {slotsOf(load, {})};
        }
        std::vector<int> sums{0};
        for (const int chain : load.chains) {
            std::vector<int> next;
            for (const int unit : f_.wareOfChain[at(chain)].units) {
                const int item = f_.expanded.stations.wares[unit].item;
                for (const int sum : sums) {
                    next.push_back(sum + f_.lesson.kitchen.wares[at(item)].rackSlots);
                }
            }
            std::ranges::sort(next);
            const auto repeated = std::ranges::unique(next);
            next.erase(repeated.begin(), repeated.end());
            sums = std::move(next);
        }
        return sums;
    }

    OvenChoice candidates(const OvenLoad& load) const {
        OvenChoice choice;
        const OvenSpot* stated = statedSpot(f_, load);
        std::vector<int> counts = slotCounts(load);
        if (load.chains.size() > 1 && !counts.empty()) {
            counts = {counts.back()};  // several vessels of unequal size: room for the largest
        }
        for (std::size_t item = 0; item < f_.lesson.kitchen.ovens.size(); ++item) {
            const Oven& oven = f_.lesson.kitchen.ovens[item];
            const int unit = f_.expanded.stations.ovens.unitOf(static_cast<int>(item), load.group);
            const bool has = std::ranges::count(oven.modes, load.heat.mode) > 0;
            if (stated != nullptr ? stated->oven != oven.id : !has) {
                continue;
            }
            const auto settings = stated != nullptr
                                      ? std::vector{stated->setTo}
                                      : oven.settingsWithin(load.heat.lowest, load.heat.highest);
            for (const Temperature setting : settings) {
                choice.settings.push_back({unit, setting, {}});
            }
            addSpots(choice, unit, counts, stated);
        }
        return choice;
    }

    void addSpots(OvenChoice& choice, int unit, const std::vector<int>& counts,
                  const OvenSpot* stated) const {
        for (const int slots : counts) {
            for (int first = 0; first + slots <= ovenOf(unit).slots; ++first) {
                if (stated == nullptr || stated->firstSlot == first) {
                    choice.spots.push_back({unit, first, slots, {}});
                }
            }
        }
    }

    void choose(const OvenLoad& load, OvenChoice& choice, Literal fits) {
        std::vector<Literal> settings;
        std::vector<Literal> spots;
        const auto literal = [&](bool only) { return only ? f_.yes() : f_.boolean(true); };
        for (auto& setting : choice.settings) {
            setting.chosen = literal(choice.settings.size() == 1);
            settings.push_back(setting.chosen);
        }
        for (auto& spot : choice.spots) {
            spot.chosen = literal(choice.spots.size() == 1);
            spots.push_back(spot.chosen);
        }
        f_.exactlyOne(settings, f_.yes());
        f_.exactlyOne(spots, f_.yes());
        f_.groups[at(load.owner)].sets.push_back(std::move(settings));
        f_.groups[at(load.owner)].sets.push_back(std::move(spots));
        tieOvens(choice, fits);
        tieSlots(load, choice, fits);
    }

    /// The setting and the place are in the same oven.
    void tieOvens(const OvenChoice& choice, Literal fits) {
        for (const auto& spot : choice.spots) {
            std::vector<Literal> some{f_.no(fits), f_.no(spot.chosen)};
            for (const auto& setting : choice.settings) {
                if (setting.oven == spot.oven) {
                    some.push_back(setting.chosen);
                }
            }
            f_.clause(std::move(some));
        }
    }

    /// The place is as large as the one vessel that is chosen for it.
    void tieSlots(const OvenLoad& load, const OvenChoice& choice, Literal fits) {
        if (load.chains.size() != 1) {
            return;
        }
        const UnitChoice& wares = f_.wareOfChain[at(load.chains.front())];
        for (std::size_t w = 0; w < wares.units.size(); ++w) {
            const int item = f_.expanded.stations.wares[wares.units[w]].item;
            std::vector<Literal> some{f_.no(fits), f_.no(wares.chosen[w])};
            for (const auto& spot : choice.spots) {
                if (spot.slots == f_.lesson.kitchen.wares[at(item)].rackSlots) {
                    some.push_back(spot.chosen);
                }
            }
            f_.clause(std::move(some));
        }
    }

    Formulation& f_;
};

}  // namespace

const OvenSpot* statedSpot(const Formulation& f, const OvenLoad& load) {
    const Placement* pinned = f.tasks[at(load.owner)].pinned;
    if (pinned == nullptr) {
        return nullptr;
    }
    const auto& spot = load.kept ? pinned->keptIn : pinned->oven;
    return spot ? &*spot : nullptr;
}

void addOvenChoices(Formulation& f) {
    Choices choices(f);
    for (std::size_t l = 0; l < f.expanded.ovenLoads.size(); ++l) {
        choices.add(f.expanded.ovenLoads[l], l);
    }
}

}  // namespace rangeline::rules
