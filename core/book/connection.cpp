#include "book/connection.h"

#include <sqlite3.h>

#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>
#include <array>
#include <atomic>
#include <utility>

namespace rangeline {
namespace {

constexpr int busyMilliseconds = 2000;

/// What a book needs and a hostile one may not pass. Sources: "Defense Against The Dark Arts" and
/// "Run-Time Limits" of SQLite's documentation name the switches; the figures are what books need.
constexpr std::array limits = {
    std::pair{SQLITE_LIMIT_LENGTH, 16'000'000},  std::pair{SQLITE_LIMIT_SQL_LENGTH, 100'000},
    std::pair{SQLITE_LIMIT_COLUMN, 64},          std::pair{SQLITE_LIMIT_EXPR_DEPTH, 100},
    std::pair{SQLITE_LIMIT_COMPOUND_SELECT, 10}, std::pair{SQLITE_LIMIT_ATTACHED, 0},
    std::pair{SQLITE_LIMIT_TRIGGER_DEPTH, 4},    std::pair{SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 100},
};

QString nextName() {
    static std::atomic<int> number = 0;
    return QStringLiteral("book %1").arg(++number);
}

BookFault faultOf(int extended, const std::string& path, const std::string& reason) {
    switch (extended & 0xFF) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {BookFaultCode::Busy, {}, {}};
        case SQLITE_READONLY:
            return {extended == SQLITE_READONLY_ROLLBACK ? BookFaultCode::NeedsRecovery
                                                         : BookFaultCode::ReadOnlyFile,
                    {},
                    {}};
        case SQLITE_FULL:
            return {BookFaultCode::DiskFull, {path}, {}};
        case SQLITE_IOERR:
        case SQLITE_NOMEM:
            return {BookFaultCode::CannotWrite, {path, reason}, {}};
        case SQLITE_CANTOPEN:
            return {BookFaultCode::CannotOpen, {reason}, {}};
        case SQLITE_NOTADB:
            return {BookFaultCode::NotABook, {}, {}};
        case SQLITE_TOOBIG:
            return {BookFaultCode::TooMany, {"bytes in one value", "16000000"}, {}};
        default:
            return {BookFaultCode::Damaged, {reason}, {}};
    }
}

/// SQLite itself may have rolled back after an error, so it is asked.
void endOpen(Connection& connection) {
    if (sqlite3_get_autocommit(connection.handle()) == 0) {
        sqlite3_exec(connection.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
    }
}

}  // namespace

bool isDamage(BookFaultCode code) {
    return code >= BookFaultCode::ForeignSchema && code <= BookFaultCode::BadValue;
}

Result<std::unique_ptr<Connection>, BookFault> Connection::open(const std::string& path,
                                                                Access access) {
    std::unique_ptr<Connection> connection(new Connection(path, nextName()));
    auto& database = connection->database_;
    database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection->name_);
    database.setDatabaseName(QString::fromStdString(path));
    database.setConnectOptions(
        QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(busyMilliseconds) +
        (access == Access::ReadOnly ? QStringLiteral(";QSQLITE_OPEN_READONLY") : QString()));
    if (!database.open()) {
        return BookFault{
            BookFaultCode::CannotOpen, {database.lastError().databaseText().toStdString()}, {}};
    }
    const QVariant handle = database.driver()->handle();
    connection->handle_ = *static_cast<sqlite3* const*>(handle.constData());
    connection->harden(access);
    if (auto fault = connection->takeFault()) {
        return *std::move(fault);
    }
    return connection;
}

void Connection::harden(Access access) {
    for (const auto& [limit, value] : limits) {
        sqlite3_limit(handle_, limit, value);
    }
    for (const int off : {SQLITE_DBCONFIG_TRUSTED_SCHEMA, SQLITE_DBCONFIG_ENABLE_TRIGGER,
                          SQLITE_DBCONFIG_ENABLE_VIEW}) {
        sqlite3_db_config(handle_, off, 0, nullptr);
    }
    for (const int on : {SQLITE_DBCONFIG_DEFENSIVE, SQLITE_DBCONFIG_ENABLE_FKEY}) {
        sqlite3_db_config(handle_, on, 1, nullptr);
    }
    run("PRAGMA cell_size_check = ON");
    run("PRAGMA mmap_size = 0");
    run("PRAGMA temp_store = MEMORY");
    run("PRAGMA cache_size = -16000");
    if (access == Access::ReadWrite) {
        run("PRAGMA synchronous = FULL");
    }
}

Connection::~Connection() {
    database_.close();
    database_ = QSqlDatabase();
    QSqlDatabase::removeDatabase(name_);
}

void Connection::report(BookFault fault) {
    if (!fault_) {
        fault_ = std::move(fault);
    }
}

void Connection::reportError() {
    report(faultOf(sqlite3_extended_errcode(handle_), path_, sqlite3_errmsg(handle_)));
}

void Connection::run(const char* sql) {
    Statement(*this, sql).run();
}

std::int64_t Connection::number(const char* sql) {
    Statement statement(*this, sql);
    return statement.next() ? statement.whole(0) : 0;
}

Statement::Statement(Connection& connection, const char* sql)
    : connection_(connection), query_(connection.database_) {
    query_.setForwardOnly(true);
    if (!connection.failed() && !query_.prepare(QString::fromUtf8(sql))) {
        connection.reportError();
    }
}

bool Statement::next() {
    if (connection_.failed()) {
        return false;
    }
    if (!begun_) {
        begun_ = true;
        if (!query_.exec()) {
            connection_.reportError();
            return false;
        }
        if (!query_.isSelect()) {
            return false;
        }
    }
    if (query_.next()) {
        return true;
    }
    if (query_.lastError().isValid()) {
        connection_.reportError();
    }
    return false;
}

int Statement::columns() const {
    return query_.record().count();
}

Snapshot::~Snapshot() {
    endOpen(connection_);
}

Transaction::Transaction(Connection& connection) : connection_(connection) {
    connection_.run("BEGIN IMMEDIATE");
}

Transaction::~Transaction() {
    endOpen(connection_);
}

void Transaction::commit() {
    connection_.run("COMMIT");
}

}  // namespace rangeline
