#pragma once
// What became of a plan, in words.

#include <QString>
#include <vector>

#include "live/review.h"
#include "text/names.h"

namespace rangeline {

/// "Plating was done 6 min late."
QString platedText(const live::Review& review, const QLocale& locale);
/// "What decided plating in fact: Simmer the glaze, 6 min longer than planned; ..."
QString decidersText(const live::Review& review, const TextContext& context);

struct ReviewRow {
    QString step;
    QString planned;  ///< "from 6:10 to 6:24 PM"
    QString real;
    QString began;  ///< "4 min later", "as planned"
    QString took;   ///< "2 min longer"
};
/// By the real begins.
std::vector<ReviewRow> reviewRows(const live::Review& review, const TextContext& context);

}  // namespace rangeline
