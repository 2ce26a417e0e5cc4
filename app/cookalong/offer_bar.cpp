#include "cookalong/offer_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace rangeline {

OfferBar::OfferBar(const QString& act, QWidget* parent) : QWidget(parent) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    text_ = new QLabel(this);
    text_->setProperty("role", QStringLiteral("said"));
    text_->setTextFormat(Qt::PlainText);
    text_->setWordWrap(true);
    button_ = new QPushButton(act, this);
    button_->setProperty("role", QStringLiteral("small"));
    button_->setFocusPolicy(Qt::TabFocus);
    row->addWidget(text_, 1);
    row->addWidget(button_);
    connect(button_, &QPushButton::clicked, this, &OfferBar::taken);
    hide();
}

void OfferBar::setAct(const QString& act) {
    button_->setText(act);
}

void OfferBar::show(const QString& text) {
    text_->setText(text);
    button_->setAccessibleName(tr("%1: %2").arg(button_->text(), text));
    setVisible(!text.isEmpty());
}

}  // namespace rangeline
