#include "text/cut_text.h"

#include <QCoreApplication>

#include "recipe/cuts.h"
#include "text/quantities.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(CutText)
};

/// "¼ in", "⅛ in × ⅛ in × 1 in to 2½ in"
QString dimensionText(const Cut& cut, Units units, const QLocale& locale) {
    const auto side = [&](Length length) { return lengthText(length, units, locale); };
    if (cut.thick == cut.wide && cut.wide == cut.longest) {
        return side(cut.thick);
    }
    const QString length = cut.shortest == cut.longest
                               ? side(cut.longest)
                               : Text::tr("%1 to %2").arg(side(cut.shortest), side(cut.longest));
    return QStringList{side(cut.thick), side(cut.wide), length}.join(QStringLiteral(" × "));
}

}  // namespace

QString cutText(const std::string& cut, Units units, const QLocale& locale) {
    const QString written = QString::fromStdString(cut);
    const Cut* known = findCut(cut);
    return known == nullptr
               ? written
               : Text::tr("%1 (%2)").arg(written, dimensionText(*known, units, locale));
}

QString cutWithoutDimension(const QString& text, const QLocale& locale) {
    for (const Cut& cut : cuts()) {
        for (const Units units : {Units::UsCustomary, Units::Metric}) {
            if (text.compare(cutText(std::string(cut.name), units, locale), Qt::CaseInsensitive) ==
                0) {
                return text.left(static_cast<qsizetype>(cut.name.size()));
            }
        }
    }
    return text;
}

}  // namespace rangeline
