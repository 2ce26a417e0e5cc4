#pragma once
// How a book's file is laid out. One file for each version; see migration.h for the way from one to
// the next. For core/book only.

#include <cstdint>
#include <span>
#include <string_view>

namespace rangeline {

class Connection;

/// "Rngl": in the header of every book, at byte 68.
inline constexpr std::int64_t bookApplicationId = 0x526E676C;

/// One table or index, and the statement that makes it, exactly as SQLite stores it.
struct SchemaPart {
    std::string_view name;
    const char* sql;
};

struct SchemaVersion {
    int number = 0;
    std::span<const SchemaPart> parts;
    /// From the version before, inside a transaction that makes the parts unlike before; null for
    /// the first. Seals and the journal are seen to by migrate().
    void (*migrate)(Connection&) = nullptr;
};

/// Every version there has been, oldest first.
std::span<const SchemaVersion> schemaHistory();

/// Makes the tables in an empty file, with the marks of a book and nothing in it.
void createSchema(Connection& connection, const SchemaVersion& version);
/// Reports the first part that is not exactly as it should be, or is there and should not be. Of a
/// book newer than the version only triggers, views and missing tables are reported.
void compareSchema(Connection& connection, const SchemaVersion& version, bool newer);

}  // namespace rangeline
