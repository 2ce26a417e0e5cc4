#pragma once
// One hardened connection to a book's file, and statements on it. For core/book only. A connection
// belongs to the thread that opened it.
//
// The first fault is kept; after it every statement gives nothing and changes nothing, so that the
// code between needs no branches. Whoever began the work asks takeFault() at its end.

#include <QByteArray>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "base/result.h"
#include "book/book_fault.h"

struct sqlite3;

namespace rangeline {

class Connection {
  public:
    enum class Access : std::uint8_t { ReadOnly, ReadWrite };

    /// The file is not touched before the first statement; writing creates it. A file is looked at
    /// first by looksLikeBook().
    static Result<std::unique_ptr<Connection>, BookFault> open(const std::string& path,
                                                               Access access);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    const std::string& path() const { return path_; }
    sqlite3* handle() const { return handle_; }
    bool failed() const { return fault_.has_value(); }
    std::optional<BookFault> takeFault() { return std::exchange(fault_, std::nullopt); }
    void report(BookFault fault);
    /// Reports what SQLite says went wrong last.
    void reportError();
    /// Runs one statement without results.
    void run(const char* sql);
    /// The one number that a query gives, or 0.
    std::int64_t number(const char* sql);

  private:
    friend class Statement;
    Connection(std::string path, QString name) : path_(std::move(path)), name_(std::move(name)) {}
    void harden(Access access);

    std::string path_;
    QString name_;
    QSqlDatabase database_;
    sqlite3* handle_ = nullptr;
    std::optional<BookFault> fault_;
};

/// A prepared statement: `Statement(c, "... ? ...").with(1, "a")`, then next() until it is false.
class Statement {
  public:
    Statement(Connection& connection, const char* sql);

    template <class... Values>
    Statement& with(const Values&... values) {
        (bind(values), ...);
        return *this;
    }
    void run() { static_cast<void>(next()); }
    /// The first row, then the following ones.
    bool next();

    int columns() const;
    QVariant value(int column) const { return query_.value(column); }
    std::int64_t whole(int column) const { return value(column).toLongLong(); }
    std::string text(int column) const { return value(column).toString().toStdString(); }
    QByteArray bytes(int column) const { return value(column).toByteArray(); }
    bool isNull(int column) const { return value(column).isNull(); }

  private:
    void bind(std::int64_t value) { query_.addBindValue(QVariant::fromValue<qlonglong>(value)); }
    void bind(int value) { bind(std::int64_t{value}); }
    void bind(bool value) { bind(std::int64_t{value ? 1 : 0}); }
    void bind(const std::string& value) { query_.addBindValue(QString::fromStdString(value)); }
    void bind(const char* value) { query_.addBindValue(QString::fromUtf8(value)); }
    void bind(const QByteArray& value) { query_.addBindValue(value); }
    template <class T>
    void bind(const std::optional<T>& value) {
        if (value) {
            bind(*value);
        } else {
            query_.addBindValue(QVariant());
        }
    }

    Connection& connection_;
    QSqlQuery query_;
    bool begun_ = false;
};

/// What is read while it lives belongs together, whatever others write.
class Snapshot {
  public:
    explicit Snapshot(Connection& connection) : connection_(connection) { connection.run("BEGIN"); }
    ~Snapshot();
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

  private:
    Connection& connection_;
};

/// Everything between is done or, unless commit() succeeds, nothing.
class Transaction {
  public:
    explicit Transaction(Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    /// On a fault nothing has been changed.
    void commit();

  private:
    Connection& connection_;
};

}  // namespace rangeline
