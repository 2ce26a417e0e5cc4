#include "text/arrange_text.h"

#include <QCoreApplication>

namespace rangeline {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Arrange)
};

}  // namespace

namespace {

/// What the aim comes to: "food waits 42 min in all".
QString figureText(Aim aim, std::int64_t value, const Clock& clock, const QLocale& locale) {
    switch (aim) {
        case Aim::StartLate:
            return Text::tr("it starts at %1").arg(clock.at(Instant::atSeconds(-value)));
        case Aim::Fresh:
            return Text::tr("food waits and ovens are on for %1 in all")
                .arg(durationText(Duration::seconds(value), locale));
        case Aim::Calm:
            return Text::tr("the work at once comes to %1").arg(value);
        case Aim::FewPans:
            return Text::tr("vessels used: %1").arg(value);
    }
    return {};
}

/// How far it may be from the best there can be.
QString gapText(const ArrangeProgress& progress, const QLocale& locale) {
    const std::int64_t gap = progress.aimBest.value_or(0) - progress.aimBound;
    if (gap <= 0) {
        return Text::tr("the best there can be");
    }
    switch (progress.aim) {
        case Aim::StartLate:
        case Aim::Fresh:
            return Text::tr("at most %1 from the best there can be")
                .arg(durationText(Duration::seconds(gap), locale));
        case Aim::Calm:
        case Aim::FewPans:
            return Text::tr("at most %1 from the best there can be").arg(gap);
    }
    return {};
}

}  // namespace

QString arrangeText(const ArrangeResult& result, const Head& head, const QLocale& locale) {
    const Clock clock(head, locale);
    const ArrangeProgress& last = result.last;
    const QString figure = figureText(last.aim, last.aimBest.value_or(0), clock, locale);
    switch (result.status) {
        case ArrangeStatus::Proved:
            if (last.aim == Aim::StartLate) {
                return Text::tr("Proved: no plan starts later than %1.")
                    .arg(clock.at(last.best.value_or(last.bound)));
            }
            return Text::tr("Proved best: %1.").arg(figure);
        case ArrangeStatus::Found:
            return last.aimBest
                       ? Text::tr("Found a plan: %1, %2.").arg(figure, gapText(last, locale))
                       : Text::tr("Found a plan that starts at %1; there may be a better one.")
                             .arg(clock.at(last.best.value_or(last.bound)));
        case ArrangeStatus::NotPossible:
            return Text::tr(
                "Not possible: no plan keeps all the rules. The placements stay as they "
                "were.");
        case ArrangeStatus::Stopped:
            break;
    }
    return Text::tr("Stopped before a plan was found. The placements stay as they were.");
}

QString progressText(const ArrangeProgress& progress, const Head& head, const QLocale& locale) {
    const Clock clock(head, locale);
    if (!progress.best) {
        return Text::tr("No plan yet; none can start later than %1.").arg(clock.at(progress.bound));
    }
    if (!progress.aimBest) {
        return Text::tr("A plan that starts at %1 is found; looking for a better one.")
            .arg(clock.at(*progress.best));
    }
    return Text::tr("The best plan so far: %1, %2.")
        .arg(figureText(progress.aim, *progress.aimBest, clock, locale), gapText(progress, locale));
}

QString aimValueText(Aim aim, std::int64_t value, const Head& head, const QLocale& locale) {
    switch (aim) {
        case Aim::StartLate:
            return Clock(head, locale).at(Instant::atSeconds(-value));
        case Aim::Fresh:
            return durationText(Duration::seconds(value), locale);
        case Aim::Calm:
        case Aim::FewPans:
            return locale.toString(value);
    }
    return {};
}

}  // namespace rangeline
