#include "text/rehearsal_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Rehearsal)
};

int percentOf(double part) {
    return static_cast<int>(std::lround(part * 100));
}

/// Whole minutes on the clock, outwards.
Interval inMinutes(Instant early, Instant late) {
    constexpr std::int64_t minute = 60;
    const auto down = [](std::int64_t at) { return at - ((at % minute) + minute) % minute; };
    return {Instant::atSeconds(down(early.inSeconds())),
            Instant::atSeconds(down(late.inSeconds() + minute - 1))};
}

/// "on time", "4 min early", "12 min late", to the nearest minute.
QString latenessText(Duration late, const QLocale& locale) {
    constexpr double minute = 60;
    const auto minutes =
        Duration::minutes(std::lround(static_cast<double>(late.inSeconds()) / minute));
    if (minutes == Duration()) {
        return Text::tr("just on time");
    }
    return minutes < Duration() ? Text::tr("%1 early").arg(durationText(-minutes, locale))
                                : Text::tr("%1 late").arg(durationText(minutes, locale));
}

}  // namespace

Duration wholeMinutes(Duration length) {
    return Duration::minutes((length.inSeconds() + 59) / 60);
}

QString spreadText(const Rehearsal& rehearsal, const QLocale& locale) {
    constexpr double early = 0.1;
    constexpr double late = 0.9;
    const QString first = latenessText(rehearsal.latenessIn(early), locale);
    const QString last = latenessText(rehearsal.latenessIn(late), locale);
    return first == last ? Text::tr("In 80 of 100 plating is done %1.").arg(first)
                         : Text::tr("In 80 of 100 plating is done from %1 to %2.").arg(first, last);
}

QString chanceText(const Rehearsal& rehearsal) {
    return Text::tr("Plating is on time in %1 of 100 rehearsals.")
        .arg(percentOf(rehearsal.chanceOnTime()));
}

QString earlierText(const Rehearsal& rehearsal, const QLocale& locale) {
    const auto earlier = [&](double chance) { return wholeMinutes(rehearsal.earlierFor(chance)); };
    constexpr double eighty = 0.8;
    constexpr double ninety = 0.9;
    constexpr double ninetyFive = 0.95;
    if (earlier(ninetyFive) == Duration()) {
        return Text::tr("As planned it is on time in 95 of 100 and more.");
    }
    return Text::tr("Begin %1 earlier to be on time in 80 of 100, %2 for 90, %3 for 95.")
        .arg(durationText(earlier(eighty), locale), durationText(earlier(ninety), locale),
             durationText(earlier(ninetyFive), locale));
}

std::vector<DecidingRow> decidingRows(const Rehearsal& rehearsal, const Network& network,
                                      const UseIndex& index, const TextContext& context) {
    const Names names(context);
    const Clock clock(context);
    std::vector<DecidingRow> rows;
    for (std::size_t i = 0; i < rehearsal.bands.size(); ++i) {
        const Band& band = rehearsal.bands[i];
        if (const int percent = percentOf(band.decides); percent > 0) {
            rows.push_back({sentenceCase(names.plainStep(index.keyOf(network.activities[i].node))),
                            percent, clock.span(inMinutes(band.endEarly, band.endLate))});
        }
    }
    std::ranges::stable_sort(rows, std::greater(), &DecidingRow::percent);
    return rows;
}

}  // namespace rangeline
