#include "log/review_view.h"

#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>
#include <QVBoxLayout>

#include "text/review_text.h"

namespace rangeline {

ReviewView::ReviewView(const Lesson& planned, const live::Review& review, const QLocale& locale,
                       QWidget* parent)
    : QWidget(parent) {
    const Expanded expanded = expand(planned);
    const TextContext context{planned, expanded, locale};
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* plated = new QLabel(platedText(review, locale), this);
    QFont large = plated->font();
    constexpr double larger = 1.3;
    large.setPointSizeF(large.pointSizeF() * larger);
    plated->setFont(large);
    auto* deciders = new QLabel(decidersText(review, context), this);
    for (QLabel* label : {plated, deciders}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    auto* table = new QTreeWidget(this);
    table->setAccessibleName(tr("Planned and real"));
    table->setHeaderLabels({tr("Step"), tr("Planned"), tr("Real"), tr("Began"), tr("Took")});
    table->setRootIsDecorated(false);
    table->setAlternatingRowColors(true);
    table->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    table->header()->setStretchLastSection(false);
    for (const ReviewRow& row : reviewRows(review, context)) {
        auto* line =
            new QTreeWidgetItem(table, {row.step, row.planned, row.real, row.began, row.took});
        line->setToolTip(0, row.step);
    }
    for (int i = 1; i < table->columnCount(); ++i) {
        table->resizeColumnToContents(i);
    }
    column->addWidget(table, 1);
}

}  // namespace rangeline
