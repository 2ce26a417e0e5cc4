#include "cli/book_commands.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <algorithm>
#include <array>

#include "book/library.h"
#include "cli/opened_lesson.h"
#include "cli/output.h"
#include "exchange/lesson_file.h"
#include "text/book_fault_text.h"
#include "text/fault_text.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(BookCommands)
};

struct KindWords {
    ItemKind kind;
    const char* key;   ///< for programs
    const char* word;  ///< for people
};
constexpr std::array kinds = {
    KindWords{ItemKind::Kitchen, "kitchen", QT_TRANSLATE_NOOP("BookCommands", "kitchen")},
    KindWords{ItemKind::Dish, "dish", QT_TRANSLATE_NOOP("BookCommands", "dish")},
    KindWords{ItemKind::Lesson, "lesson", QT_TRANSLATE_NOOP("BookCommands", "lesson")},
};

const KindWords& wordsOf(ItemKind kind) {
    return *std::ranges::find(kinds, kind, &KindWords::kind);
}

QJsonObject toMachine(const Item& item) {
    return {{"id", static_cast<qint64>(item.id.number)},
            {"kind", wordsOf(item.kind).key},
            {"name", QString::fromStdString(item.name)},
            {"archived", item.state == ItemState::Archived}};
}

QString lineOf(const Item& item) {
    const QString line = QStringLiteral("#%1 %2 %3")
                             .arg(item.id.number, -4)
                             .arg(Text::tr(wordsOf(item.kind).word), -8)
                             .arg(QString::fromStdString(item.name));
    return item.state == ItemState::Archived ? Text::tr("%1 (archived)").arg(line) : line;
}

Exit refuse(const QString& file, const QString& what) {
    complain(QStringLiteral("%1: %2").arg(file, what));
    return Exit::Unusable;
}

std::string pathOf(const QString& file) {
    return QFile::encodeName(file).toStdString();
}

Exit copyOut(const Invocation& invocation) {
    const QString& target = invocation.more[1];
    if (!isBook(invocation.file)) {
        return refuse(invocation.file, sentence(BookFault{BookFaultCode::NotABook, {}, {}}));
    }
    const auto lesson = readLesson(invocation);
    if (!lesson) {
        return Exit::Unusable;
    }
    if (isBook(target)) {
        return refuse(target,
                      Text::tr("This is a book; a lesson file would replace it. Choose another "
                               "name."));
    }
    const auto fault = saveLesson(pathOf(target), *lesson);
    return fault ? refuse(target, sentence(*fault)) : Exit::Fine;
}

Exit copyIn(const Invocation& invocation) {
    const QString& file = invocation.more[0];
    Invocation source = invocation;
    source.more.clear();
    const auto lesson = readLesson(source);
    if (!lesson) {
        return Exit::Unusable;
    }
    auto book = QFileInfo::exists(file) ? Book::open(pathOf(file)) : Book::create(pathOf(file));
    if (!book.ok()) {
        return refuse(file, sentence(book.error()));
    }
    if (const auto fault = book.value()->verify()) {
        return refuse(file, sentence(*fault));
    }
    const auto added = addLesson(*book.value(), *lesson);
    return added.ok() ? Exit::Fine : refuse(file, sentence(added.error()));
}

}  // namespace

Exit runList(const Invocation& invocation) {
    const auto book = openBook(invocation.file, BookAccess::ReadOnly);
    if (!book) {
        return Exit::Unusable;
    }
    const auto items = book->items();
    if (!items.ok()) {
        return refuse(invocation.file, sentence(items.error()));
    }
    QJsonArray array;
    QString text;
    for (const Item& item : items.value()) {
        if (item.state != ItemState::Deleted) {
            array.append(toMachine(item));
            text += lineOf(item) + '\n';
        }
    }
    if (invocation.has("--json")) {
        say(QJsonObject{{"items", array}});
    } else {
        say(text.isEmpty() ? Text::tr("The book is empty.\n") : text);
    }
    return Exit::Fine;
}

Exit runCopy(const Invocation& invocation) {
    if (invocation.more.size() == 1 && isBook(invocation.file)) {
        return refuse(invocation.file,
                      Text::tr("This is a book: name the lesson and then the file to copy it to."));
    }
    return invocation.more.size() == 2 ? copyOut(invocation) : copyIn(invocation);
}

}  // namespace rangeline
