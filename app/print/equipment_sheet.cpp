#include "print/equipment_sheet.h"

#include <algorithm>
#include <map>

#include "analysis/at.h"
#include "analysis/use_index.h"
#include "print/print_text.h"
#include "print/text_sheet.h"

namespace rangeline {
namespace {

using Rows = std::vector<std::vector<QString>>;

/// The most of these that lie over one another at any time; half-open, empty ones do not count.
int mostAtOnce(const std::vector<Interval>& intervals) {
    std::map<Instant, int> changes;
    for (const Interval& interval : intervals) {
        if (!interval.empty()) {
            ++changes[interval.begin];
            --changes[interval.end];
        }
    }
    int now = 0;
    int most = 0;
    for (const auto& [instant, change] : changes) {
        now += change;
        most = std::max(most, now);
    }
    return most;
}

class EquipmentLists {
  public:
    explicit EquipmentLists(const TimelineInput& input)
        : index_(input.index),
          names_(input.text),
          clock_(input.text),
          locale_(input.text.locale),
          units_(input.text.units) {}

    /// One row for each sort of pan, board or tool of the kitchen that is used.
    Rows atOnce() const {
        Rows rows;
        const UnitTable& units = index_.stations().wares;
        for (std::size_t item = 0; item < index_.kitchen().wares.size(); ++item) {
            const Ware& ware = index_.kitchen().wares[item];
            addRow(
                units, static_cast<int>(item), q(ware.name),
                lengthText(ware.width, units_, locale_),
                [this](int unit) { return index_.wareUses(unit); }, rows);
        }
        return rows;
    }

    /// The same for what is on the range and in the room.
    Rows placesAtOnce() const {
        Rows rows;
        const Kitchen& kitchen = index_.kitchen();
        const Stations& stations = index_.stations();
        for (std::size_t item = 0; item < kitchen.burners.size(); ++item) {
            const Burner& burner = kitchen.burners[item];
            addRow(
                stations.burners, static_cast<int>(item), q(burner.name),
                burner.power ? powerText(*burner.power) : QString(),
                [this](int unit) { return index_.burnerUses(unit); }, rows);
        }
        for (std::size_t item = 0; item < kitchen.ovens.size(); ++item) {
            addRow(
                stations.ovens, static_cast<int>(item), q(kitchen.ovens[item].name),
                Printed::tr("%1 slots").arg(locale_.toString(kitchen.ovens[item].slots)),
                [this](int unit) { return index_.ovenUses(unit); }, rows);
        }
        for (std::size_t item = 0; item < kitchen.pools.size(); ++item) {
            addRow(
                stations.pools, static_cast<int>(item), q(kitchen.pools[item].name),
                Printed::tr("room for %1").arg(locale_.toString(kitchen.pools[item].capacity)),
                [this](int unit) { return index_.poolUses(unit); }, rows);
        }
        return rows;
    }

    /// One row for each time that a thing goes from one use to the next.
    Rows usedAgain() const {
        Rows rows;
        for (int unit = 0; unit < index_.stations().wares.size(); ++unit) {
            const WareUse* before = nullptr;
            for (const WareUse& use : index_.wareUses(unit)) {
                if (before != nullptr && !use.wash) {
                    rows.push_back(againRow(unit, *before, use));
                }
                before = use.wash ? before : &use;
            }
        }
        return rows;
    }

  private:
    template <class Uses>
    static std::vector<Interval> intervalsOf(const UnitTable& units, int item, int group,
                                             const Uses& usesOf) {
        std::vector<Interval> taken;
        for (int unit = 0; unit < units.size(); ++unit) {
            if (units[unit].item == item && (group < 0 || units[unit].group == group)) {
                for (const auto& use : usesOf(unit)) {
                    taken.push_back(use.interval);
                }
            }
        }
        return taken;
    }

