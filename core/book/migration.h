#pragma once
// The way from older versions of the schema to the newest. For core/book only.

#include <optional>
#include <span>

#include "book/book_fault.h"
#include "book/schema.h"

namespace rangeline {

/// All steps from version `from` in one transaction; the undo journal begins anew, since its edits
/// may no longer fit. Requires a book that has been verified, and a copy of it.
std::optional<BookFault> migrate(Connection& connection, std::span<const SchemaVersion> history,
                                 int from);

}  // namespace rangeline
