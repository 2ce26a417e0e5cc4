#pragma once
// Content hashes (SHA-256): SQLite's pages carry none, and a flipped bit in a text passes all of
// its checks. Each item, log page, version and journal entry has one over everything it holds, the
// book one over those and over the settings. For core/book only.

#include <QByteArray>
#include <cstdint>
#include <string>

namespace rangeline {

class Connection;

inline constexpr std::int64_t logPageSize = 256;

QByteArray sealOf(const std::string& text);
QByteArray sealOf(const std::string& name, const std::string& text);

/// Over all that belongs to the item; an item that is not there has the seal of nothing.
QByteArray itemSeal(Connection& connection, std::int64_t item);
QByteArray logPageSeal(Connection& connection, std::int64_t page);
/// Over the names, kinds, states and seals of all items, the log pages and the settings.
QByteArray bookSeal(Connection& connection);
QByteArray storedBookSeal(Connection& connection);

/// These store what those give.
void sealItem(Connection& connection, std::int64_t item);
void sealLogPage(Connection& connection, std::int64_t page);
void sealBook(Connection& connection);

}  // namespace rangeline
