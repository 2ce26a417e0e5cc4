#include <QCoreApplication>
#include <QTimeZone>
#include <cstdlib>

#include "text/names.h"
#include "text/quantities.h"

namespace rangeline {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Quantities)
};

QDateTime servingMoment(const Head& head) {
    const QDateTime local =
        QDateTime::fromString(QString::fromStdString(head.servingTime), Qt::ISODate);
    QTimeZone zone(QByteArray::fromStdString(head.zone));
    if (!zone.isValid()) {
        zone = QTimeZone::utc();
    }
    const QDateTime moment(local.date(), local.time(), zone);
    // In the hour that daylight saving skips no local time is valid: count on from the hour before,
    // which may be of the day before.
    const QDateTime hourBefore =
        QDateTime(local.date(), local.time(), QTimeZone::utc()).addSecs(-3600);
    return moment.isValid() || !local.isValid()
               ? moment
               : QDateTime(hourBefore.date(), hourBefore.time(), zone).addSecs(3600);
}

}  // namespace

Clock::Clock(const Head& head, const QLocale& locale)
    : serving_(servingMoment(head)),
      locale_(locale),
      twelveHours_(head.units == Units::UsCustomary) {}

Clock::Clock(const TextContext& text) : Clock(text.lesson.head, text.locale) {
    twelveHours_ = text.units == Units::UsCustomary;
}

QDateTime Clock::moment(Instant instant) const {
    return serving_.addSecs(instant.inSeconds());
}

QString Clock::timeFormat(const QTime& time, bool marked) const {
    const QString seconds = time.second() == 0 ? QString() : QStringLiteral(":ss");
    if (!twelveHours_) {
        return locale_.toString(time, "HH:mm" + seconds);
    }
    // Without the mark, Qt would count the hours to 24.
    const QString withMark = locale_.toString(time, "h:mm" + seconds + " AP");
    return marked ? withMark : withMark.left(withMark.lastIndexOf(' '));
}

QString Clock::dayOf(const QDateTime& moment) const {
    if (moment.date() == serving_.date()) {
        return {};
    }
    const bool near = std::abs(moment.date().daysTo(serving_.date())) < 7;
    return (near ? locale_.toString(moment.date(), QStringLiteral("ddd"))
                 : locale_.toString(moment.date(), QLocale::ShortFormat)) +
           ' ';
}

QString Clock::at(Instant instant) const {
    const QDateTime local = moment(instant);
    return dayOf(local) + timeFormat(local.time(), true);
}

QString Clock::span(const Interval& interval) const {
    if (interval.empty()) {
        return Text::tr("at %1").arg(at(interval.begin));
    }
    const QDateTime begin = moment(interval.begin);
    const QDateTime end = moment(interval.end);
    const bool alike =
        begin.date() == end.date() && (begin.time().hour() < 12) == (end.time().hour() < 12);
    const QString first = dayOf(begin) + timeFormat(begin.time(), !alike);
    const QString last =
        (begin.date() == end.date() ? QString() : dayOf(end)) + timeFormat(end.time(), true);
    return Text::tr("from %1 to %2").arg(first, last);
}

QString Clock::iso(Instant instant) const {
    return moment(instant).toString(Qt::ISODate);
}

}  // namespace rangeline
