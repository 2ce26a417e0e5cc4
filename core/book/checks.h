#pragma once
// The parts of Book::verify(). For core/book only.

#include <functional>
#include <vector>

#include "book/connection.h"
#include "book/items.h"

namespace rangeline {

using Stop = std::function<bool()>;

/// Reports TooMany for more rows than a book may have.
void checkCounts(Connection& connection);
/// Pages, indexes, types, CHECKs and references.
void checkStructure(Connection& connection);
std::vector<Item> readItems(Connection& connection);
/// Whether the seal stored with each thing is that of what it holds.
void checkSeals(Connection& connection, const std::vector<Item>& items, const Stop& stop);
/// Every value of every item, version and journal entry.
void checkValues(Connection& connection, const std::vector<Item>& items, const Stop& stop);

}  // namespace rangeline
