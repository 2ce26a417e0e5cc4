#pragma once
// What decides plating, and how many minutes everything else has to spare.

#include <QString>
#include <QStringList>

#include "analysis/critical_path.h"
#include "text/names.h"

namespace rangeline {

/// "no minutes to spare", "12 min to spare", "starts 5 min too late"
QString spareText(Duration spare, const QLocale& locale);

/// "held by the big sauté pan, which “Char the leeks” needs at 5:40 PM"; the most direct reason
/// first, at most two.
QString holdText(const Spare& spare, const PlatingAnalysis& analysis, const TextContext& context);

/// "4:52 PM  “Roast the thighs”: no minutes to spare, held by ..."
QString platingLine(const Spare& spare, const PlatingAnalysis& analysis,
                    const TextContext& context);

/// One line for each placement that decides plating, first to last.
QStringList platingLines(const PlatingAnalysis& analysis, const TextContext& context);
/// One line for each placement, in order of start.
QStringList spareLines(const PlatingAnalysis& analysis, const TextContext& context);

}  // namespace rangeline
