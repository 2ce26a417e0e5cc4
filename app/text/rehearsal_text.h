#pragma once
// What a rehearsal comes to, in words.

#include <QString>
#include <QStringList>
#include <vector>

#include "rehearse/simulate.h"
#include "text/names.h"

namespace rangeline {

/// "Plating is on time in 63 of 100 rehearsals."
QString chanceText(const Rehearsal& rehearsal);
/// Rounded up.
Duration wholeMinutes(Duration length);
/// "In 80 of 100 plating is done between 4 min early and 12 min late."
QString spreadText(const Rehearsal& rehearsal, const QLocale& locale);
/// "Begin 6 min earlier for 80 in 100, 9 min for 90, 12 min for 95."
QString earlierText(const Rehearsal& rehearsal, const QLocale& locale);

/// A step that decides when plating is done in some of the rehearsals.
struct DecidingRow {
    QString step;
    int percent = 0;
    QString ends;  ///< "from 6:10 to 6:24 PM", in 80 of 100 rehearsals
};
/// The most frequent first; those below one in a hundred are left out.
std::vector<DecidingRow> decidingRows(const Rehearsal& rehearsal, const Network& network,
                                      const UseIndex& index, const TextContext& context);

}  // namespace rangeline
