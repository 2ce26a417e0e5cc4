#include "inspect/instant_field.h"

#include <QHBoxLayout>

namespace rangeline {

InstantField::InstantField(const QString& name, const QLocale& locale, QWidget* parent)
    : QWidget(parent),
      set_(new QCheckBox(name, this)),
      clock_(new ClockField(name, locale, ClockField::Shows::DateAndTime, this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(set_, 1);
    row->addWidget(clock_);
    connect(set_, &QCheckBox::toggled, clock_, &QWidget::setEnabled);
    connect(set_, &QCheckBox::clicked, this, &InstantField::edited);
    connect(clock_, &ClockField::edited, this, &InstantField::edited);
}

void InstantField::setInstant(const std::optional<Instant>& instant, const QDateTime& serving) {
    set_->setChecked(instant.has_value());
    clock_->setEnabled(instant.has_value());
    clock_->setMoment(serving.addSecs(instant.value_or(Instant::serving()).inSeconds()));
}

std::optional<Instant> InstantField::instant(const QDateTime& serving) const {
    if (!set_->isChecked()) {
        return std::nullopt;
    }
    return Instant::atSeconds(serving.secsTo(clock_->moment(serving.timeZone())));
}

QString InstantField::readTyped() {
    if (!set_->isChecked()) {
        return {};
    }
    clock_->read();
    return clock_->refusal();
}

void InstantField::moveBy(qint64 seconds) {
    clock_->setMoment(clock_->wallClock().addSecs(seconds));
}

QString readTimes(ClockField& serving, std::initializer_list<InstantField*> others) {
    serving.read();
    QString why = serving.refusal();
    for (InstantField* field : others) {
        why = why.isEmpty() ? field->readTyped() : why;
    }
    return why;
}

}  // namespace rangeline
