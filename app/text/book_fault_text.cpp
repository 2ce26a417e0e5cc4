#include "text/book_fault_text.h"

#include <QCoreApplication>

#include "model/characters.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

/// Untranslated, with %1 and %2 for the figures. Every code has one: a forgotten one does not
/// compile.
const char* patternOf(BookFaultCode code) {
    switch (code) {
        case BookFaultCode::CannotOpen:
            return QT_TRANSLATE_NOOP("BookFault", "the book cannot be opened: %1");
        case BookFaultCode::EmptyFile:
            return QT_TRANSLATE_NOOP("BookFault", "the file is empty");
        case BookFaultCode::NotABook:
            return QT_TRANSLATE_NOOP("BookFault", "this is not a book of Rangeline");
        case BookFaultCode::TooLarge:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the file has %1 bytes; no more than %2 are read");
        case BookFaultCode::AlreadyThere:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "a file of that name is there already; choose another name");
        case BookFaultCode::ForeignSchema:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book holds what no book should, or lacks what every book "
                                     "has (%1); save what can be read into a new book");
        case BookFaultCode::ForeignMode:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "another program has changed how the book is stored; save "
                                     "what can be read into a new book");
        case BookFaultCode::TooMany:
            return QT_TRANSLATE_NOOP("BookFault", "the book holds more %1 than any book may (%2)");
        case BookFaultCode::Damaged:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book is damaged (%1); save what can be read into a new "
                                     "book");
        case BookFaultCode::SealBroken:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book is damaged: %1 is not as it was written; save what "
                                     "can be read into a new book");
        case BookFaultCode::BadValue:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book is damaged: %1 cannot be used; save what can be "
                                     "read into a new book");
        case BookFaultCode::NewerBook:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book was written by a newer Rangeline (version %1; this "
                                     "one knows %2), so it can only be read");
        case BookFaultCode::OpenElsewhere:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book is open in another window, so it can only be read "
                                     "here");
        case BookFaultCode::ReadOnlyFile:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book, or the folder it is in, cannot be written, so it "
                                     "can only be read; save a copy elsewhere to change it");
        case BookFaultCode::NeedsRecovery:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "a change was cut off, and it cannot be taken back where the "
                                     "book is; move the book and the file of the same name that "
                                     "ends in -journal together to a place that can be written");
        case BookFaultCode::NotVerified:
            return QT_TRANSLATE_NOOP("BookFault", "the book has been opened only to be read");
        case BookFaultCode::ChangedElsewhere:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "another program has changed the book; open it again to go "
                                     "on, nothing has been overwritten");
        case BookFaultCode::Gone:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "the book has been moved or deleted; save a copy, or open it "
                                     "where it is now");
        case BookFaultCode::Replaced:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "another file has taken the place of the book; save a copy, "
                                     "or open the new one");
        case BookFaultCode::DiskFull:
            return QT_TRANSLATE_NOOP(
                "BookFault",
                "the disk is full: %1 was not written and is as it was before; "
                "make room, or save a copy elsewhere");
        case BookFaultCode::CannotWrite:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "%1 was not written and is as it was before: %2; try again, "
                                     "or save a copy elsewhere");
        case BookFaultCode::Busy:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "another program holds the book; try again in a moment");
        case BookFaultCode::NoSuchItem:
            return QT_TRANSLATE_NOOP("BookFault", "there is no “%1” in the book");
        case BookFaultCode::SeveralItems:
            return QT_TRANSLATE_NOOP("BookFault",
                                     "there are several “%1” in the book; use a number: %2");
        case BookFaultCode::NothingToDo:
            return QT_TRANSLATE_NOOP("BookFault", "there is nothing to undo or redo");
        case BookFaultCode::Refused:
            return QT_TRANSLATE_NOOP("BookFault", "that would make it unusable");
    }
    return "";
}

QString figure(const BookFault& fault, qsizetype number) {
    const auto index = static_cast<std::size_t>(number);
    return index < fault.figures.size() ? QString::fromStdString(excerpt(fault.figures[index], 200))
                                        : QString();
}

}  // namespace

QString sentence(const BookFault& fault) {
    const QString text = QCoreApplication::translate("BookFault", patternOf(fault.code));
    // In one pass: a figure may itself contain "%1".
    QString filled;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const bool mark = text[i] == '%' && i + 1 < text.size() && text[i + 1].isDigit();
        filled += mark ? figure(fault, text[i + 1].digitValue() - 1) : QString(text[i]);
        i += mark ? 1 : 0;
    }
    return fault.value ? filled + QStringLiteral(" (") + sentence(*fault.value) + ')' : filled;
}

}  // namespace rangeline
