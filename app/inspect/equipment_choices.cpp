#include "inspect/equipment_choices.h"

#include <QCoreApplication>
#include <algorithm>

#include "analysis/at.h"
#include "text/words.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(EquipmentChoices)
};

/// Grows the list so that it has that index.
template <class T>
T& slotOf(std::vector<T>& list, int index) {
    list.resize(std::max(list.size(), static_cast<std::size_t>(index) + 1));
    return at(list, index);
}

class ChoiceMaker {
  public:
    ChoiceMaker(const UseIndex& index, const TextContext& text, int node)
        : index_(index),
          kitchen_(index.kitchen()),
          text_(text),
          names_(text),
          node_(node),
          group_(index.groupOf(node)),
          now_(*index.placed(node).placement) {}

    std::vector<EquipmentChoice> run() {
        if (index_.isTask(node_)) {
            burners();
            ovens();
            wares();
        }
        hands();
        watchers();
        return std::move(choices_);
    }

  private:
    /// Adds the choice of one need; `change` makes a placement use an option. An option that leaves
    /// the placement as it is, is the current one.
    template <class Option, class Name, class Change>
    void add(const QString& need, const std::vector<Option>& from, Name name, Change change) {
        EquipmentChoice choice{need, {}, -1};
        for (const Option& option : from) {
            Placement changed = now_;
            change(changed, option);
            if (changed == now_) {
                choice.current = static_cast<int>(choice.options.size());
            }
            choice.options.push_back({sentenceCase(name(option)), std::move(changed)});
        }
        choices_.push_back(std::move(choice));
    }

    void burners() {
        for (const BurnerHold& hold : index_.expanded().burnerHolds) {
            if (hold.owner != node_) {
                continue;
            }
            std::vector<BurnerId> from;
            std::ranges::transform(kitchen_.burners, std::back_inserter(from), &Burner::id);
            add(
                hold.kept ? Text::tr("Kept hot on") : Text::tr("Burner"), from,
                [&](const BurnerId& id) { return names_.burner(id, group_); },
                [&](Placement& placement, const BurnerId& id) {
                    slotOf(hold.kept ? placement.keptOn : placement.burners, hold.spot) = id;
                });
        }
    }

    // ---- the oven: where, and at what ----

    void ovens() {
        for (const OvenLoad& load : index_.expanded().ovenLoads) {
            if (load.owner == node_) {
                ovenPlaces(load);
                ovenSettings(load);
            }
        }
    }

    static std::optional<OvenSpot>& spotIn(Placement& placement, const OvenLoad& load) {
        return load.kept ? placement.keptIn : placement.oven;
    }

    /// The spot as it is, or a first one in the middle of what the step accepts.
    OvenSpot spotNow(const OvenLoad& load, const Oven& oven) {
        const auto& spot = spotIn(now_, load);
        if (spot && spot->oven == oven.id) {
            return *spot;
        }
        const auto settings = oven.settingsWithin(load.heat.lowest, load.heat.highest);
        const Temperature setTo =
            settings.empty() ? load.heat.lowest : settings[settings.size() / 2];
        return {oven.id, 0, spot ? spot->setTo : setTo, load.heat.mode};
    }

    void ovenPlaces(const OvenLoad& load) {
        std::vector<OvenSpot> from;
        for (const Oven& oven : kitchen_.ovens) {
            OvenSpot spot = spotNow(load, oven);
            for (spot.firstSlot = 0; spot.firstSlot < oven.slots; ++spot.firstSlot) {
                from.push_back(spot);
            }
        }
        add(
            load.kept ? Text::tr("Kept hot in") : Text::tr("Oven slot"), from,
            [&](const OvenSpot& spot) {
                return Text::tr("%1, slot %2")
                    .arg(names_.oven(spot.oven, group_), text_.locale.toString(spot.firstSlot + 1));
            },
            [&](Placement& placement, const OvenSpot& spot) { spotIn(placement, load) = spot; });
    }

    void ovenSettings(const OvenLoad& load) {
        const auto& spot = spotIn(now_, load);
        const int item = spot ? ovenItem(kitchen_, spot->oven) : -1;
        if (item < 0) {
            return;
        }
        add(
            Text::tr("Set to"),
            at(kitchen_.ovens, item).settingsWithin(load.heat.lowest, load.heat.highest),
            [&](Temperature setTo) { return temperatureText(setTo, text_.units, text_.locale); },
            [&](Placement& placement, Temperature setTo) {
                spotIn(placement, load)->setTo = setTo;
            });
    }

    // ---- vessels, boards, tools ----

    void wares() {
        for (const Chain& chain : index_.expanded().chains) {
            if (chain.owner == node_) {
                add(
                    needOf(chain), spotsFor(chain),
                    [&](const WareSpot& spot) { return names_.ware(spot, group_); },
                    [&](Placement& placement, const WareSpot& spot) {
                        slotOf(placement.wares, chain.key.spot) = spot;
                    });
            }
        }
    }

    /// The kind as a word: "roasting-pan" reads "Roasting pan".
    static QString needOf(const Chain& chain) {
        return sentenceCase(QString::fromStdString(chain.kind).replace(u'-', u' '));
    }

    /// All of the kind, large enough or not: the findings say what is wrong with a small one.
    std::vector<WareSpot> spotsFor(const Chain& chain) const {
        std::vector<WareSpot> from;
        for (const Ware& ware : kitchen_.wares) {
            for (int number = 0; ware.kind == chain.kind && number < ware.count; ++number) {
                from.push_back({ware.id, number});
            }
        }
        return from;
    }

    // ---- cooks ----

    int segments(Attention attention) const {
        const auto& all = index_.placed(node_).timing.segments;
        return static_cast<int>(std::ranges::count(all, attention, &TimedSegment::attention));
    }

    void hands() {
        const bool works = segments(Attention::Hands) > 0;
        const int needed = index_.isTask(node_) ? index_.step(node_).cooks : 1;
        const int rows = works ? std::max(needed, static_cast<int>(now_.hands.size())) : 0;
        for (int row = 0; row < rows; ++row) {
            add(
                rows == 1 ? Text::tr("Hands")
                          : Text::tr("Hands %1").arg(text_.locale.toString(row + 1)),
                text_.lesson.head.crew, [&](const CookId& id) { return names_.cook(id, group_); },
                [&](Placement& placement, const CookId& id) {
                    slotOf(placement.hands, row).cook = id;
                });
        }
    }

    void watchers() {
        const int rows = segments(Attention::Watch);
        for (int row = 0; row < rows; ++row) {
            add(
                rows == 1 ? Text::tr("Watches")
                          : Text::tr("Watches %1").arg(text_.locale.toString(row + 1)),
                text_.lesson.head.crew, [&](const CookId& id) { return names_.cook(id, group_); },
                [&](Placement& placement, const CookId& id) {
                    slotOf(placement.watchers, row) = id;
                });
        }
    }

    const UseIndex& index_;
    const Kitchen& kitchen_;
    const TextContext& text_;
    Names names_;
    int node_;
    int group_;
    Placement now_;
    std::vector<EquipmentChoice> choices_;
};

}  // namespace

std::vector<EquipmentChoice> equipmentChoices(const UseIndex& index, const TextContext& text,
                                              const PlacementKey& key) {
    const int node = index.nodeOf(key);
    if (node < 0 || !index.placed(node)) {
        return {};
    }
    return ChoiceMaker(index, text, node).run();
}

}  // namespace rangeline
