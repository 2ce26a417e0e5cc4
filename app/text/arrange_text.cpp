#include "text/arrange_text.h"

#include <QCoreApplication>

namespace rangeline {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Arrange", text);
}

}  // namespace

QString arrangeText(const ArrangeResult& result, const Head& head, const QLocale& locale) {
    const Clock clock(head, locale);
    const QString best = clock.at(result.last.best.value_or(result.last.bound));
    switch (result.status) {
        case ArrangeStatus::Proved:
            return tr("Proved: no plan starts later than %1.").arg(best);
        case ArrangeStatus::Found:
            return tr("Found a plan that starts at %1. None can start later than %2; there may be "
                      "a better one.")
                .arg(best, clock.at(result.last.bound));
        case ArrangeStatus::NotPossible:
            return tr(
                "Not possible: no plan keeps all the rules. The placements stay as they "
                "were.");
        case ArrangeStatus::Stopped:
            break;
    }
    return tr("Stopped before a plan was found. The placements stay as they were.");
}

QString progressText(const ArrangeProgress& progress, const Head& head, const QLocale& locale) {
    const Clock clock(head, locale);
    return progress.best
               ? tr("The best plan so far starts at %1; none can start later than %2.")
                     .arg(clock.at(*progress.best), clock.at(progress.bound))
               : tr("No plan yet; none can start later than %1.").arg(clock.at(progress.bound));
}

}  // namespace rangeline
