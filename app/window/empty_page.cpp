#include "window/empty_page.h"

#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace rangeline {
namespace {

constexpr int columnWidth = 460;

QLabel* addText(QVBoxLayout& column, const QString& text) {
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setFixedWidth(columnWidth);
    column.addWidget(label);
    return label;
}

}  // namespace

EmptyPage::EmptyPage(QWidget* parent) : QWidget(parent), recent_(new QVBoxLayout) {
    auto* column = new QVBoxLayout(this);
    column->setAlignment(Qt::AlignCenter);
    constexpr int space = 12;
    column->setSpacing(space);
    QLabel* head = addText(*column, tr("Everything ready at the same moment"));
    QFont large = head->font();
    constexpr double larger = 1.6;
    large.setPointSizeF(large.pointSizeF() * larger);
    head->setFont(large);
    addText(*column,
            tr("Open a lesson: its dishes, the kitchen and who cooks. Drag its components onto "
               "burners and oven slots, or let them be arranged, until nothing collides and the "
               "plates are ready on time."));
    auto* open = new QPushButton(tr("Open a lesson ..."), this);
    connect(open, &QPushButton::clicked, this, &EmptyPage::openWanted);
    column->addWidget(open, 0, Qt::AlignLeft);
    column->addLayout(recent_);
}

void EmptyPage::setRecent(const QStringList& paths) {
    while (QLayoutItem* item = recent_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const QString& path : paths) {
        auto* button = new QPushButton(QFileInfo(path).fileName(), this);
        button->setFlat(true);
        button->setToolTip(path);
        button->setEnabled(QFileInfo::exists(path));
        connect(button, &QPushButton::clicked, this, [this, path] { Q_EMIT fileWanted(path); });
        recent_->addWidget(button, 0, Qt::AlignLeft);
    }
}

}  // namespace rangeline
