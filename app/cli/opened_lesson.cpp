#include "cli/opened_lesson.h"

#include <QCoreApplication>
#include <QFile>
#include <cstdio>

#include "book/library.h"
#include "check/verdict.h"
#include "cli/output.h"
#include "exchange/lesson_file.h"
#include "text/book_fault_text.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

Result<Lesson, Fault> readStandardInput() {
    QFile input;
    if (!input.open(stdin, QIODevice::ReadOnly)) {
        return Fault{FaultCode::CannotOpen, {}, {input.errorString().toStdString()}};
    }
    // One byte more than is allowed, so that too much is noticed without being read.
    return readLesson(input.read(static_cast<qint64>(largestLessonFile) + 1).toStdString());
}

/// The lesson of that name; of a book with one lesson no name is needed.
Result<Lesson, BookFault> readFromBook(Book& book, const QString& name) {
    if (!name.isEmpty()) {
        const auto item = findItem(book, ItemKind::Lesson, name.toStdString());
        return item.ok() ? book.lesson(item.value().id) : Result<Lesson, BookFault>(item.error());
    }
    const auto items = book.items();
    if (!items.ok()) {
        return items.error();
    }
    std::vector<ItemId> lessons;
    for (const Item& item : items.value()) {
        if (item.kind == ItemKind::Lesson && item.state != ItemState::Deleted) {
            lessons.push_back(item.id);
        }
    }
    return lessons.size() == 1 ? book.lesson(lessons.front())
                               : BookFault{BookFaultCode::NoSuchItem, {""}, {}};
}

std::optional<Lesson> readFromBook(const Invocation& invocation) {
    const auto book = openBook(invocation.file, BookAccess::ReadOnly);
    if (!book) {
        return std::nullopt;
    }
    const QString name = invocation.more.value(0);
    auto read = readFromBook(*book, name);
    if (read.ok()) {
        return std::move(read.value());
    }
    const bool unnamed = name.isEmpty() && read.error().code == BookFaultCode::NoSuchItem;
    const QString what =
        unnamed ? QCoreApplication::translate(
                      "Command", "Which lesson? Give its name; rangeline list shows them.")
                : sentence(read.error());
    complain(QStringLiteral("%1: %2").arg(invocation.file, what));
    return std::nullopt;
}

}  // namespace

bool isBook(const QString& file) {
    return file != QStringLiteral("-") && Book::isBook(QFile::encodeName(file).toStdString());
}

std::unique_ptr<Book> openBook(const QString& file, BookAccess access) {
    auto book = Book::open(QFile::encodeName(file).toStdString(), access);
    if (!book.ok()) {
        complain(QStringLiteral("%1: %2").arg(file, sentence(book.error())));
        return nullptr;
    }
    return std::move(book.value());
}

OpenedLesson::OpenedLesson(Lesson lesson, const QLocale& locale)
    : lesson_(std::move(lesson)),
      expanded_(expand(lesson_)),
      index_(lesson_, expanded_),
      text_{lesson_, expanded_, locale},
      findings_(Findings(index_).all()),
      plating_(analysePlating(index_)) {}

bool OpenedLesson::works() const {
    return keepsRules(findings_, lesson_.head.lateAllowed);
}

namespace {

std::optional<Lesson> readAsWritten(const Invocation& invocation) {
    if (isBook(invocation.file)) {
        return readFromBook(invocation);
    }
    if (!invocation.more.isEmpty()) {
        complain(QCoreApplication::translate(
                     "Command", "%1 is no book: what is “%2”? Only one lesson at a time.")
                     .arg(invocation.file, invocation.more.first()));
        return std::nullopt;
    }
    auto read = invocation.file == QStringLiteral("-")
                    ? readStandardInput()
                    : loadLesson(QFile::encodeName(invocation.file).toStdString());
    if (!read.ok()) {
        complain(QStringLiteral("%1: %2").arg(invocation.file, sentence(read.error())));
        return std::nullopt;
    }
    return std::move(read.value());
}

}  // namespace

std::optional<Lesson> readLesson(const Invocation& invocation) {
    auto lesson = readAsWritten(invocation);
    return lesson && readUnits(invocation, lesson->head.units) ? std::move(lesson) : std::nullopt;
}

std::unique_ptr<OpenedLesson> openLesson(const Invocation& invocation) {
    auto lesson = readLesson(invocation);
    return lesson ? std::make_unique<OpenedLesson>(std::move(*lesson), invocation.locale) : nullptr;
}

}  // namespace rangeline
