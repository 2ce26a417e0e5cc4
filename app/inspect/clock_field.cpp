#include "inspect/clock_field.h"

#include <QTimeZone>

namespace rangeline {

ClockField::ClockField(const QLocale& locale, Shows shows, QWidget* parent)
    : QDateTimeEdit(parent) {
    // The field only holds a wall clock; in UTC every one of them exists.
    setTimeSpec(Qt::UTC);
    setLocale(locale);
    const QString day = shows == Shows::DayAndTime
                            ? QStringLiteral("ddd")
                            : QStringLiteral("ddd ") + locale.dateFormat(QLocale::ShortFormat);
    setDisplayFormat(day + u' ' + locale.timeFormat(QLocale::ShortFormat));
    setCalendarPopup(shows == Shows::DateAndTime);
}

void ClockField::setMoment(const QDateTime& moment) {
    setDateTime(QDateTime(moment.date(), moment.time(), Qt::UTC));
}

QDateTime ClockField::moment(const QTimeZone& zone) const {
    return QDateTime(date(), time(), zone);
}

}  // namespace rangeline
