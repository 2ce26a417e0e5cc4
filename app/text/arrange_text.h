#pragma once

#include <QString>

#include "arrange/arrange.h"
#include "text/quantities.h"

namespace rangeline {

/// "Proved: no plan starts later than 4:52 PM.", "Not possible: no plan keeps all the rules. ..."
QString arrangeText(const ArrangeResult& result, const Head& head, const QLocale& locale);
/// While arranging: "The best plan so far starts at 4:40 PM; none can start later than 4:52 PM."
QString progressText(const ArrangeProgress& progress, const Head& head, const QLocale& locale);
/// A figure of that aim, short: "4:40 PM", "1 h 20 min".
QString aimValueText(Aim aim, std::int64_t value, const Head& head, const QLocale& locale);

}  // namespace rangeline
