#include "inspect/clock_field.h"

#include <QRegularExpression>
#include <QTimeZone>

namespace rangeline {
namespace {

/// The time of day of "5:43 PM", "5:43 pm", "17:43", "17.43:30" or "17:43 PM"; invalid where the
/// figures are none.
QTime readTime(const QRegularExpressionMatch& match, bool afterNoon, bool marked) {
    int hour = match.captured(1).toInt();
    if (marked && hour <= 12) {
        hour = hour % 12 + (afterNoon ? 12 : 0);
    }
    return {hour, match.captured(2).toInt(), match.captured(3).toInt()};
}

}  // namespace

ClockField::ClockField(const QLocale& locale, Shows shows, QWidget* parent)
    : QDateTimeEdit(parent),
      day_(shows == Shows::DayAndTime
               ? QStringLiteral("ddd ")
               : QStringLiteral("ddd ") + locale.dateFormat(QLocale::ShortFormat) + u' ') {
    // The field only holds a wall clock; in UTC every one of them exists.
    setTimeSpec(Qt::UTC);
    setLocale(locale);
    setTwelveHours(false);
    setCalendarPopup(shows == Shows::DateAndTime);
}

void ClockField::setTwelveHours(bool twelve) {
    time_ = twelve ? QStringLiteral("h:mm AP") : QStringLiteral("HH:mm");
    setDisplayFormat(day_ + time_);
}

void ClockField::setMoment(const QDateTime& moment) {
    setDateTime(QDateTime(moment.date(), moment.time(), Qt::UTC));
}

QDateTime ClockField::moment(const QTimeZone& zone) const {
    return QDateTime(date(), time(), zone);
}

/// The text with its time written as the field writes it; empty where it ends with no time.
QString ClockField::asShown(const QString& typed) const {
    static const QRegularExpression form(
        QStringLiteral("(?<!\\d)(\\d{1,2})[:.](\\d{2})(?::(\\d{2}))?\\s*([^\\d\\s].*)?$"));
    const QRegularExpressionMatch match = form.match(typed);
    const QString mark = match.captured(4).trimmed();
    const auto says = [&mark](const QString& word) {
        return !mark.isEmpty() && mark.compare(word, Qt::CaseInsensitive) == 0;
    };
    const bool after = says(locale().pmText()) || says(QStringLiteral("pm"));
    const bool before = says(locale().amText()) || says(QStringLiteral("am"));
    if (!match.hasMatch() || (!mark.isEmpty() && !after && !before)) {
        return {};
    }
    const QTime time = readTime(match, after, after || before);
    return time.isValid() ? typed.left(match.capturedStart()) + locale().toString(time, time_)
                          : QString();
}

QDateTime ClockField::dateTimeFromText(const QString& text) const {
    const QString shown = asShown(text);
    return QDateTimeEdit::dateTimeFromText(shown.isEmpty() ? text : shown);
}

QValidator::State ClockField::validate(QString& text, int& position) const {
    QString shown = asShown(text);
    int end = static_cast<int>(shown.size());
    if (!shown.isEmpty() && QDateTimeEdit::validate(shown, end) == QValidator::Acceptable) {
        return QValidator::Acceptable;
    }
    return QDateTimeEdit::validate(text, position);
}

}  // namespace rangeline
