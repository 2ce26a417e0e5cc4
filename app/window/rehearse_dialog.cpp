#include "window/rehearse_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <thread>

#include "text/rehearsal_text.h"

namespace rangeline {
namespace {

QTreeWidget* makeTable(const std::vector<DecidingRow>& rows, QWidget* parent) {
    auto* table = new QTreeWidget(parent);
    table->setAccessibleName(RehearseDialog::tr("What decides when plating is done"));
    table->setHeaderLabels({RehearseDialog::tr("Step"), RehearseDialog::tr("Decides plating"),
                            RehearseDialog::tr("Ends, in 80 of 100")});
    table->setRootIsDecorated(false);
    table->setAlternatingRowColors(true);
    table->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    table->header()->setStretchLastSection(false);
    for (const DecidingRow& row : rows) {
        auto* line = new QTreeWidgetItem(
            table, {row.step, RehearseDialog::tr("%1 of 100").arg(row.percent), row.ends});
        line->setToolTip(0, row.step);
    }
    table->resizeColumnToContents(1);
    table->resizeColumnToContents(2);
    return table;
}

}  // namespace

RehearseDialog::RehearseDialog(const LessonDocument& document, const QLocale& locale,
                               QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Rehearsed"));
    const UseIndex& index = document.index();
    const Network network = networkOf(index);
    RehearsalOptions options;
    options.threads = std::clamp(static_cast<int>(std::thread::hardware_concurrency()), 1, 8);
    const Rehearsal rehearsal = rehearse(network, options);
    const TextContext context = document.text(locale);
    auto* chance = new QLabel(chanceText(rehearsal), this);
    QFont large = chance->font();
    constexpr double larger = 1.3;
    large.setPointSizeF(large.pointSizeF() * larger);
    chance->setFont(large);
    auto* earlier = new QLabel(earlierText(rehearsal, locale), this);
    auto* how = new QLabel(
        tr("Ten thousand times, each step as long as it may take from its shortest to its longest "
           "time, in the order of the plan; nothing begins before it is due."),
        this);
    for (QLabel* label : {chance, earlier, how}) {
        label->setWordWrap(true);
    }
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(chance);
    column->addWidget(earlier);
    column->addWidget(makeTable(decidingRows(rehearsal, network, index, context), this), 1);
    column->addWidget(how);
    column->addWidget(buttons);
    constexpr QSize usual(680, 520);
    resize(usual);
}

}  // namespace rangeline
