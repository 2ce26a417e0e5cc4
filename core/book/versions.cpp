#include "book/versions.h"

#include <algorithm>
#include <set>

#include "book/connection.h"
#include "book/copy_file.h"
#include "book/journal.h"
#include "book/seals.h"
#include "exchange/lesson_file.h"

namespace rangeline {
namespace {

constexpr const char* lastLoggedService = "last logged service";

BookFault noVersion(std::int64_t version) {
    return {BookFaultCode::NoSuchItem, {std::to_string(version)}, {}};
}

template <class Value>
Result<Value, BookFault> valueOrFault(Connection& connection, Value value) {
    if (auto fault = connection.takeFault()) {
        return *std::move(fault);
    }
    return value;
}

/// A service that was gone on with after weeks says nothing of how long a step takes.
constexpr Duration longestTaken = Duration::hours(7 * 24);

void insertIntoLog(Connection& connection, const std::vector<LogEntry>& entries) {
    std::set<std::int64_t> pages;
    for (const LogEntry& entry : entries) {
        const std::optional<std::int64_t> lesson =
            entry.lesson ? std::optional(entry.lesson->number) : std::nullopt;
        Statement(connection,
                  "INSERT INTO cooking_log(day, lesson, dish, step, cook, covers, planned, took) "
                  "VALUES(?, ?, ?, ?, ?, ?, ?, ?)")
            .with(entry.day, lesson, entry.dish, entry.step, entry.cook, entry.covers,
                  entry.planned.inSeconds(), std::min(entry.took, longestTaken).inSeconds())
            .run();
        pages.insert(connection.number("SELECT last_insert_rowid()") / logPageSize);
    }
    for (const std::int64_t page : pages) {
        sealLogPage(connection, page);
    }
}

}  // namespace

std::vector<Edit> editsFrom(const Lesson& lesson, const Lesson& wanted) {
    std::vector<Edit> edits;
    if (lesson.head != wanted.head) {
        edits.emplace_back(SetHead{wanted.head});
    }
    if (lesson.kitchen != wanted.kitchen) {
        edits.emplace_back(SetKitchen{wanted.kitchen});
    }
    if (lesson.servings != wanted.servings) {
        edits.emplace_back(SetServings{wanted.servings});
    }
    if (lesson.choices != wanted.choices) {
        edits.emplace_back(SetChoices{wanted.choices});
    }
    edits.emplace_back(placementDifference(lesson.placements, wanted.placements));
    return edits;
}

Result<std::int64_t, BookFault> keepVersion(Book& book, ItemId lesson, const std::string& name,
                                            const std::string& now) {
    const auto held = book.heldLesson(lesson);
    if (!held.ok()) {
        return held.error();
    }
    if (auto fault = insertVersion(book, lesson, name, now, *held.value())) {
        return *std::move(fault);
    }
    const auto all = versions(book, lesson);
    if (!all.ok()) {
        return all.error();
    }
    return all.value().back().id;
}

std::optional<BookFault> insertVersion(Book& book, ItemId lesson, const std::string& name,
                                       const std::string& made, const Lesson& kept) {
    const std::string content = writeLesson(kept);
    return book.write([&](Connection& connection, Book::Touched& touched) {
        Statement(connection,
                  "INSERT INTO versions(lesson, name, made, content, seal) VALUES(?, ?, ?, ?, ?)")
            .with(lesson.number, name, made, content, sealOf(name, content))
            .run();
        touched.push_back(lesson);
    });
}

Result<std::vector<Version>, BookFault> versions(Book& book, ItemId lesson) {
    std::vector<Version> found;
    Statement rows(book.connection(),
                   "SELECT id, name, made FROM versions WHERE lesson = ? ORDER BY id");
    rows.with(lesson.number);
    while (rows.next()) {
        found.push_back({rows.whole(0), rows.text(1), rows.text(2)});
    }
    return valueOrFault(book.connection(), std::move(found));
}

Result<Lesson, BookFault> versionLesson(Book& book, std::int64_t version) {
    Statement row(book.connection(), "SELECT name, content, seal FROM versions WHERE id = ?");
    if (!row.with(version).next()) {
        return book.connection().takeFault().value_or(noVersion(version));
    }
    const std::string where = "version " + std::to_string(version);
    if (row.bytes(2) != sealOf(row.text(0), row.text(1))) {
        return BookFault{BookFaultCode::SealBroken, {where}, {}};
    }
    auto lesson = readKeptLesson(row.text(1));
    if (!lesson.ok()) {
        return BookFault{BookFaultCode::BadValue, {where}, lesson.error()};
    }
    return std::move(lesson.value());
}

std::optional<BookFault> restoreVersion(Book& book, ItemId lesson, std::int64_t version) {
    const auto known = versions(book, lesson);
    if (!known.ok()) {
        return known.error();
    }
    const auto wanted = versionLesson(book, version);
    if (!wanted.ok()) {
        return wanted.error();
    }
    const auto held = book.heldLesson(lesson);
    if (!held.ok()) {
        return held.error();
    }
    for (const Version& one : known.value()) {
        if (one.id == version) {
            return applyEdits(book, lesson, editsFrom(*held.value(), wanted.value()), one.name);
        }
    }
    return noVersion(version);
}

std::optional<BookFault> removeVersion(Book& book, ItemId lesson, std::int64_t version) {
    return book.write([&](Connection& connection, Book::Touched& touched) {
        Statement(connection, "DELETE FROM versions WHERE id = ? AND lesson = ?")
            .with(version, lesson.number)
            .run();
        touched.push_back(lesson);
    });
}

std::optional<BookFault> saveCopy(Book& book, const std::string& target) {
    return copyBook(book.connection(), target);
}

std::optional<BookFault> addToLog(Book& book, const std::vector<LogEntry>& entries) {
    return book.write(
        [&](Connection& connection, Book::Touched&) { insertIntoLog(connection, entries); });
}

std::optional<BookFault> addServiceToLog(Book& book, const std::string& service,
                                         const std::vector<LogEntry>& entries) {
    return book.write([&](Connection& connection, Book::Touched&) {
        // One row is enough: a service is logged before the next one of the book begins.
        Statement last(connection, "SELECT value FROM settings WHERE name = ?");
        if (last.with(lastLoggedService).next() && last.text(0) == service) {
            return;
        }
        insertIntoLog(connection, entries);
        Statement(connection, "INSERT OR REPLACE INTO settings(name, value) VALUES(?, ?)")
            .with(lastLoggedService, service)
            .run();
    });
}

Result<std::vector<LogEntry>, BookFault> cookingLog(Book& book, const std::string& step) {
    std::vector<LogEntry> entries;
    Statement rows(book.connection(),
                   "SELECT day, lesson, dish, step, cook, covers, planned, took FROM cooking_log "
                   "WHERE ? = '' OR step = ? ORDER BY id");
    rows.with(step, step);
    while (rows.next()) {
        entries.push_back(
            {rows.text(0), rows.isNull(1) ? std::nullopt : std::optional(ItemId{rows.whole(1)}),
             rows.text(2), rows.text(3), rows.text(4), static_cast<int>(rows.whole(5)),
             Duration::seconds(rows.whole(6)), Duration::seconds(rows.whole(7))});
    }
    return valueOrFault(book.connection(), std::move(entries));
}

}  // namespace rangeline
