#include "text/fault_text.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <string_view>

namespace rangeline {

namespace {

/// Untranslated, with %1 to %3 for the figures. Every code has one: a forgotten one does not
/// compile.
const char* patternOf(FaultCode code) {
    switch (code) {
        case FaultCode::CannotOpen:
            return QT_TRANSLATE_NOOP("Fault", "the file cannot be opened: %1");
        case FaultCode::CannotWrite:
            return QT_TRANSLATE_NOOP("Fault", "the file cannot be written: %1");
        case FaultCode::EmptyFile:
            return QT_TRANSLATE_NOOP("Fault", "the file is empty");
        case FaultCode::TooLarge:
            return QT_TRANSLATE_NOOP("Fault", "the file has %1 bytes; no more than %2 are read");
        case FaultCode::NotJson:
            return QT_TRANSLATE_NOOP("Fault", "line %1, column %2 is not JSON: %3");
        case FaultCode::TooDeep:
            return QT_TRANSLATE_NOOP("Fault", "nested deeper than %1 levels");
        case FaultCode::NotALesson:
            return QT_TRANSLATE_NOOP("Fault", "this is not a lesson file");
        case FaultCode::WrongVersion:
            return QT_TRANSLATE_NOOP("Fault",
                                     "written in version %1; this program reads version %2");
        case FaultCode::UnknownKey:
            return QT_TRANSLATE_NOOP("Fault", "“%1” is not known here");
        case FaultCode::DuplicateKey:
            return QT_TRANSLATE_NOOP("Fault", "“%1” is there twice; keep one");
        case FaultCode::MissingKey:
            return QT_TRANSLATE_NOOP("Fault", "“%1” is missing");
        case FaultCode::WrongType:
            return QT_TRANSLATE_NOOP("Fault", "%1 is wanted here");
        case FaultCode::BadText:
            return QT_TRANSLATE_NOOP("Fault", "this text cannot be used: %1");
        case FaultCode::BadNumber:
            return QT_TRANSLATE_NOOP("Fault", "“%1” is not %2");
        case FaultCode::BadUnit:
            return QT_TRANSLATE_NOOP("Fault", "“%1” has no unit known here; use one of: %2");
        case FaultCode::BadChoice:
            return QT_TRANSLATE_NOOP("Fault", "“%1” is not a choice here; use one of: %2");
        case FaultCode::TooMany:
            return QT_TRANSLATE_NOOP("Fault", "%1 are too many; no more than %2 are allowed");
        case FaultCode::DuplicateId:
            return QT_TRANSLATE_NOOP("Fault",
                                     "the id “%1” is used twice; give one of them another");
        case FaultCode::UnknownReference:
            return QT_TRANSLATE_NOOP("Fault", "“%1” names nothing; it should be the id of a %2");
        case FaultCode::OutOfRange:
            return QT_TRANSLATE_NOOP("Fault", "%1 is out of range; use %2 to %3");
        case FaultCode::AboveOven:
            return QT_TRANSLATE_NOOP("Fault", "%1 is above this oven’s %2");
        case FaultCode::BelowOven:
            return QT_TRANSLATE_NOOP("Fault", "%1 is below this oven’s %2");
        case FaultCode::DurationOrder:
            return QT_TRANSLATE_NOOP("Fault", "shortest %1, likely %2 and longest %3 must rise");
        case FaultCode::SegmentsTooLong:
            return QT_TRANSLATE_NOOP("Fault",
                                     "its parts take %1, more than the shortest time of %2");
        case FaultCode::LinkOrder:
            return QT_TRANSLATE_NOOP("Fault", "the least wait, %1, is more than the most, %2");
        case FaultCode::CycleInSteps:
            return QT_TRANSLATE_NOOP("Fault", "these steps wait for each other in a circle: %1");
        case FaultCode::CarriesOnUnlike:
            return QT_TRANSLATE_NOOP("Fault", "it cannot carry on from “%1”: %2");
        case FaultCode::NeedsVessel:
            return QT_TRANSLATE_NOOP("Fault", "a step on a burner needs a vessel that goes on one");
        case FaultCode::Contradiction:
            return QT_TRANSLATE_NOOP("Fault", "%1 and %2 contradict each other");
    }
    return "";
}

struct Reason {
    std::string_view key;
    const char* text;
};

/// Why a text cannot be used, or a step cannot carry on; keys of the model.
constexpr std::array reasons = {
    Reason{"too-long", QT_TRANSLATE_NOOP("Fault", "too long")},
    Reason{"bad-character", QT_TRANSLATE_NOOP("Fault", "a character that cannot be shown")},
    Reason{"not-a-temperature", QT_TRANSLATE_NOOP("Fault", "not a temperature")},
    Reason{"not-an-amount", QT_TRANSLATE_NOOP("Fault", "not an amount")},
    Reason{"not-a-unit", QT_TRANSLATE_NOOP("Fault", "not a unit")},
    Reason{"not-a-duration", QT_TRANSLATE_NOOP("Fault", "not a duration")},
    Reason{"not-a-length", QT_TRANSLATE_NOOP("Fault", "not a length")},
    Reason{"not-a-volume", QT_TRANSLATE_NOOP("Fault", "not a volume")},
    Reason{"not-a-power", QT_TRANSLATE_NOOP("Fault", "not a power")},
    Reason{"not-a-date-and-time", QT_TRANSLATE_NOOP("Fault", "not a date and time")},
    Reason{"not-a-time-zone", QT_TRANSLATE_NOOP("Fault", "not a time zone")},
    Reason{"not-an-id", QT_TRANSLATE_NOOP("Fault", "not an id")},
    Reason{"not-a-ware", QT_TRANSLATE_NOOP("Fault", "not a ware")},
    Reason{"other-kind", QT_TRANSLATE_NOOP("Fault", "it has no ware of this kind")},
    Reason{"other-count", QT_TRANSLATE_NOOP("Fault", "it has another count of them")},
    Reason{"taken-already", QT_TRANSLATE_NOOP("Fault", "its ware is carried on already")},
};

/// The figure that is a key, told in words.
void tellReason(Fault& fault) {
    const std::size_t number = fault.code == FaultCode::CarriesOnUnlike ? 1 : 0;
    const bool has = fault.code == FaultCode::BadText || number == 1;
    if (!has || number >= fault.figures.size()) {
        return;
    }
    const auto reason = std::ranges::find(reasons, fault.figures[number], &Reason::key);
    if (reason != reasons.end()) {
        fault.figures[number] = QCoreApplication::translate("Fault", reason->text).toStdString();
    }
}

}  // namespace

QString filledIn(const QString& pattern, const std::vector<std::string>& figures) {
    // In one pass: a figure may itself contain "%1".
    QString filled;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const bool mark = pattern[i] == '%' && i + 1 < pattern.size() && pattern[i + 1].isDigit();
        if (mark) {
            const auto number = static_cast<std::size_t>(pattern[++i].digitValue() - 1);
            filled += number < figures.size() ? QString::fromStdString(figures[number]) : QString();
        } else {
            filled += pattern[i];
        }
    }
    return filled;
}

QString sentence(const Fault& fault) {
    Fault told = fault;
    tellReason(told);
    QString filled =
        filledIn(QCoreApplication::translate("Fault", patternOf(told.code)), told.figures);
    if (fault.code == FaultCode::UnknownKey && fault.figures.size() > 1 &&
        !fault.figures[1].empty()) {
        filled += QCoreApplication::translate("Fault", "; did you mean “%1”?")
                      .arg(QString::fromStdString(fault.figures[1]));
    }
    return fault.place.empty() ? filled : QString::fromStdString(fault.place) + ": " + filled;
}

}  // namespace rangeline
