#include "text/import_text.h"

#include <QCoreApplication>

#include "recipe/instruction.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Import)
};

/// Untranslated, with %1 for the text concerned. Every code has one: a forgotten one does not
/// compile.
const char* patternOf(ImportRemarkCode code) {
    switch (code) {
        case ImportRemarkCode::LineNotUnderstood:
            return QT_TRANSLATE_NOOP("Import", "Not all of this ingredient was understood: “%1”.");
        case ImportRemarkCode::NoTime:
            return QT_TRANSLATE_NOOP("Import",
                                     "“%1” says no time; 5 minutes of hands stand there: correct "
                                     "them.");
        case ImportRemarkCode::SeveralTimes:
            return QT_TRANSLATE_NOOP("Import", "“%1” names several times; they are added up.");
        case ImportRemarkCode::OvenAssumed:
            return QT_TRANSLATE_NOOP("Import",
                                     "“%1” says no oven temperature; 350 °F stands there.");
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
    }
    return "";
}

}  // namespace

QString sentence(const ImportRemark& remark) {
    return Text::tr(patternOf(remark.code)).arg(QString::fromStdString(remark.of));
}

}  // namespace rangeline
