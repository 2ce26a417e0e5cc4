#include "window/notice.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace rangeline {

Notice::Notice(QWidget* parent) : QFrame(parent), text_(new QLabel(this)) {
    setFrameShape(QFrame::StyledPanel);
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::PlainText);
    auto* away = new QToolButton(this);
    away->setText(tr("Put away"));
    away->setAutoRaise(true);
    auto* row = new QHBoxLayout(this);
    row->addWidget(text_, 1);
    row->addWidget(away, 0, Qt::AlignTop);
    connect(away, &QToolButton::clicked, this, &QWidget::hide);
    away->setAccessibleName(tr("Put the message away"));
    hide();
}

void Notice::say(const QString& text) {
    text_->setText(text);
    setAccessibleName(text);
    setVisible(!text.isEmpty());
}

QString Notice::text() const {
    return text_->text();
}

}  // namespace rangeline
