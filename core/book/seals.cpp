#include "book/seals.h"

#include <QCryptographicHash>
#include <array>

#include "book/connection.h"

namespace rangeline {
namespace {

/// Lengths and types go in too, so that no two different contents give the same bytes.
class Sealing {
  public:
    void add(char type, QByteArrayView bytes) {
        const QByteArray size = type + QByteArray::number(bytes.size()) + ':';
        hash_.addData(size);
        hash_.addData(bytes);
    }

    void add(const QVariant& value) {
        switch (value.isNull() ? QMetaType::Nullptr
                               : static_cast<QMetaType::Type>(value.typeId())) {
            case QMetaType::Nullptr:
                return add('n', {});
            case QMetaType::LongLong:
                return add('i', QByteArray::number(value.toLongLong()));
            case QMetaType::QByteArray:
                return add('b', value.toByteArray());
            default:
                return add('t', value.toString().toUtf8());
        }
    }

    void add(Statement& rows) {
        int columns = 0;
        while (rows.next()) {
            columns = columns == 0 ? rows.columns() : columns;
            for (int column = 0; column < columns; ++column) {
                add(rows.value(column));
            }
            add('r', {});
        }
        add('q', {});
    }

    QByteArray result() const { return hash_.result(); }

  private:
    QCryptographicHash hash_{QCryptographicHash::Sha256};
};

/// Of an item of one kind only the queries of that kind give rows.
constexpr std::array itemQueries = {
    "SELECT id, kind, name, state FROM items WHERE id = ?",
    "SELECT content FROM kitchens WHERE id = ?",
    "SELECT content FROM dishes WHERE id = ?",
    "SELECT head, choices, kitchen, origin, seen FROM lessons WHERE id = ?",
    "SELECT position, covers, shift, dish, origin, seen FROM servings WHERE lesson = ? "
    "ORDER BY position",
    "SELECT kind, subject, batch, station, spot, content FROM placements WHERE lesson = ? "
    "ORDER BY kind, subject, batch, station, spot",
    "SELECT id, name, made, seal FROM versions WHERE lesson = ? ORDER BY id",
    "SELECT id, done, seal FROM journal WHERE lesson = ? ORDER BY id",
};

constexpr std::array bookQueries = {
    "SELECT id, kind, name, state, seal FROM items ORDER BY id",
    "SELECT id, seal FROM log_pages ORDER BY id",
    "SELECT name, value FROM settings ORDER BY name",
};

}  // namespace

QByteArray sealOf(const std::string& text) {
    return sealOf({}, text);
}

QByteArray sealOf(const std::string& name, const std::string& text) {
    Sealing sealing;
    sealing.add('t', QByteArrayView(name.data(), static_cast<qsizetype>(name.size())));
    sealing.add('t', QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
    return sealing.result();
}

QByteArray itemSeal(Connection& connection, std::int64_t item) {
    Sealing sealing;
    for (const char* query : itemQueries) {
        sealing.add(Statement(connection, query).with(item));
    }
    return sealing.result();
}

QByteArray logPageSeal(Connection& connection, std::int64_t page) {
    Sealing sealing;
    sealing.add(Statement(connection,
                          "SELECT id, day, lesson, dish, step, cook, covers, planned, took "
                          "FROM cooking_log WHERE id BETWEEN ? AND ? ORDER BY id")
                    .with(page * logPageSize, (page + 1) * logPageSize - 1));
    return sealing.result();
}

QByteArray bookSeal(Connection& connection) {
    Sealing sealing;
    for (const char* query : bookQueries) {
        Statement rows(connection, query);
        sealing.add(rows);
    }
    return sealing.result();
}

QByteArray storedBookSeal(Connection& connection) {
    Statement row(connection, "SELECT seal FROM book_seal WHERE id = 1");
    return row.next() ? row.bytes(0) : QByteArray();
}

void sealItem(Connection& connection, std::int64_t item) {
    const QByteArray seal = itemSeal(connection, item);
    Statement(connection, "UPDATE items SET seal = ? WHERE id = ?").with(seal, item).run();
}

void sealLogPage(Connection& connection, std::int64_t page) {
    const QByteArray seal = logPageSeal(connection, page);
    Statement(connection, "INSERT OR REPLACE INTO log_pages(id, seal) VALUES(?, ?)")
        .with(page, seal)
        .run();
}

void sealBook(Connection& connection) {
    const QByteArray seal = bookSeal(connection);
    Statement(connection, "INSERT OR REPLACE INTO book_seal(id, seal) VALUES(1, ?)")
        .with(seal)
        .run();
}

}  // namespace rangeline
