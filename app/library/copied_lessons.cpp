#include "library/copied_lessons.h"

#include <QCryptographicHash>
#include <QStringList>
#include <algorithm>

#include "book/library.h"
#include "exchange/lesson_file.h"

namespace rangeline {
namespace {

constexpr const char* settingName = "copied-lessons";
constexpr qsizetype mostRemembered = 150;

/// "hash number", the latest first.
QStringList remembered(Book& book) {
    const auto text = setting(book, settingName);
    return text.ok() ? QString::fromStdString(text.value()).split(u'\n', Qt::SkipEmptyParts)
                     : QStringList();
}

QString hashOf(const Lesson& contents) {
    const QByteArray bytes = QByteArray::fromStdString(writeLesson(contents));
    constexpr qsizetype enough = 32;  // hex digits; a setting holds no more than 10,000 characters
    const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
    return QString::fromLatin1(hash.toHex().first(enough));
}

bool isInUse(Book& book, ItemId id) {
    const auto items = book.items();
    return items.ok() && std::ranges::any_of(items.value(), [id](const Item& item) {
               return item.id == id && item.kind == ItemKind::Lesson &&
                      item.state != ItemState::Deleted;
           });
}

}  // namespace

std::optional<ItemId> copiedBefore(Book& book, const Lesson& contents) {
    const QString hash = hashOf(contents) + u' ';
    for (const QString& line : remembered(book)) {
        const ItemId id{line.mid(hash.size()).toLongLong()};
        if (line.startsWith(hash) && isInUse(book, id)) {
            return id;
        }
    }
    return std::nullopt;
}

std::optional<BookFault> rememberCopied(Book& book, const Lesson& contents, ItemId lesson) {
    const QString hash = hashOf(contents) + u' ';
    QStringList lines = remembered(book);
    lines.removeIf([&](const QString& line) { return line.startsWith(hash); });
    lines.prepend(hash + QString::number(lesson.number));
    lines = lines.first(std::min(lines.size(), mostRemembered));
    return setSetting(book, settingName, lines.join(u'\n').toStdString());
}

}  // namespace rangeline
