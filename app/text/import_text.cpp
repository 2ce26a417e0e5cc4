#include "text/import_text.h"

#include <QCoreApplication>

#include "text/quantities.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Import)
};

/// Untranslated, with %1 for the text concerned and %2 for the usual oven. Every code has one: a
/// forgotten one does not compile.
const char* patternOf(ImportRemarkCode code) {
    switch (code) {
        case ImportRemarkCode::LineNotUnderstood:
            return QT_TRANSLATE_NOOP("Import", "Not all of this ingredient was understood: “%1”.");
        case ImportRemarkCode::NoTime:
            return QT_TRANSLATE_NOOP("Import",
                                     "“%1” says no time; 5 minutes stand there: correct them.");
        case ImportRemarkCode::SeveralTimes:
            return QT_TRANSLATE_NOOP("Import", "“%1” names several times; they are added up.");
        case ImportRemarkCode::OvenAssumed:
            return QT_TRANSLATE_NOOP("Import", "“%1” says no oven temperature; %2 stands there.");
        case ImportRemarkCode::OvenTurnedOn:
            return QT_TRANSLATE_NOOP("Import",
                                     "“%1” is no step: the oven is turned on when it is needed.");
        case ImportRemarkCode::YieldNotUnderstood:
            return QT_TRANSLATE_NOOP(
                "Import", "How many it serves was not understood (“%1”); 4 stands there.");
        case ImportRemarkCode::TimeNotUnderstood:
            return QT_TRANSLATE_NOOP("Import", "“%1” is no length of time that can be used.");
        case ImportRemarkCode::NothingUnderstood:
            return QT_TRANSLATE_NOOP(
                "Import", "A part of the instructions was left out: no text in it (%1).");
        case ImportRemarkCode::LeftOut:
            return QT_TRANSLATE_NOOP(
                "Import", "The recipe is too long: “%1” and what comes after it was left out.");
    }
    return "";
}

}  // namespace

QString sentence(const ImportRemark& remark, Units units, const QLocale& locale) {
    const QString pattern = Text::tr(patternOf(remark.code));
    const QString of = QString::fromStdString(remark.of);
    return pattern.contains(QStringLiteral("%2"))
               ? pattern.arg(of, temperatureText(ovenWhereUnsaid, units, locale))
               : pattern.arg(of);
}

}  // namespace rangeline
