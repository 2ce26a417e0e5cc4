#include "log/typed_times.h"

#include <QRegularExpression>
#include <QTimeZone>
#include <array>
#include <cstdlib>

namespace rangeline {
namespace {

constexpr int hour = 60;
constexpr int halfADay = 12 * hour;

std::int64_t apart(Instant a, Instant b) {
    return std::abs((a - b).inSeconds());
}

TypedDoubt doubtOf(const ReadTimes& read, const Interval& planned, const DurationRange& time) {
    const auto took = read.took();
    if (took && *took < Duration()) {
        return TypedDoubt::EndsFirst;
    }
    if (took && *took == Duration()) {
        return TypedDoubt::NoLength;
    }
    if (took && *took > time.longest * 2) {
        return TypedDoubt::Long;
    }
    if (took && *took * 2 < time.shortest) {
        return TypedDoubt::Short;
    }
    constexpr Duration far = Duration::hours(2);
    return read.began && apart(*read.began, planned.begin) >= far.inSeconds() ? TypedDoubt::FarAway
                                                                              : TypedDoubt::None;
}

}  // namespace

std::optional<TypedTime> typedTime(const QString& text) {
    static const QRegularExpression form(
        QStringLiteral("^(\\d{1,2})(?:\\s*[:.h]?\\s*([0-5]\\d))?\\s*(?:([ap])\\.?(?:m\\.?)?)?$"),
        QRegularExpression::CaseInsensitiveOption);
    const auto match = form.match(text.trimmed());
    const int hours = match.captured(1).toInt();
    const QString mark = match.captured(3).toLower();
    constexpr int wholeDay = 24;
    if (!match.hasMatch() || hours >= wholeDay || (!mark.isEmpty() && (hours < 1 || hours > 12))) {
        return std::nullopt;
    }
    const int minutes = match.captured(2).toInt();
    if (mark.isEmpty()) {
        // "06:05" is written by who counts to twenty-four.
        const bool half = hours > 12 || hours == 0 || match.captured(1).startsWith(u'0');
        return TypedTime{hours * hour + minutes, half};
    }
    return TypedTime{hours % 12 * hour + minutes + (mark == u"p" ? halfADay : 0), true};
}

Instant nearestOf(const TypedTime& typed, Instant near, const Clock& clock) {
    const QDateTime serving = clock.moment(Instant::serving());
    const QDate day = clock.moment(near).date();
    std::optional<Instant> best;
    for (const int days : {-1, 0, 1}) {
        for (const int more : {0, halfADay}) {
            const int minutes = (typed.minutes + more) % (2 * halfADay);
            if (typed.half && more > 0) {
                continue;
            }
            const QDateTime moment(day.addDays(days), QTime(minutes / hour, minutes % hour),
                                   serving.timeZone());
            const Instant at = Instant::atSeconds(serving.secsTo(moment));
            if (moment.isValid() && (!best || apart(at, near) < apart(*best, near))) {
                best = at;
            }
        }
    }
    return best.value_or(near);
}

std::optional<Duration> ReadTimes::took() const {
    return began && ended ? std::optional(*ended - *began) : std::nullopt;
}

ReadTimes readTimes(const QString& began, const QString& ended, const Interval& planned,
                    const DurationRange& time, const Clock& clock) {
    const auto first = typedTime(began);
    const auto last = typedTime(ended);
    if ((!first && !began.trimmed().isEmpty()) || (!last && !ended.trimmed().isEmpty())) {
        return {{}, {}, TypedDoubt::NoTime, false};
    }
    ReadTimes read;
    if (first) {
        read.began = nearestOf(*first, planned.begin, clock);
    }
    if (last) {
        const Instant expected = read.began ? *read.began + planned.length() : planned.end;
        read.ended = nearestOf(*last, expected, clock);
    }
    read.doubt = doubtOf(read, planned, time);
    read.nextDay = read.began && read.ended &&
                   clock.moment(*read.began).date() < clock.moment(*read.ended).date();
    return read;
}

}  // namespace rangeline
