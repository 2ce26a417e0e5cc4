#include "export/table_export.h"

#include <map>

#include "analysis/at.h"
#include "analysis/cook_stretches.h"
#include "exchange/csv.h"
#include "export/export_text.h"
#include "export/works_at.h"
#include "text/plan_text.h"

namespace rangeline {
namespace {

CsvRow headings(std::initializer_list<const char*> titles) {
    CsvRow row;
    for (const char* title : titles) {
        row.push_back(exportWords(title).toStdString());
    }
    return row;
}

class TableMaker {
  public:
    TableMaker(const TimelineInput& input, const ExportSetup& setup)
        : input_(input),
          index_(input.index),
          setup_(setup),
          clock_(input.text.lesson.head, input.text.locale),
          names_(input.text) {}

    std::vector<CsvRow> plan() const {
        std::vector<CsvRow> rows{headings(
            {QT_TRANSLATE_NOOP("Export", "Start"), QT_TRANSLATE_NOOP("Export", "End"),
             QT_TRANSLATE_NOOP("Export", "Minutes"),
             QT_TRANSLATE_NOOP("Export", "Minutes to plating"), QT_TRANSLATE_NOOP("Export", "What"),
             QT_TRANSLATE_NOOP("Export", "Where"), QT_TRANSLATE_NOOP("Export", "Who"),
             QT_TRANSLATE_NOOP("Export", "Until"), QT_TRANSLATE_NOOP("Export", "Pinned")})};
        for (const PlanRow& row : planRows(index_, input_.text)) {
            const int node = index_.nodeOf(row.key);
            if (setup_.cook && !worksAt(index_, node, *setup_.cook)) {
                continue;
            }
            const bool pinned = index_.placed(node).placement->pinned;
            rows.push_back({time(row.interval.begin), time(row.interval.end),
                            minutes(row.interval.length()),
                            minutes(Instant::serving() - row.interval.begin), text(row.step),
                            text(row.where), text(row.who), text(row.cue),
                            pinned ? text(exportWords("pinned")) : std::string()});
        }
        return rows;
    }

    std::vector<CsvRow> cooks() const {
        std::vector<CsvRow> rows{headings(
            {QT_TRANSLATE_NOOP("Export", "Cook"), QT_TRANSLATE_NOOP("Export", "Start"),
             QT_TRANSLATE_NOOP("Export", "End"), QT_TRANSLATE_NOOP("Export", "Minutes of hands"),
             QT_TRANSLATE_NOOP("Export", "Minutes of watching"),
             QT_TRANSLATE_NOOP("Export", "What"), QT_TRANSLATE_NOOP("Export", "Where"),
             QT_TRANSLATE_NOOP("Export", "Until")})};
        const std::map<PlacementKey, PlanRow> plan = planByKey();
        for (int cook = 0; cook < index_.stations().cooks.size(); ++cook) {
            if (setup_.cook && index_.cookOf(cook).id != *setup_.cook) {
                continue;
            }
            for (const CookStretch& it : cookStretches(index_, cook)) {
                const PlanRow& row = plan.at(index_.keyOf(it.node));
                rows.push_back({text(names_.equipment({EquipmentSort::Cook, cook})),
                                time(it.interval.begin), time(it.interval.end), minutes(it.hands),
                                minutes(it.watching), text(row.step), text(row.where),
                                text(row.cue)});
            }
        }
        return rows;
    }

    std::vector<CsvRow> equipment() {
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

    std::string time(Instant instant) const {
        return text(clock_.moment(instant).toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")));
    }
    static std::string minutes(Duration length) {
        return text(QString::number(length.inMinutes(), 'g', 10));
    }

    std::map<PlacementKey, PlanRow> planByKey() const {
        std::map<PlacementKey, PlanRow> plan;
        for (PlanRow& row : planRows(index_, input_.text)) {
            const PlacementKey key = row.key;
            plan.emplace(key, std::move(row));
        }
        return plan;
    }

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
                         before ? std::string() : time(interval.begin), time(interval.end),
                         before ? std::string() : minutes(interval.length()), text(what),
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
        const Units units = input_.text.lesson.head.units;
        for (int unit = 0; unit < index_.stations().ovens.size(); ++unit) {
            const Placed& on = index_.placed(index_.turnOnNode(unit));
            if (on) {
                add({EquipmentSort::Oven, unit}, on.interval, exportWords("turning on"),
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
                const QString what = use.wash              ? exportWords("washing")
                                     : chain.tasks.empty() ? exportWords("food made before")
                                                           : stepsText(chain.tasks);
                add({EquipmentSort::Ware, unit}, use.interval, what);
            }
        }
    }

    void addPools() {
        for (int unit = 0; unit < index_.stations().pools.size(); ++unit) {
            for (const PoolUse& use : index_.poolUses(unit)) {
                const QString what = use.node < 0 ? exportWords("food made before")
                                                  : names_.plainStep(index_.keyOf(use.node));
                add({EquipmentSort::Pool, unit}, use.interval, what);
            }
        }
    }

    const TimelineInput& input_;
    const UseIndex& index_;
    const ExportSetup& setup_;
    Clock clock_;
    Names names_;
    std::vector<CsvRow> rows_;
};

}  // namespace

QString planTableTitle() {
    return exportWords("The plan as a table");
}

Result<std::string, Fault> makePlanTable(const TimelineInput& input, const ExportSetup& setup) {
    return writeCsv(TableMaker(input, setup).plan());
}

QString cooksTableTitle() {
    return exportWords("Each cook's work as a table");
}

Result<std::string, Fault> makeCooksTable(const TimelineInput& input, const ExportSetup& setup) {
    return writeCsv(TableMaker(input, setup).cooks());
}

QString equipmentTableTitle() {
    return exportWords("The uses of each burner, oven and pan as a table");
}

Result<std::string, Fault> makeEquipmentTable(const TimelineInput& input,
                                              const ExportSetup& setup) {
    return writeCsv(TableMaker(input, setup).equipment());
}

}  // namespace rangeline
