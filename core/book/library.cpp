#include "book/library.h"

#include <algorithm>

#include "book/journal.h"
#include "book/rows.h"
#include "book/seals.h"

namespace rangeline {
namespace {

template <class Value>
using WriteRow = void (*)(Connection&, ItemId, const Value&);

std::optional<BookFault> refused(std::optional<Fault> wrong) {
    return wrong ? std::optional(BookFault{BookFaultCode::Refused, {}, std::move(wrong)})
                 : std::nullopt;
}

template <class Value>
Result<ItemId, BookFault> add(Book& book, ItemKind kind, const Value& value,
                              std::optional<Fault> wrong, WriteRow<Value> writeRow) {
    ItemId id;
    auto fault = refused(std::move(wrong));
    fault = fault ? fault : book.write([&](Connection& connection, Book::Touched& touched) {
        id = insertItem(connection, kind, value.name);
        writeRow(connection, id, value);
        touched.push_back(id);
    });
    if (fault) {
        return *std::move(fault);
    }
    return id;
}

template <class Value>
std::optional<BookFault> replace(Book& book, ItemId id, const Value& value,
                                 std::optional<Fault> wrong, Value (*readRow)(Connection&, ItemId),
                                 WriteRow<Value> writeRow) {
    if (auto fault = refused(std::move(wrong))) {
        return fault;
    }
    return book.write([&](Connection& connection, Book::Touched& touched) {
        readRow(connection, id);  // reports an item that is not there, or is of another kind
        writeRow(connection, id, value);
        touched.push_back(id);
    });
}

void setOrigins(Connection& connection, ItemId id, const Origins& origins) {
    if (origins.kitchen) {
        Statement row(connection, "SELECT kitchen FROM lessons WHERE id = ?");
        row.with(id.number).next();
        Statement(connection, "UPDATE lessons SET origin = ?, seen = ? WHERE id = ?")
            .with(origins.kitchen->number, sealOf(row.text(0)), id.number)
            .run();
    }
    for (std::size_t i = 0; i < origins.dishes.size(); ++i) {
        if (origins.dishes[i]) {
            const auto position = static_cast<std::int64_t>(i);
            Statement row(connection,
                          "SELECT dish FROM servings WHERE lesson = ? AND position = ?");
            row.with(id.number, position).next();
            Statement(connection,
                      "UPDATE servings SET origin = ?, seen = ? WHERE lesson = ? AND position = ?")
                .with(origins.dishes[i]->number, sealOf(row.text(0)), id.number, position)
                .run();
        }
    }
}

ItemId insertLesson(Connection& connection, const Lesson& lesson, Book::Touched& touched) {
    const ItemId id = insertItem(connection, ItemKind::Lesson, lesson.head.name);
    writeLessonRows(connection, id, lesson);
    touched.push_back(id);
    return id;
}

template <class Value>
Result<ItemId, BookFault> addNamed(Book& book, Result<Value, BookFault> value,
                                   const std::string& name,
                                   Result<ItemId, BookFault> (*addValue)(Book&, const Value&)) {
    if (!value.ok()) {
        return value.error();
    }
    value.value().name = name;
    return addValue(book, value.value());
}

Result<ItemId, BookFault> addCopy(Book& book, ItemId id, const std::string& name) {
    auto lesson = book.lesson(id);
    if (!lesson.ok()) {
        return lesson.error();
    }
    lesson.value().head.name = name;
    return addLesson(book, lesson.value());
}

Result<Item, BookFault> itemOf(Book& book, ItemId id) {
    auto items = book.items();
    if (!items.ok()) {
        return items.error();
    }
    const auto found = std::ranges::find(items.value(), id, &Item::id);
    if (found == items.value().end()) {
        return BookFault{BookFaultCode::NoSuchItem, {std::to_string(id.number)}, {}};
    }
    return *found;
}

/// The lessons whose rows change when the items they came from go away.
std::vector<std::int64_t> lessonsOfDeleted(Connection& connection) {
    std::vector<std::int64_t> lessons;
    Statement rows(
        connection,
        "SELECT lesson FROM servings WHERE origin IN (SELECT id FROM items WHERE state = "
        "2) UNION SELECT id FROM lessons WHERE origin IN (SELECT id FROM items WHERE "
        "state = 2)");
    while (rows.next()) {
        lessons.push_back(rows.whole(0));
    }
    return lessons;
}

std::vector<std::int64_t> logPagesOfDeleted(Connection& connection) {
    std::vector<std::int64_t> pages;
    Statement rows(connection,
                   "SELECT DISTINCT id / 256 FROM cooking_log WHERE lesson IN "
                   "(SELECT id FROM items WHERE state = 2)");
    while (rows.next()) {
        pages.push_back(rows.whole(0));
    }
    return pages;
}

}  // namespace

Result<ItemId, BookFault> addKitchen(Book& book, const Kitchen& kitchen) {
    return add(book, ItemKind::Kitchen, kitchen, judgeKitchen(kitchen), &writeKitchenRow);
}

Result<ItemId, BookFault> addDish(Book& book, const Dish& dish) {
    return add(book, ItemKind::Dish, dish, judgeDish(dish), &writeDishRow);
}

std::optional<BookFault> replaceKitchen(Book& book, ItemId id, const Kitchen& kitchen) {
    return replace(book, id, kitchen, judgeKitchen(kitchen), &readKitchenRow, &writeKitchenRow);
}

std::optional<BookFault> replaceDish(Book& book, ItemId id, const Dish& dish) {
    return replace(book, id, dish, judgeDish(dish), &readDishRow, &writeDishRow);
}

Result<ItemId, BookFault> addLesson(Book& book, const Lesson& lesson, const Origins& origins) {
    ItemId id;
    auto fault = refused(judgeLesson(lesson));
    fault = fault ? fault : book.write([&](Connection& connection, Book::Touched& touched) {
        id = insertLesson(connection, lesson, touched);
        setOrigins(connection, id, origins);
    });
    if (fault) {
        return *std::move(fault);
    }
    return id;
}

Result<std::vector<ItemId>, BookFault> addLessons(Book& book, const std::vector<Lesson>& lessons) {
    for (const Lesson& lesson : lessons) {
        if (auto fault = refused(judgeLesson(lesson))) {
            return *std::move(fault);
        }
    }
    std::vector<ItemId> ids;
    auto fault = book.write([&](Connection& connection, Book::Touched& touched) {
        for (const Lesson& lesson : lessons) {
            ids.push_back(insertLesson(connection, lesson, touched));
        }
    });
    if (fault) {
        return *std::move(fault);
    }
    return ids;
}

Result<std::vector<std::optional<ItemId>>, BookFault> dishOrigins(Book& book, ItemId lesson) {
    std::vector<std::optional<ItemId>> origins;
    Statement rows(book.connection(),
                   "SELECT origin FROM servings WHERE lesson = ? ORDER BY position");
    rows.with(lesson.number);
    while (rows.next()) {
        origins.push_back(rows.isNull(0) ? std::nullopt : std::optional(ItemId{rows.whole(0)}));
    }
    if (auto fault = book.connection().takeFault()) {
        return *std::move(fault);
    }
    return origins;
}

Result<Outdated, BookFault> outdatedParts(Book& book, ItemId lesson) {
    Connection& connection = book.connection();
    Outdated outdated;
    Statement kitchen(connection,
                      "SELECT kitchens.id, kitchens.content, seen FROM lessons JOIN kitchens ON "
                      "kitchens.id = origin WHERE lessons.id = ?");
    if (kitchen.with(lesson.number).next() && sealOf(kitchen.text(1)) != kitchen.bytes(2)) {
        outdated.kitchen = ItemId{kitchen.whole(0)};
    }
    Statement dishes(connection,
                     "SELECT position, dishes.id, content, seen FROM servings JOIN dishes ON "
                     "dishes.id = origin WHERE lesson = ? ORDER BY position");
    dishes.with(lesson.number);
    while (dishes.next()) {
        if (sealOf(dishes.text(2)) != dishes.bytes(3)) {
            outdated.servings.push_back(
                {static_cast<std::size_t>(dishes.whole(0)), {dishes.whole(1)}});
        }
    }
    if (auto fault = connection.takeFault()) {
        return *std::move(fault);
    }
    return outdated;
}

std::optional<BookFault> rename(Book& book, ItemId id, const std::string& name) {
    const auto item = itemOf(book, id);
    if (!item.ok()) {
        return item.error();
    }
    if (item.value().kind == ItemKind::Lesson) {
        const auto lesson = book.heldLesson(id);
        if (!lesson.ok()) {
            return lesson.error();
        }
        Head head = lesson.value()->head;
        head.name = name;
        return applyEdit(book, id, SetHead{std::move(head)}, name);
    }
    if (item.value().kind == ItemKind::Kitchen) {
        auto kitchen = book.kitchen(id);
        if (!kitchen.ok()) {
            return kitchen.error();
        }
        kitchen.value().name = name;
        return replaceKitchen(book, id, kitchen.value());
    }
    auto dish = book.dish(id);
    if (!dish.ok()) {
        return dish.error();
    }
    dish.value().name = name;
    return replaceDish(book, id, dish.value());
}

Result<ItemId, BookFault> duplicate(Book& book, ItemId id, const std::string& name) {
    const auto item = itemOf(book, id);
    if (!item.ok()) {
        return item.error();
    }
    if (item.value().kind == ItemKind::Lesson) {
        return addCopy(book, id, name);
    }
    return item.value().kind == ItemKind::Kitchen
               ? addNamed(book, book.kitchen(id), name, &addKitchen)
               : addNamed(book, book.dish(id), name, &addDish);
}

std::optional<BookFault> setState(Book& book, ItemId id, ItemState state) {
    const auto item = itemOf(book, id);
    if (!item.ok()) {
        return item.error();
    }
    return book.write([&](Connection& connection, Book::Touched& touched) {
        Statement(connection, "UPDATE items SET state = ? WHERE id = ?")
            .with(static_cast<int>(state), id.number)
            .run();
        touched.push_back(id);
    });
}

std::optional<BookFault> purgeDeleted(Book& book) {
    // A number that is free again may be another lesson's next.
    book.lastGesture = {};
    book.holdNoLesson();
    return book.write([&](Connection& connection, Book::Touched& touched) {
        const auto lessons = lessonsOfDeleted(connection);
        const auto pages = logPagesOfDeleted(connection);
        connection.run("DELETE FROM items WHERE state = 2");
        for (const std::int64_t lesson : lessons) {
            touched.push_back({lesson});
        }
        for (const std::int64_t page : pages) {
            sealLogPage(connection, page);
        }
    });
}

Result<Item, BookFault> findItem(Book& book, ItemKind kind, const std::string& name) {
    auto items = book.items();
    if (!items.ok()) {
        return items.error();
    }
    std::vector<Item> found;
    std::string numbers;
    for (const Item& item : items.value()) {
        const std::string number = "#" + std::to_string(item.id.number);
        if (item.kind == kind && item.state != ItemState::Deleted &&
            (item.name == name || number == name)) {
            found.push_back(item);
            numbers += (numbers.empty() ? "" : ", ") + number;
        }
    }
    if (found.size() == 1) {
        return found.front();
    }
    return found.empty() ? BookFault{BookFaultCode::NoSuchItem, {name}, {}}
                         : BookFault{BookFaultCode::SeveralItems, {name, numbers}, {}};
}

Result<std::string, BookFault> setting(Book& book, const std::string& name) {
    Statement row(book.connection(), "SELECT value FROM settings WHERE name = ?");
    std::string value = row.with(name).next() ? row.text(0) : std::string();
    if (auto fault = book.connection().takeFault()) {
        return *std::move(fault);
    }
    return value;
}

std::optional<BookFault> setSetting(Book& book, const std::string& name, const std::string& value) {
    return book.write([&](Connection& connection, Book::Touched&) {
        Statement(connection, "INSERT OR REPLACE INTO settings(name, value) VALUES(?, ?)")
            .with(name, value)
            .run();
    });
}

}  // namespace rangeline
