#include "writing/kitchen_table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QVBoxLayout>

namespace rangeline {

KitchenTable::KitchenTable(KitchenTableKind kind, QWidget* parent)
    : QWidget(parent), kind_(std::move(kind)), table_(new QTableWidget(this)) {
    QStringList titles;
    for (const KitchenColumn& column : kind_.columns) {
        titles << column.title;
    }
    table_->setColumnCount(static_cast<int>(titles.size()));
    table_->setHorizontalHeaderLabels(titles);
    table_->setAccessibleName(kind_.title);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->verticalHeader()->hide();
    table_->setTabKeyNavigation(false);  // Tab leaves the table; arrows go from cell to cell
    auto* column = new QVBoxLayout(this);
    column->addWidget(table_, 1);
    auto* line = new QHBoxLayout;
    auto* more = new QPushButton(tr("&One more"), this);
    auto* less = new QPushButton(tr("&Remove it"), this);
    line->addWidget(more);
    line->addWidget(less);
    line->addStretch(1);
    column->addLayout(line);
    connect(table_, &QTableWidget::cellChanged, this, &KitchenTable::cellChanged);
    connect(more, &QPushButton::clicked, this, [this] {
        Kitchen changed = kitchen_;
        kind_.add(changed);
        Q_EMIT edited(changed);
        table_->setCurrentCell(table_->rowCount() - 1, 0);
    });
    connect(less, &QPushButton::clicked, this, [this] {
        if (table_->currentRow() >= 0) {
            Kitchen changed = kitchen_;
            kind_.remove(changed, static_cast<std::size_t>(table_->currentRow()));
            Q_EMIT edited(changed);
        }
    });
}

void KitchenTable::showKitchen(const Kitchen& kitchen) {
    kitchen_ = kitchen;
    filling_ = true;
    table_->setRowCount(static_cast<int>(kind_.count(kitchen)));
    for (int row = 0; row < table_->rowCount(); ++row) {
        for (int column = 0; column < table_->columnCount(); ++column) {
            const auto& told = kind_.columns[static_cast<std::size_t>(column)];
            table_->setItem(
                row, column,
                new QTableWidgetItem(told.shown(kitchen, static_cast<std::size_t>(row))));
        }
    }
    filling_ = false;
}

void KitchenTable::goTo(int row) {
    table_->setCurrentCell(row, 0);
    table_->setFocus();
}

void KitchenTable::cellChanged(int row, int column) {
    if (filling_) {
        return;
    }
    const KitchenColumn& told = kind_.columns[static_cast<std::size_t>(column)];
    const QString text = table_->item(row, column)->text().trimmed();
    Kitchen changed = kitchen_;
    if (told.taken(changed, static_cast<std::size_t>(row), text)) {
        Q_EMIT refused({});
        Q_EMIT edited(changed);
        return;
    }
    showKitchen(kitchen_);
    Q_EMIT refused(
        tr("“%1” cannot stand under “%2”; what stood there stays.").arg(text, told.title));
}

}  // namespace rangeline
