#include "library/comparison_view.h"

#include <QHeaderView>
#include <QVBoxLayout>

#include "text/names.h"
#include "text/quantities.h"

namespace rangeline {
namespace {

/// "3", "3 (1 fewer)"
QString countText(int count, int before) {
    const QString number = QString::number(count);
    if (count == before) {
        return number;
    }
    return (count < before ? ComparisonView::tr("%1 (%2 fewer)")
                           : ComparisonView::tr("%1 (%2 more)"))
        .arg(number)
        .arg(std::abs(count - before));
}

QString totalText(const Outcome& outcome, const QLocale& locale) {
    return outcome.placed == 0 ? ComparisonView::tr("nothing is placed")
                               : durationText(outcome.total, locale);
}

QString totalText(const Outcome& outcome, const Outcome& before, const QLocale& locale) {
    const QString text = totalText(outcome, locale);
    if (outcome.placed == 0 || before.placed == 0 || outcome.total == before.total) {
        return text;
    }
    return outcome.total < before.total
               ? ComparisonView::tr("%1 (%2 shorter)")
                     .arg(text, durationText(before.total - outcome.total, locale))
               : ComparisonView::tr("%1 (%2 longer)")
                     .arg(text, durationText(outcome.total - before.total, locale));
}

}  // namespace

ComparisonView::ComparisonView(QWidget* parent)
    : QWidget(parent), words_(new QLabel(this)), rows_(new QTreeWidget(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(words_);
    column->addWidget(rows_, 1);
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    rows_->setAccessibleName(tr("Comparison"));
    rows_->setColumnCount(3);
    rows_->setRootIsDecorated(false);
    rows_->setWordWrap(true);
    rows_->setAlternatingRowColors(true);
    rows_->header()->setSectionResizeMode(QHeaderView::Stretch);
    rows_->header()->setSectionsMovable(false);
}

QTreeWidgetItem* ComparisonView::addGroup(const QString& name) {
    auto* group = new QTreeWidgetItem(rows_, {name});
    QFont bold = rows_->font();
    bold.setBold(true);
    group->setFont(0, bold);
    group->setFirstColumnSpanned(true);
    group->setExpanded(true);
    return group;
}

void ComparisonView::say(const QString& text) {
    words_->setText(text);
    words_->show();
    rows_->clear();
    rows_->hide();
}

void ComparisonView::show(const Comparison& comparison, const QString& before, const QString& after,
                          const QLocale& locale) {
    rows_->clear();
    rows_->show();
    rows_->setHeaderLabels({{}, before, after});
    words_->setText(comparison.different.isEmpty()
                        ? QString()
                        : tr("Different: %1.").arg(listText(comparison.different)));
    words_->setVisible(!words_->text().isEmpty());
    const Outcome& left = comparison.before;
    const Outcome& right = comparison.after;
    QTreeWidgetItem* whole = addGroup(tr("What it comes to"));
    const auto add = [](QTreeWidgetItem* group, const QStringList& cells) {
        auto* row = new QTreeWidgetItem(group, cells);
        for (int cell = 0; cell < cells.size(); ++cell) {
            row->setToolTip(cell, cells.at(cell));
        }
    };
    add(whole, {tr("Total time"), totalText(left, locale), totalText(right, left, locale)});
    add(whole, {tr("Begins at"), left.from, right.from});
    add(whole, {tr("To place yet"), QString::number(left.open), countText(right.open, left.open)});
    add(whole, {tr("Collisions"), QString::number(left.collisions),
                countText(right.collisions, left.collisions)});
    add(whole, {tr("Late"), QString::number(left.late), countText(right.late, left.late)});
    add(whole, {tr("To mind"), QString::number(left.toMind), countText(right.toMind, left.toMind)});
    if (comparison.moved.empty()) {
        addGroup(tr("Everything placed stands where it stood"));
        return;
    }
    QTreeWidgetItem* moved =
        addGroup(tr("Placed otherwise (%1)").arg(static_cast<int>(comparison.moved.size())));
    for (const Moved& one : comparison.moved) {
        const auto placed = [](const QString& text) {
            return text.isEmpty() ? tr("not placed") : text;
        };
        add(moved, {one.step, placed(one.before), placed(one.after)});
    }
}

}  // namespace rangeline
