#include "inspect/time_of_day.h"

#include <QRegularExpression>

namespace rangeline {
namespace {

constexpr int noon = 12;

enum class Half : std::uint8_t { Unmarked, Before, After, Unknown };

Half halfOf(const QString& mark, const QLocale& locale) {
    const auto is = [&mark](const QString& word) {
        return !mark.isEmpty() && word.startsWith(mark, Qt::CaseInsensitive);
    };
    if (mark.isEmpty()) {
        return Half::Unmarked;
    }
    if (is(QStringLiteral("pm")) || is(QStringLiteral("p.m.")) || is(locale.pmText())) {
        return Half::After;
    }
    return is(QStringLiteral("am")) || is(QStringLiteral("a.m.")) || is(locale.amText())
               ? Half::Before
               : Half::Unknown;
}

/// "5", "17", "530" and "1730" as hours and minutes.
QTime withoutMarks(const QString& figures) {
    const int number = figures.toInt();
    return figures.size() <= 2 ? QTime(number, 0) : QTime(number / 100, number % 100);
}

QTime figuresOf(const QString& figures) {
    static const QRegularExpression marked(
        QStringLiteral("^(\\d{1,2})\\s*[:.h]\\s*(\\d{2})(?:[:.](\\d{2}))?$"));
    static const QRegularExpression plain(QStringLiteral("^\\d{1,4}$"));
    if (const auto match = marked.match(figures); match.hasMatch()) {
        return {match.captured(1).toInt(), match.captured(2).toInt(), match.captured(3).toInt()};
    }
    return plain.match(figures).hasMatch() ? withoutMarks(figures) : QTime();
}

}  // namespace

std::optional<QTime> timeOfDay(const QString& typed, const QLocale& locale, bool twelveHours,
                               const QTime& near) {
    static const QRegularExpression form(
        QStringLiteral("^\\s*(\\d[\\d:.h\\s]*?)\\s*([^\\d\\s:.h]\\D*)?$"));
    const QRegularExpressionMatch match = form.match(typed);
    const Half half = halfOf(match.captured(2).trimmed(), locale);
    const QTime time = figuresOf(match.captured(1).trimmed());
    if (!match.hasMatch() || !time.isValid() || half == Half::Unknown) {
        return std::nullopt;
    }
    const bool small = time.hour() >= 1 && time.hour() <= noon;
    const bool leadingNought = match.captured(1).trimmed().startsWith(u'0');
    bool after = half == Half::After;
    if (!small || (half == Half::Unmarked && (!twelveHours || leadingNought))) {
        return time;
    }
    if (half == Half::Unmarked) {
        after = near.hour() >= noon;
    }
    return QTime(time.hour() % noon + (after ? noon : 0), time.minute(), time.second());
}

}  // namespace rangeline
