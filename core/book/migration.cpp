#include "book/migration.h"

#include "book/checks.h"
#include "book/connection.h"
#include "book/seals.h"

namespace rangeline {

std::optional<BookFault> migrate(Connection& connection, std::span<const SchemaVersion> history,
                                 int from) {
    Transaction transaction(connection);
    for (const SchemaVersion& version : history) {
        if (version.number > from) {
            version.migrate(connection);
        }
    }
    connection.run("DELETE FROM journal");
    const std::string number = "PRAGMA user_version = " + std::to_string(history.back().number);
    connection.run(number.c_str());
    compareSchema(connection, history.back(), false);
    for (const Item& item : readItems(connection)) {
        sealItem(connection, item.id.number);
    }
    sealBook(connection);
    transaction.commit();
    return connection.takeFault();
}

}  // namespace rangeline
