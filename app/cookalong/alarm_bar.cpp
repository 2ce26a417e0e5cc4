#include "cookalong/alarm_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace rangeline {

AlarmBar::AlarmBar(QWidget* parent) : QFrame(parent) {
    setProperty("role", QStringLiteral("alarm"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 4, 6, 4);
    number_ = new QLabel(this);
    number_->setProperty("role", QStringLiteral("alarm-number"));
    text_ = new QLabel(this);
    text_->setProperty("role", QStringLiteral("alarm-text"));
    text_->setTextFormat(Qt::PlainText);
    text_->setWordWrap(true);
    stop_ = new QPushButton(this);
    stop_->setFocusPolicy(Qt::TabFocus);
    stop_->setProperty("role", QStringLiteral("stop"));
    row->addWidget(number_);
    row->addWidget(text_, 1);
    row->addWidget(stop_);
    connect(stop_, &QPushButton::clicked, this, &AlarmBar::stopWanted);
}

void AlarmBar::show(const live::Timer& timer, int number, const QString& text,
                    const QString& late) {
    timer_ = timer;
    number_->setText(number > 0 ? QString::number(number) : QString());
    text_->setText(late.isEmpty() ? text : tr("%1 (%2)").arg(text, late));
    stop_->setText(number > 0 ? tr("%1  Stop").arg(number) : tr("Stop"));
    stop_->setAccessibleName(tr("Stop the alarm: %1").arg(text));
    setAccessibleName(tr("Alarm: %1").arg(text_->text()));
}

}  // namespace rangeline
