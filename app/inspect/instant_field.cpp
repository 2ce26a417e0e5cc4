#include "inspect/instant_field.h"

#include <QHBoxLayout>

namespace rangeline {

InstantField::InstantField(const QString& name, const QLocale& locale, QWidget* parent)
    : QWidget(parent),
      set_(new QCheckBox(name, this)),
      clock_(new ClockField(locale, ClockField::Shows::DateAndTime, this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(set_, 1);
    row->addWidget(clock_);
    clock_->setAccessibleName(name);
    connect(set_, &QCheckBox::toggled, clock_, &QWidget::setEnabled);
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

}  // namespace rangeline
