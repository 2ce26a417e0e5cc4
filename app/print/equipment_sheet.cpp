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
          clock_(input.text.lesson.head, input.text.locale),
          locale_(input.text.locale) {}

    /// One row for each sort of pan, board or tool of the kitchen that is used.
    Rows atOnce() const {
        Rows rows;
        const UnitTable& units = index_.stations().wares;
        for (std::size_t item = 0; item < index_.kitchen().wares.size(); ++item) {
            std::vector<Interval> taken;
            for (int unit = 0; unit < units.size(); ++unit) {
                if (units[unit].item == static_cast<int>(item)) {
                    for (const WareUse& use : index_.wareUses(unit)) {
                        taken.push_back(use.interval);
                    }
                }
            }
            const int most = mostAtOnce(taken);
            if (most > 0) {
                const Ware& ware = index_.kitchen().wares[item];
                rows.push_back({{},
                                q(ware.name),
                                lengthText(ware.width, index_.lesson().head.units, locale_),
                                locale_.toString(most),
                                locale_.toString(unitsOf(units, static_cast<int>(item)))});
            }
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
        return needed ? words("not planned yet") : words("goes on without");
    }

    QString firstStep(int chain) const {
        const Chain& it = at(index_.expanded().chains, chain);
        return it.tasks.empty() ? QString() : names_.step(index_.keyOf(it.tasks.front()));
    }

    const UseIndex& index_;
    Names names_;
    Clock clock_;
    QLocale locale_;
};

}  // namespace

QString equipmentTitle() {
    return words("Equipment and washing-up");
}

SheetPages makeEquipment(const TimelineInput& input, const PageLayout& layout) {
    TextSheet sheet(input, layout, equipmentTitle());
    const EquipmentLists lists(input);
    const Rows atOnce = lists.atOnce();
    const Rows again = lists.usedAgain();
    if (atOnce.empty()) {
        return sheet.finish();
    }
    sheet.section(equipmentTitle(), [&](TextFlow& flow) {
        flow.heading(words("Pans, boards and tools"), 3);
        flow.table({{{}, 3, FontRole::Body, CellKind::Tick},
                    {words("What"), 46},
                    {words("Width"), 15},
                    {words("Most in use at once"), 25, FontRole::BodyStrong},
                    {words("At hand"), 13}},
                   atOnce);
        if (!again.empty()) {
            flow.heading(words("Used again: clean by"), 3);
            flow.table({{words("What"), 28},
                        {words("Free from"), 14},
                        {words("Washed"), 26},
                        {words("Clean by"), 14, FontRole::BodyStrong},
                        {words("For"), 36}},
                       again);
        }
    });
    return sheet.finish();
}

}  // namespace rangeline
