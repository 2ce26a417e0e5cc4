#pragma once
// Copies of a whole book by SQLite's backup, which sees a consistent book; a copy of the file alone
// may not. For core/book only.

#include <optional>
#include <string>

#include "book/book_fault.h"

namespace rangeline {

class Connection;

/// Replaces the target, or creates it, once the copy is whole and on the disk.
std::optional<BookFault> copyBook(Connection& from, const std::string& target);
/// Where copyBook, and making a new book, write until they are done.
std::string partName(const std::string& target);
/// Gives the finished part its name. With `replace` false a file that is there stays: AlreadyThere.
std::optional<BookFault> finishPart(const std::string& target, bool replace);
/// Forgets a part, and the journal it may have.
void dropPart(const std::string& target);

}  // namespace rangeline
