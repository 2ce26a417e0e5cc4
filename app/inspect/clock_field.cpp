#include "inspect/clock_field.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <QToolTip>

#include "inspect/time_of_day.h"

namespace rangeline {
namespace {

constexpr int noonHour = 12;
constexpr qint64 secondsInMinute = 60;
constexpr int stepOfArrows = 5;  // minutes

}  // namespace

ClockField::ClockField(const QString& name, const QLocale& locale, Shows shows, QWidget* parent)
    : QWidget(parent),
      name_(name),
      locale_(locale),
      wall_(QDate(2000, 1, 1), QTime(noonHour, 0), Qt::UTC),
      time_(new QLineEdit(this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    if (shows == Shows::DateAndTime) {
        date_ = new QDateEdit(this);
        date_->setTimeSpec(Qt::UTC);
        date_->setLocale(locale);
        date_->setDisplayFormat(QStringLiteral("ddd ") + locale.dateFormat(QLocale::ShortFormat));
        date_->setCalendarPopup(true);
        date_->setAccessibleName(tr("%1, day").arg(name));
        row->addStretch(1);  // dates and times of all rows stand in columns
        row->addWidget(date_);
        connect(date_, &QDateEdit::dateChanged, this,
                [this](const QDate& day) { take(QDateTime(day, wall_.time(), Qt::UTC)); });
    }
    time_->setAccessibleName(name);
    time_->installEventFilter(this);
    row->addWidget(time_);
    setFocusProxy(time_);
    connect(time_, &QLineEdit::editingFinished, this, &ClockField::read);
    setTwelveHours(false);
}

void ClockField::setTwelveHours(bool twelve) {
    twelve_ = twelve;
    const QString example = twelve
                                ? locale_.toString(QTime(22, 58, 58), QStringLiteral("hh:mm:ss AP"))
                                : QStringLiteral("22:58:58");
    constexpr int frame = 18;
    const int wide = time_->fontMetrics().horizontalAdvance(example) + frame;
    time_->setMinimumWidth(wide);
    time_->setMaximumWidth(date_ == nullptr ? QWIDGETSIZE_MAX : wide);
    time_->setToolTip(twelve ? tr("A time, such as 5:30 PM or 17:30")
                             : tr("A time, such as 17:30"));
    show();
}

void ClockField::setMoment(const QDateTime& moment) {
    wall_ = QDateTime(moment.date(), moment.time(), Qt::UTC);
    show();
}

QDateTime ClockField::moment(const QTimeZone& zone) const {
    return QDateTime(wall_.date(), wall_.time(), zone);
}

QDateTime ClockField::wallClock() const {
    return wall_;
}

void ClockField::show() {
    if (date_ != nullptr) {
        const QSignalBlocker quiet(date_);
        date_->setDate(wall_.date());
    }
    const QString seconds = wall_.time().second() == 0 ? QString() : QStringLiteral(":ss");
    const QString form = twelve_ ? QStringLiteral("h:mm") + seconds + QStringLiteral(" AP")
                                 : QStringLiteral("HH:mm") + seconds;
    time_->setText(locale_.toString(wall_.time(), form));
}

void ClockField::take(const QDateTime& wall) {
    const bool changed = wall != wall_;
    wall_ = wall;
    show();
    if (changed) {
        Q_EMIT edited();
    }
}

QString ClockField::refusal() const {
    return timeOfDay(time_->text(), locale_, twelve_, wall_.time())
               ? QString()
               : tr("“%1” is no time. %2.").arg(time_->text(), time_->toolTip());
}

/// Where no day is shown, the one nearest to what was there.
void ClockField::read() {
    const auto time = timeOfDay(time_->text(), locale_, twelve_, wall_.time());
    if (!time) {
        QToolTip::showText(time_->mapToGlobal(QPoint(0, time_->height())), refusal(), time_);
        return;
    }
    QDateTime wall(wall_.date(), *time, Qt::UTC);
    constexpr qint64 halfDay = 12 * 3600;
    if (date_ == nullptr && wall_.secsTo(wall) > halfDay) {
        wall = wall.addDays(-1);
    } else if (date_ == nullptr && wall_.secsTo(wall) < -halfDay) {
        wall = wall.addDays(1);
    }
    take(wall);
}

void ClockField::step(int minutes) {
    read();
    take(wall_.addSecs(minutes * secondsInMinute));
}

bool ClockField::eventFilter(QObject* watched, QEvent* event) {
    if (watched == time_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            step(key == Qt::Key_Up ? stepOfArrows : -stepOfArrows);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace rangeline
