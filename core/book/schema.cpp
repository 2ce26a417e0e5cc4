#include "book/schema.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "book/connection.h"
#include "book/schema_v1.h"
#include "book/seals.h"

namespace rangeline {
namespace {

const SchemaPart* partNamed(const SchemaVersion& version, const std::string& name) {
    const auto found = std::ranges::find(version.parts, std::string_view(name), &SchemaPart::name);
    return found == version.parts.end() ? nullptr : &*found;
}

}  // namespace

std::span<const SchemaVersion> schemaHistory() {
    static const std::array history{schemaVersion1};
    return history;
}

void createSchema(Connection& connection, const SchemaVersion& version) {
    const std::string id = "PRAGMA application_id = " + std::to_string(bookApplicationId);
    connection.run(id.c_str());
    for (const SchemaPart& part : version.parts) {
        connection.run(part.sql);
    }
    const std::string number = "PRAGMA user_version = " + std::to_string(version.number);
    connection.run(number.c_str());
    sealBook(connection);
}

void compareSchema(Connection& connection, const SchemaVersion& version, bool newer) {
    std::size_t met = 0;
    // Indexes that SQLite makes for keys have no text.
    Statement rows(connection,
                   "SELECT type, name, sql FROM sqlite_schema WHERE NOT (type = 'index' AND sql IS "
                   "NULL AND name GLOB 'sqlite_autoindex_*') LIMIT 200");
    while (rows.next()) {
        const std::string type = rows.text(0);
        const std::string name = rows.text(1);
        const SchemaPart* part = partNamed(version, name);
        const bool known = part != nullptr && (newer || rows.text(2) == part->sql);
        const bool harmless = newer && part == nullptr && (type == "table" || type == "index");
        if (!known && !harmless) {
            connection.report({BookFaultCode::ForeignSchema, {name}, {}});
            return;
        }
        met += part != nullptr ? 1 : 0;
    }
    if (!connection.failed() && met != version.parts.size()) {
        connection.report({BookFaultCode::ForeignSchema, {"a table is missing"}, {}});
    }
}

}  // namespace rangeline
