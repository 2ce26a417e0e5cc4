#include "library/samples_book.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>

#include "book/library.h"
#include "exchange/lesson_file.h"
#include "library/copied_lessons.h"
#include "library/open_book.h"

// The resources lie in a static library, so that they must be asked for; from outside of any
// namespace.
static void initSamples() {
    Q_INIT_RESOURCE(samples);
}

namespace rangeline {
namespace {

/// The item of that kind and name that holds just this value.
template <class Value, class Read>
std::optional<ItemId> find(Book& book, const std::vector<Item>& items, ItemKind kind,
                           const std::string& name, const Value& value, Read read) {
    for (const Item& item : items) {
        if (item.kind == kind && item.state == ItemState::InUse && item.name == name) {
            const auto there = (book.*read)(item.id);
            if (there.ok() && there.value() == value) {
                return item.id;
            }
        }
    }
    return std::nullopt;
}

template <class Value, class Read, class Add>
Result<ItemId, BookFault> findOrAdd(Book& book, ItemKind kind, const Value& value, Read read,
                                    Add add) {
    const auto items = book.items();
    if (!items.ok()) {
        return items.error();
    }
    const auto found = find(book, items.value(), kind, value.name, value, read);
    return found ? Result<ItemId, BookFault>(*found) : add(book, value);
}

/// "Supper", "Supper (2)", "Supper (3)", ...
std::string nameOfItsOwn(const std::vector<Item>& items, const std::string& name) {
    const auto taken = [&items](const std::string& wanted) {
        return std::ranges::any_of(items, [&](const Item& item) {
            return item.kind == ItemKind::Lesson && item.state != ItemState::Deleted &&
                   item.name == wanted;
        });
    };
    std::string free = name;
    for (int number = 2; taken(free); ++number) {
        free = name + " (" + std::to_string(number) + ')';
    }
    return free;
}

}  // namespace

QString samplesPath() {
    // Relative values are to be ignored (XDG Base Directory Specification 0.8).
    QString data = qEnvironmentVariable("XDG_DATA_HOME");
    if (!QDir::isAbsolutePath(data)) {
        data = QDir::homePath() + QStringLiteral("/.local/share");
    }
    return data + QStringLiteral("/rangeline/samples.rangeline");
}

Result<ItemId, BookFault> addWithParts(Book& book, const Lesson& lesson) {
    const auto kitchen =
        findOrAdd(book, ItemKind::Kitchen, lesson.kitchen, &Book::kitchen, &addKitchen);
    if (!kitchen.ok()) {
        return kitchen.error();
    }
    Origins origins{kitchen.value(), {}};
    for (const Serving& serving : lesson.servings) {
        const auto dish = findOrAdd(book, ItemKind::Dish, serving.dish, &Book::dish, &addDish);
        if (dish.ok()) {
            origins.dishes.emplace_back(dish.value());
        } else if (dish.error().code == BookFaultCode::Refused) {
            origins.dishes.emplace_back();  // linked to another dish of its lesson
        } else {
            return dish.error();
        }
    }
    return addLesson(book, lesson, origins);
}

Result<CopiedLesson, BookFault> findOrAddLesson(Book& book, Lesson lesson) {
    const auto items = book.items();
    if (!items.ok()) {
        return items.error();
    }
    if (const auto before = copiedBefore(book, lesson)) {
        return CopiedLesson{*before, true};
    }
    const Lesson contents = lesson;
    auto found =
        find(book, items.value(), ItemKind::Lesson, lesson.head.name, lesson, &Book::lesson);
    if (!found) {
        lesson.head.name = nameOfItsOwn(items.value(), lesson.head.name);
        const auto added = addWithParts(book, lesson);
        if (!added.ok()) {
            return added.error();
        }
        found = added.value();
    }
    // Where that cannot be written, the file is copied once more another time.
    rememberCopied(book, contents, *found);
    return CopiedLesson{*found};
}

std::optional<BookFault> makeSamplesBook(const QString& path) {
    initSamples();
    QDir().mkpath(QFileInfo(path).absolutePath());
    auto book = Book::create(nameOnDisk(path));
    if (!book.ok()) {
        return book.error();
    }
    if (auto fault = book.value()->verify()) {
        return fault;
    }
    for (const QString& name : QDir(QStringLiteral(":/samples")).entryList()) {
        QFile file(QStringLiteral(":/samples/") + name);
        file.open(QIODevice::ReadOnly);
        const auto lesson = readLesson(file.readAll().toStdString());
        if (!lesson.ok()) {
            return BookFault{BookFaultCode::Refused, {}, lesson.error()};
        }
        const auto added = addWithParts(*book.value(), lesson.value());
        if (!added.ok()) {
            return added.error();
        }
    }
    return std::nullopt;
}

}  // namespace rangeline
