#include "analysis/at.h"
#include "export/export_text.h"
#include "export/table_cells.h"
#include "export/table_export.h"
#include "text/plan_text.h"

namespace rangeline {
namespace {

class EquipmentTable {
  public:
    explicit EquipmentTable(const TimelineInput& input)
        : input_(input), index_(input.index), clock_(input.text), names_(input.text) {}

    std::vector<CsvRow> make() {
        rows_ = {headings(
            {QT_TRANSLATE_NOOP("Export", "Equipment"), QT_TRANSLATE_NOOP("Export", "Start"),
             QT_TRANSLATE_NOOP("Export", "End"), QT_TRANSLATE_NOOP("Export", "Minutes"),
             QT_TRANSLATE_NOOP("Export", "For"), QT_TRANSLATE_NOOP("Export", "Setting")})};
        addBurners();
        addOvens();
        addWares();
        addPools();
        return std::move(rows_);
    }

  private:
    static std::string text(const QString& from) { return from.toStdString(); }

    QString stepsText(const std::vector<int>& tasks) const {
        QStringList steps;
        for (const int task : tasks) {
            steps << names_.plainStep(index_.keyOf(task));
        }
        return listText(steps);
    }

    void add(const EquipmentRef& equipment, const Interval& interval, const QString& what,
             const QString& setting = {}) {
        // What was there before the lesson has no beginning that could be told.
        const bool before = interval.begin <= longBefore;
        rows_.push_back({text(names_.equipment(equipment)),
                         before ? std::string() : timeCell(clock_, interval.begin),
                         timeCell(clock_, interval.end),
                         before ? std::string() : minutesCell(interval.length()), text(what),
                         text(setting)});
    }

    void addBurners() {
        for (int unit = 0; unit < index_.stations().burners.size(); ++unit) {
            for (const BurnerUse& use : index_.burnerUses(unit)) {
                const BurnerHold& hold = at(index_.expanded().burnerHolds, use.hold);
                const std::vector<int> tasks =
                    hold.tasks.empty() ? std::vector{hold.owner} : hold.tasks;
                const auto* heat = std::get_if<BurnerHeat>(&index_.step(tasks.front()).heat);
                add({EquipmentSort::Burner, unit}, use.interval, stepsText(tasks),
                    heat == nullptr ? QString() : QString::fromStdString(heat->level));
            }
        }
    }

    void addOvens() {
        const Units units = input_.text.units;
        for (int unit = 0; unit < index_.stations().ovens.size(); ++unit) {
            const Placed& on = index_.placed(index_.turnOnNode(unit));
            if (on) {
                add({EquipmentSort::Oven, unit}, on.interval, Exported::tr("turning on"),
                    on.placement->oven
                        ? temperatureText(on.placement->oven->setTo, units, input_.text.locale)
                        : QString());
            }
            for (const OvenUse& use : index_.ovenUses(unit)) {
                const OvenLoad& load = at(index_.expanded().ovenLoads, use.load);
                add({EquipmentSort::Oven, unit}, use.interval, stepsText({load.owner}),
                    temperatureText(use.setTo, units, input_.text.locale));
            }
        }
    }

    void addWares() {
        for (int unit = 0; unit < index_.stations().wares.size(); ++unit) {
            for (const WareUse& use : index_.wareUses(unit)) {
                const Chain& chain = at(index_.expanded().chains, use.chain);
                const QString what = use.wash              ? Exported::tr("washing")
                                     : chain.tasks.empty() ? Exported::tr("food made before")
                                                           : stepsText(chain.tasks);
                add({EquipmentSort::Ware, unit}, use.interval, what);
            }
        }
    }

    void addPools() {
        for (int unit = 0; unit < index_.stations().pools.size(); ++unit) {
            for (const PoolUse& use : index_.poolUses(unit)) {
                const QString what = use.node < 0 ? Exported::tr("food made before")
                                                  : names_.plainStep(index_.keyOf(use.node));
                add({EquipmentSort::Pool, unit}, use.interval, what);
            }
        }
    }

    const TimelineInput& input_;
    const UseIndex& index_;
    Clock clock_;
    Names names_;
    std::vector<CsvRow> rows_;
};

}  // namespace

QString equipmentTableTitle() {
    return Exported::tr("The uses of each burner, oven and pan as a table");
}

Result<std::string, Fault> makeEquipmentTable(const TimelineInput& input, const ExportSetup&) {
    return writeCsv(EquipmentTable(input).make());
}

}  // namespace rangeline
