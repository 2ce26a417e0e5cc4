#include "book/checks.h"

#include <array>

#include "book/journal.h"
#include "book/rows.h"
#include "book/seals.h"
#include "exchange/lesson_file.h"
#include "exchange/part_text.h"

namespace rangeline {
namespace {

struct Most {
    const char* table;
    const char* sql;
    std::int64_t rows;
};

/// Far more than a life of cooking; what a hostile file can make a reader do ends here.
constexpr std::array mostRows = {
    Most{"items", "SELECT count(*) FROM (SELECT 1 FROM items LIMIT 20001)", mostItems},
    Most{"servings", "SELECT count(*) FROM (SELECT 1 FROM servings LIMIT 100001)", 100'000},
    Most{"placements", "SELECT count(*) FROM (SELECT 1 FROM placements LIMIT 500001)", 500'000},
    Most{"versions", "SELECT count(*) FROM (SELECT 1 FROM versions LIMIT 20001)", 20'000},
    Most{"journal", "SELECT count(*) FROM (SELECT 1 FROM journal LIMIT 200001)", mostStepsInBook},
    Most{"cooking_log", "SELECT count(*) FROM (SELECT 1 FROM cooking_log LIMIT 500001)", 500'000},
    Most{"log_pages", "SELECT count(*) FROM (SELECT 1 FROM log_pages LIMIT 10001)", 10'000},
    Most{"settings", "SELECT count(*) FROM (SELECT 1 FROM settings LIMIT 1001)", 1'000},
};

void reportBroken(Connection& connection, const std::string& what) {
    connection.report({BookFaultCode::SealBroken, {what}, {}});
}

bool stopped(Connection& connection, const Stop& stop) {
    if (stop && stop()) {
        connection.report({BookFaultCode::NotVerified, {}, {}});
    }
    return connection.failed();
}

/// Rows of (id, seal, name, content) that carry their own seal.
void checkOwnSeals(Connection& connection, const char* sql, const char* what) {
    Statement rows(connection, sql);
    while (rows.next()) {
        if (rows.bytes(1) != sealOf(rows.text(2), rows.text(3))) {
            return reportBroken(connection, what + std::to_string(rows.whole(0)));
        }
    }
}

void checkLogSeals(Connection& connection) {
    Statement pages(connection, "SELECT id, seal FROM log_pages");
    while (pages.next()) {
        if (pages.bytes(1) != logPageSeal(connection, pages.whole(0))) {
            return reportBroken(connection, "log page " + std::to_string(pages.whole(0)));
        }
    }
    if (connection.number("SELECT count(*) FROM cooking_log WHERE id / 256 NOT IN "
                          "(SELECT id FROM log_pages)") != 0) {
        reportBroken(connection, "the cooking log");
    }
}

}  // namespace

void checkCounts(Connection& connection) {
    for (const Most& most : mostRows) {
        if (connection.number(most.sql) > most.rows) {
            connection.report(
                {BookFaultCode::TooMany, {most.table, std::to_string(most.rows)}, {}});
        }
    }
}

void checkStructure(Connection& connection) {
    Statement found(connection, "PRAGMA integrity_check(1)");
    if (found.next() && found.text(0) != "ok") {
        connection.report({BookFaultCode::Damaged, {found.text(0)}, {}});
    }
    Statement loose(connection, "PRAGMA foreign_key_check");
    if (loose.next()) {
        connection.report({BookFaultCode::Damaged, {loose.text(0) + " refers to nothing"}, {}});
    }
}

std::vector<Item> readItems(Connection& connection) {
    std::vector<Item> items;
    Statement rows(connection, "SELECT id, kind, name, state FROM items ORDER BY id LIMIT 20001");
    while (rows.next()) {
        items.push_back({{rows.whole(0)},
                         static_cast<ItemKind>(rows.whole(1)),
                         rows.text(2),
                         static_cast<ItemState>(rows.whole(3))});
        const bool known =
            rows.whole(1) >= 1 && rows.whole(1) <= 3 && rows.whole(3) >= 0 && rows.whole(3) <= 2;
        if (!known) {
            connection.report(
                {BookFaultCode::BadValue, {"item " + std::to_string(rows.whole(0))}, {}});
        }
    }
    if (static_cast<std::int64_t>(items.size()) > mostItems) {
        connection.report({BookFaultCode::TooMany, {"items", std::to_string(mostItems)}, {}});
    }
    return items;
}

void checkSeals(Connection& connection, const std::vector<Item>& items, const Stop& stop) {
    for (const Item& item : items) {
        if (stopped(connection, stop)) {
            return;
        }
        Statement row(connection, "SELECT seal FROM items WHERE id = ?");
        if (row.with(item.id.number).next() &&
            row.bytes(0) != itemSeal(connection, item.id.number)) {
            return reportBroken(connection, "item " + std::to_string(item.id.number));
        }
    }
    checkOwnSeals(connection, "SELECT id, seal, name, content FROM versions", "version ");
    checkOwnSeals(connection, "SELECT id, seal, name, edits FROM journal", "undo step ");
    checkLogSeals(connection);
}

void checkValues(Connection& connection, const std::vector<Item>& items, const Stop& stop) {
    for (const Item& item : items) {
        if (stopped(connection, stop)) {
            return;
        }
        readItemRows(connection, item);
    }
    Statement versions(connection, "SELECT id, content FROM versions");
    while (versions.next() && !stopped(connection, stop)) {
        if (const auto lesson = readKeptLesson(versions.text(1)); !lesson.ok()) {
            connection.report({BookFaultCode::BadValue,
                               {"version " + std::to_string(versions.whole(0))},
                               lesson.error()});
        }
    }
    Statement journal(connection, "SELECT id, edits FROM journal");
    while (journal.next() && !stopped(connection, stop)) {
        if (const auto edits = readPart<EditsPart>(journal.text(1)); !edits.ok()) {
            connection.report({BookFaultCode::BadValue,
                               {"undo step " + std::to_string(journal.whole(0))},
                               edits.error()});
        }
    }
}

}  // namespace rangeline
