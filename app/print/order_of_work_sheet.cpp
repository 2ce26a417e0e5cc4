#include "print/order_of_work_sheet.h"

#include <algorithm>
#include <map>

#include "analysis/at.h"
#include "analysis/cook_stretches.h"
#include "analysis/use_index.h"
#include "print/print_text.h"
#include "print/step_cells.h"
#include "print/text_sheet.h"

namespace rangeline {
namespace {

class OrderMaker {
  public:
    OrderMaker(const TimelineInput& input, const SheetSetup& setup, bool toFill)
        : input_(input),
          only_(setup.cook),
          toFill_(toFill),
          model_(buildTimeline(input)),
          plan_(planRows(input.index, input.text)),
          clock_(input.text),
          sheet_(input, setup.layout, toFill ? orderToFillTitle() : orderOfWorkTitle()) {
        for (const NumberedRow& row : numberedRows(model_, plan_)) {
            rows_.emplace(row.row.key, row);
        }
    }

    SheetPages run() {
        if (!only_) {
            addForAll();
        }
        for (int cook = 0; cook < input_.index.stations().cooks.size(); ++cook) {
            if (!only_ || input_.index.cookOf(cook).id == *only_) {
                addCookSection(cook);
            }
        }
        return sheet_.finish();
    }

  private:
    using Row = std::vector<QString>;

    /// The clock where a new stretch of ten minutes begins, for the margin.
    QString mark(Instant at) {
        constexpr std::int64_t tenMinutes = 600;
        const std::int64_t seconds = (at - Instant::serving()).inSeconds();
        const std::int64_t into = ((seconds % tenMinutes) + tenMinutes) % tenMinutes;
        const Instant begin = at + Duration::seconds(-into);
        if (lastMark_ == begin) {
            return {};
        }
        lastMark_ = begin;
        return clock_.at(begin);
    }

    void addRows(std::vector<TableColumn> columns, std::vector<Row> rows, TextFlow& flow) {
        if (toFill_) {
            for (const char* title :
                 {QT_TRANSLATE_NOOP("Print", "Began"), QT_TRANSLATE_NOOP("Print", "Ended"),
                  QT_TRANSLATE_NOOP("Print", "Note")}) {
                columns.push_back({Printed::tr(title), 14, FontRole::Body, CellKind::Blank});
            }
            columns.back().share = 22;
            for (Row& row : rows) {
                row.resize(columns.size());
            }
        }
        flow.table(columns, rows);
        lastMark_.reset();
    }

    void addForAll() {
        sheet_.section(Printed::tr("Order of work: everyone"), [&](TextFlow& flow) {
            addSteps(std::nullopt, flow);
            addNotPlaced(flow);
        });
        const Groups& groups = input_.text.lesson.head.groups;
        for (int group = 0; groups.count > 1 && group < groups.count; ++group) {
            const QString served = clock_.at(Instant::serving() + groups.stagger * group);
            sheet_.section(Printed::tr("Order of work: group %1, served at %2")
                               .arg(input_.text.locale.toString(group + 1), served),
                           [&](TextFlow& flow) { addSteps(group, flow); });
        }
    }

    void addCookSection(int cook) {
        const std::vector<CookStretch> stretches = cookStretches(input_.index, cook);
        if (!stretches.empty()) {
            const QString name = Names(input_.text).equipment({EquipmentSort::Cook, cook});
            sheet_.section(Printed::tr("Order of work: %1").arg(name),
                           [&](TextFlow& flow) { addCook(stretches, flow); });
        }
    }

    /// Of one group, or of all.
    void addSteps(std::optional<int> group, TextFlow& flow) {
        std::vector<Row> rows;
        for (const TimelineItem& item : model_.items) {
            const auto found = rows_.find(item.key);
            if (found == rows_.end() ||
                (group && input_.index.groupOf(input_.index.nodeOf(item.key)) != *group)) {
                continue;
            }
            const PlanRow& row = found->second.row;
            rows.push_back({mark(row.interval.begin), QString::number(item.number), row.clock,
                            whatCell(row, item.collides), whereCell(input_.index, row), row.who,
                            row.length});
        }
        addRows({{Printed::tr("From"), 16, FontRole::BodyStrong, CellKind::Mark},
                 {Printed::tr("No."), 6, FontRole::BodyStrong},
                 {Printed::tr("Start by"), 16},
                 {Printed::tr("What"), 40},
                 {Printed::tr("Where, with what"), 34},
                 {Printed::tr("Who"), 18},
                 {Printed::tr("Takes"), 13}},
                std::move(rows), flow);
    }

    QString partText(const CookStretch& stretch) const {
        const QLocale& locale = input_.text.locale;
        QStringList parts;
        if (stretch.hands > Duration()) {
            parts << Printed::tr("hands %1").arg(durationText(stretch.hands, locale));
        }
        if (stretch.watching > Duration()) {
            parts << Printed::tr("watch %1").arg(durationText(stretch.watching, locale));
        }
        return parts.join(Printed::tr(", "));
    }

    void addCook(const std::vector<CookStretch>& stretches, TextFlow& flow) {
        std::vector<Row> rows;
        for (const CookStretch& stretch : stretches) {
            const auto found = rows_.find(input_.index.keyOf(stretch.node));
            if (found == rows_.end()) {
                continue;
            }
            const auto& [item, row] = found->second;
            const QString what = whatCell(row, item.collides);
            rows.push_back({mark(stretch.interval.begin), QString::number(item.number),
                            clock_.at(stretch.interval.begin),
                            stretch.goesOn ? Printed::tr("%1 (goes on)").arg(what) : what,
                            whereCell(input_.index, row), partText(stretch)});
        }
        addRows({{Printed::tr("From"), 16, FontRole::BodyStrong, CellKind::Mark},
                 {Printed::tr("No."), 6, FontRole::BodyStrong},
                 {Printed::tr("Start by"), 16},
                 {Printed::tr("What"), 42},
                 {Printed::tr("Where, with what"), 36},
                 {Printed::tr("Your part"), 20}},
                std::move(rows), flow);
    }

    void addNotPlaced(TextFlow& flow) const {
        QStringList names;
        const Names namesOf(input_.text);
        for (int task = 0; task < input_.index.tasks(); ++task) {
            if (!input_.index.placed(task)) {
                names << namesOf.step(input_.index.keyOf(task));
            }
        }
        if (!names.isEmpty()) {
            flow.heading(Printed::tr("Not placed yet: arrange the lesson to give these a time"));
            flow.paragraph(listText(names));
        }
    }

    const TimelineInput& input_;
    std::optional<CookId> only_;
    bool toFill_;
    TimelineModel model_;
    std::vector<PlanRow> plan_;
    Clock clock_;
    TextSheet sheet_;
    std::map<PlacementKey, NumberedRow> rows_;
    std::optional<Instant> lastMark_;
};

}  // namespace

QString orderOfWorkTitle() {
    return Printed::tr("Order of work");
}

SheetPages makeOrderOfWork(const TimelineInput& input, const SheetSetup& setup) {
    return OrderMaker(input, setup, false).run();
}

QString orderToFillTitle() {
    return Printed::tr("Order of work to fill in");
}

SheetPages makeOrderToFill(const TimelineInput& input, const SheetSetup& setup) {
    return OrderMaker(input, setup, true).run();
}

}  // namespace rangeline
