#include "text/plan_text.h"

#include <QCoreApplication>
#include <algorithm>

#include "text/columns.h"
#include "text/words.h"

namespace rangeline {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Plan)
};

bool holds(const std::vector<int>& tasks, int task) {
    return std::ranges::find(tasks, task) != tasks.end();
}

class RowMaker {
  public:
    RowMaker(const UseIndex& index, const TextContext& context)
        : index_(index), context_(context), names_(context), clock_(context) {}

    PlanRow row(int node) const {
        const Placed& placed = index_.placed(node);
        const PlacementKey key = index_.keyOf(node);
        PlanRow row{key, placed.interval, clock_.at(placed.interval.begin), {}, {}, {}, {}, {}, {}};
        row.toPlating = durationText(Instant::serving() - placed.interval.begin, context_.locale);
        row.step = sentenceCase(stepName(key));
        row.where = where(node).join(Text::tr(", "));
        row.who = who(*placed.placement, index_.groupOf(node));
        row.length = durationText(placed.interval.length(), context_.locale);
        if (index_.isTask(node)) {
            row.cue = QString::fromStdString(index_.step(node).cue);
        }
        return row;
    }

  private:
    /// The step as a whole line's subject: quotation marks would only clutter the table.
    QString stepName(const PlacementKey& key) const {
        QString name = names_.step(key);
        return name.remove(u'“').remove(u'”');
    }

    QStringList where(int node) const {
        if (index_.isTask(node)) {
            return whereOfTask(node);
        }
        if (index_.isTurnOn(node)) {
            const auto& spot = index_.placed(node).placement->oven;
            return spot ? QStringList{setting(spot->setTo, spot->mode)} : QStringList();
        }
        const int unit = index_.wareUnit(index_.chainOfWash(node));
        const Cleaning* cleaning = unit < 0 ? nullptr : &index_.wareOfUnit(unit).cleaning;
        const int sink = cleaning == nullptr || !cleaning->sink
                             ? -1
                             : poolItem(index_.kitchen(), *cleaning->sink);
        return sink < 0 ? QStringList()
                        : QStringList{names_.equipment(
                              {EquipmentSort::Pool,
                               index_.stations().pools.unitOf(sink, index_.groupOf(node))})};
    }

    QStringList whereOfTask(int task) const {
        const Expanded& expanded = index_.expanded();
        const Touches::OfTask& mine = index_.touches().of(task);
        QStringList places;
        for (const int hold : mine.burnerHolds) {
            const auto& on = expanded.burnerHolds[static_cast<std::size_t>(hold)];
            if (holds(on.tasks, task) && index_.burnerUnit(hold) >= 0) {
                places << names_.equipment({EquipmentSort::Burner, index_.burnerUnit(hold)});
            }
        }
        for (const int load : mine.ovenLoads) {
            const auto& in = expanded.ovenLoads[static_cast<std::size_t>(load)];
            if (in.owner == task && !in.kept && index_.ovenUnit(load) >= 0) {
                places << ovenPlace(index_.ovenUnit(load), index_.ovenUse(load));
            }
        }
        for (const int chain : mine.chains) {
            const auto& in = expanded.chains[static_cast<std::size_t>(chain)];
            if (holds(in.tasks, task) && index_.wareUnit(chain) >= 0) {
                places << names_.equipment({EquipmentSort::Ware, index_.wareUnit(chain)});
            }
        }
        return places;
    }

    QString setting(Temperature setTo, OvenMode mode) const {
        const QString degrees = temperatureText(setTo, context_.units, context_.locale);
        return mode == OvenMode::Bake ? degrees : Text::tr("%1 %2").arg(degrees, modeText(mode));
    }

    QString ovenPlace(int unit, const OvenUse& use) const {
        const QString oven = names_.equipment({EquipmentSort::Oven, unit});
        const QString first = context_.locale.toString(use.firstSlot + 1);
        const QString slots =
            use.slots == 1 ? Text::tr("slot %1").arg(first)
                           : Text::tr("slots %1–%2")
                                 .arg(first, context_.locale.toString(use.firstSlot + use.slots));
        return Text::tr("%1 %2, %3").arg(oven, slots, setting(use.setTo, use.mode));
    }

    QString who(const Placement& placement, int group) const {
        QStringList cooks;
        for (const Share& share : placement.hands) {
            const QString cook = names_.cook(share.cook, group);
            cooks << (share.pieces == 0 ? cook
                                        : Text::tr("%1 (%2 pieces)")
                                              .arg(cook, context_.locale.toString(share.pieces)));
        }
        QStringList watchers;
        for (const CookId& watcher : placement.watchers) {
            const QString cook = names_.cook(watcher, group);
            if (!watchers.contains(cook) && !cooks.contains(cook)) {
                watchers << cook;
            }
        }
        for (const QString& watcher : watchers) {
            cooks << Text::tr("%1 watches").arg(watcher);
        }
        return cooks.join(Text::tr(", "));
    }

    const UseIndex& index_;
    const TextContext& context_;
    Names names_;
    Clock clock_;
};

}  // namespace

std::vector<PlanRow> planRows(const UseIndex& index, const TextContext& context) {
    std::vector<int> nodes;
    for (int node = 0; node < index.nodes(); ++node) {
        if (index.placed(node)) {
            nodes.push_back(node);
        }
    }
    std::ranges::stable_sort(nodes, {}, [&](int node) { return index.placed(node).interval; });
    const RowMaker maker(index, context);
    std::vector<PlanRow> rows;
    for (const int node : nodes) {
        rows.push_back(maker.row(node));
    }
    return rows;
}

QString planText(const std::vector<PlanRow>& rows, int width) {
    const std::vector<Column> columns{{Text::tr("Clock"), false}, {Text::tr("To plating"), false},
                                      {Text::tr("Step"), true},   {Text::tr("Where"), true},
                                      {Text::tr("Who"), true},    {Text::tr("How long"), false},
                                      {Text::tr("Until"), true}};
    std::vector<QStringList> lines;
    for (const PlanRow& row : rows) {
        lines.push_back(
            {row.clock, row.toPlating, row.step, row.where, row.who, row.length, row.cue});
    }
    return inColumns(columns, lines, width);
}

}  // namespace rangeline
