#include "log/times_table.h"

#include <QHeaderView>
#include <algorithm>

#include "text/plan_text.h"
#include "timeline/build_timeline.h"

namespace rangeline {
namespace {

enum Column : int { Number, StartBy, What, Who, Began, Ended, Took, Remark, Count };

QTableWidgetItem* fixedItem(const QString& text) {
    auto* item = new QTableWidgetItem(text);
    item->setFlags(Qt::ItemIsEnabled);
    item->setToolTip(text);
    return item;
}

}  // namespace

TimesTable::TimesTable(const LessonDocument& document, const QLocale& locale, QWidget* parent)
    : QTableWidget(parent), locale_(locale), clock_(document.shownHead(), locale) {
    const TextContext context = document.text(locale);
    const UseIndex& index = document.index();
    const TimelineModel model =
        buildTimeline({index, context, document.findings(), document.analysis()});
    setColumnCount(Count);
    setHorizontalHeaderLabels({tr("No."), tr("Start by"), tr("Step"), tr("Who"), tr("Began"),
                               tr("Ended"), tr("Took"), tr("To look at")});
    setAccessibleName(tr("When each step began and ended"));
    verticalHeader()->hide();
    setTabKeyNavigation(true);
    setEditTriggers(AllEditTriggers);
    for (const PlanRow& plan : planRows(index, context)) {
        const int node = index.nodeOf(plan.key);
        const auto item = std::ranges::find(model.items, plan.key, &TimelineItem::key);
        if (!index.isTask(node) || item == model.items.end() || index.step(node).isEvent()) {
            continue;
        }
        rows_.push_back({std::get<StepKey>(plan.key), item->number, plan.interval,
                         document.expanded().tasks[static_cast<std::size_t>(node)].time});
        const int row = rowCount();
        setRowCount(row + 1);
        const QStringList texts{QString::number(item->number), plan.clock, plan.step, plan.who};
        for (int column = 0; column < Count; ++column) {
            const bool field = column == Began || column == Ended;
            setItem(row, column, field ? new QTableWidgetItem : fixedItem(texts.value(column)));
        }
    }
    horizontalHeader()->setSectionResizeMode(What, QHeaderView::Stretch);
    for (const int column : {Number, StartBy, Who}) {
        resizeColumnToContents(column);
    }
    constexpr int remark = 200;
    setColumnWidth(Remark, remark);
    connect(this, &QTableWidget::itemChanged, this, [this](const QTableWidgetItem* item) {
        if (item->column() == Began || item->column() == Ended) {
            showRow(item->row());
            Q_EMIT typed();
        }
    });
    if (!rows_.empty()) {
        setCurrentCell(0, Began);
    }
}

void TimesTable::setHead(const Head& head) {
    clock_ = Clock(head, locale_);
    for (int row = 0; row < rowCount(); ++row) {
        item(row, StartBy)->setText(clock_.at(rows_[static_cast<std::size_t>(row)].planned.begin));
        showRow(row);
    }
}

bool TimesTable::goTo(int number) {
    const auto found = std::ranges::find(rows_, number, &Row::number);
    if (found == rows_.end()) {
        return false;
    }
    setCurrentCell(static_cast<int>(found - rows_.begin()), Began);
    setFocus();
    return true;
}

ReadTimes TimesTable::read(int row) const {
    const Row& it = rows_[static_cast<std::size_t>(row)];
    return readTimes(item(row, Began)->text(), item(row, Ended)->text(), it.planned, it.time,
                     clock_);
}

QString TimesTable::doubtText(TypedDoubt doubt, const Row& row) const {
    switch (doubt) {
        case TypedDoubt::NoTime:
            return tr("Not a time of day: write 18:05 or 6:05 pm.");
        case TypedDoubt::EndsFirst:
            return tr("It ends before it begins.");
        case TypedDoubt::NoLength:
            return tr("It ends as it begins: not logged.");
        case TypedDoubt::Long:
            return tr("Long: at most %1 is usual.").arg(durationText(row.time.longest, locale_));
        case TypedDoubt::Short:
            return tr("Short: at least %1 is usual.").arg(durationText(row.time.shortest, locale_));
        case TypedDoubt::FarAway:
            return tr("Two hours or more from the plan.");
        case TypedDoubt::None:
            break;
    }
    return {};
}

void TimesTable::showRow(int row) {
    const QSignalBlocker quiet(this);
    const ReadTimes read = this->read(row);
    const auto took = read.took();
    const bool wrong = isWrong(read.doubt);
    QString text = took && !wrong ? durationText(*took, locale_) : QString();
    if (!text.isEmpty() && read.nextDay) {
        text = tr("%1, next day").arg(text);
    }
    const QString remark = doubtText(read.doubt, rows_[static_cast<std::size_t>(row)]);
    item(row, Took)->setText(text);
    item(row, Remark)->setText(remark);
    item(row, Remark)->setToolTip(remark);
    QFont font = item(row, Remark)->font();
    font.setBold(wrong);
    item(row, Remark)->setFont(font);
    viewport()->update();
}

std::vector<live::Taken> TimesTable::taken() const {
    std::vector<live::Taken> found;
    for (int row = 0; row < rowCount(); ++row) {
        const ReadTimes it = read(row);
        const Row& step = rows_[static_cast<std::size_t>(row)];
        if (!isWrong(it.doubt) && it.took() && *it.took() > Duration()) {
            found.push_back({step.key, *it.began, *it.ended, step.planned.length()});
        }
    }
    std::ranges::stable_sort(found, {}, &live::Taken::started);
    return found;
}

int TimesTable::wrong() const {
    int count = 0;
    for (int row = 0; row < rowCount(); ++row) {
        count += isWrong(read(row).doubt) ? 1 : 0;
    }
    return count;
}

bool TimesTable::isEmpty() const {
    for (int row = 0; row < rowCount(); ++row) {
        if (!item(row, Began)->text().isEmpty() || !item(row, Ended)->text().isEmpty()) {
            return false;
        }
    }
    return true;
}

bool TimesTable::isAtEnd(bool next) const {
    const QModelIndex at = currentIndex();
    return next ? at.row() == rowCount() - 1 && at.column() >= Ended
                : at.row() <= 0 && at.column() <= Began;
}

bool TimesTable::focusNextPrevChild(bool next) {
    return isAtEnd(next) ? QAbstractScrollArea::focusNextPrevChild(next)
                         : QTableWidget::focusNextPrevChild(next);
}

void TimesTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const bool next = hint == QAbstractItemDelegate::EditNextItem;
    const bool previous = hint == QAbstractItemDelegate::EditPreviousItem;
    if ((next || previous) && isAtEnd(next)) {
        QTableWidget::closeEditor(editor, QAbstractItemDelegate::NoHint);
        QAbstractScrollArea::focusNextPrevChild(next);
    } else {
        QTableWidget::closeEditor(editor, hint);
    }
}

QModelIndex TimesTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    const QModelIndex at = currentIndex();
    if (action == MoveNext && at.isValid()) {
        const bool began = at.column() < Ended;
        const int row = at.row() + (began ? 0 : 1);
        return model()->index(std::min(row, rowCount() - 1),
                              began && at.column() == Began ? Ended : Began);
    }
    if (action == MovePrevious && at.isValid()) {
        const bool ended = at.column() >= Ended;
        const int row = at.row() - (ended ? 0 : 1);
        return model()->index(std::max(row, 0), ended ? Began : Ended);
    }
    return QTableWidget::moveCursor(action, modifiers);
}

}  // namespace rangeline