    /// Nothing where it is not used. With several groups the most of any one group stands beside.
    template <class Uses>
    void addRow(const UnitTable& units, int item, const QString& name, const QString& size,
                const Uses& usesOf, Rows& rows) const {
        const int most = mostAtOnce(intervalsOf(units, item, -1, usesOf));
        if (most == 0) {
            return;
        }
        const int groups = index_.lesson().head.groups.count;
        std::vector<QString> row = {
            {}, name, size, locale_.toString(most), locale_.toString(unitsOf(units, item))};
        if (groups > 1) {
            int ofOne = 0;
            for (int group = 0; group < groups; ++group) {
                ofOne = std::max(ofOne, mostAtOnce(intervalsOf(units, item, group, usesOf)));
            }
            row.insert(row.begin() + 3, locale_.toString(ofOne));
        }
        rows.push_back(std::move(row));
    }

    QString powerText(const Power& power) const {
        const QString amount = locale_.toString(static_cast<qlonglong>(power.amount));
        return power.unit == Power::Unit::Watt ? Printed::tr("%1 W").arg(amount)
                                               : Printed::tr("%1 Btu/h").arg(amount);
    }

    static int unitsOf(const UnitTable& units, int item) {
        int count = 0;
        for (int unit = 0; unit < units.size(); ++unit) {
            count += units[unit].item == item ? 1 : 0;
        }
        return count;
    }

    std::vector<QString> againRow(int unit, const WareUse& before, const WareUse& next) const {
        return {names_.equipment({EquipmentSort::Ware, unit}), clock_.at(before.interval.end),
                washText(unit, before.chain, next.chain), clock_.at(next.interval.begin),
                firstStep(next.chain)};
    }

    QString washText(int unit, int before, int next) const {
        const Placed& wash = index_.placed(index_.washNode(before));
        if (wash) {
            return clock_.span(wash.interval);
        }
        const int family = at(index_.expanded().chains, before).family;
        const bool sameFood = family >= 0 && family == at(index_.expanded().chains, next).family;
        const bool needed = !sameFood && index_.wareOfUnit(unit).cleaning.takes > Duration();
        return needed ? Printed::tr("not planned yet") : Printed::tr("goes on without");
    }

    QString firstStep(int chain) const {
        const Chain& it = at(index_.expanded().chains, chain);
        return it.tasks.empty() ? QString() : names_.step(index_.keyOf(it.tasks.front()));
    }

    const UseIndex& index_;
    Names names_;
    Clock clock_;
    QLocale locale_;
    Units units_;
};

}  // namespace

QString equipmentTitle() {
    return Printed::tr("Equipment and washing-up");
}

SheetPages makeEquipment(const TimelineInput& input, const SheetSetup& setup) {
    TextSheet sheet(input, setup.layout, equipmentTitle());
    const EquipmentLists lists(input);
    std::vector<TableColumn> columns = {
        {{}, 3, FontRole::Body, CellKind::Tick},
        {Printed::tr("What"), 40},
        {Printed::tr("Size"), 20},
        {Printed::tr("Most in use at once"), 25, FontRole::BodyStrong},
        {Printed::tr("At hand"), 13}};
    if (input.text.lesson.head.groups.count > 1) {
        columns.insert(columns.begin() + 3, {Printed::tr("By one group"), 17});
    }
    const auto add = [&](const QString& title, const Rows& rows, TextFlow& flow) {
        if (!rows.empty()) {
            flow.heading(title, 3);
            flow.table(columns, rows);
        }
    };
    sheet.section(equipmentTitle(), [&](TextFlow& flow) {
        add(Printed::tr("Pans, boards and tools"), lists.atOnce(), flow);
        add(Printed::tr("Burners, ovens and places"), lists.placesAtOnce(), flow);
        const Rows again = lists.usedAgain();
        if (!again.empty()) {
            flow.heading(Printed::tr("Used again: clean by"), 3);
            flow.table({{Printed::tr("What"), 28},
                        {Printed::tr("Free from"), 14},
                        {Printed::tr("Washed"), 26},
                        {Printed::tr("Clean by"), 14, FontRole::BodyStrong},
                        {Printed::tr("For"), 36}},
                       again);
        }
    });
    return sheet.finish();
}

}  // namespace rangeline
