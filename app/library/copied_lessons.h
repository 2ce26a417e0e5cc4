#pragma once
// Which lesson of a book a file was copied into, so that opening the file again finds it however it
// has been changed in the book since.

#include <optional>

#include "book/book.h"
#include "model/lesson.h"

namespace rangeline {

/// The lesson that these very contents were copied into before, unless it has been deleted.
std::optional<ItemId> copiedBefore(Book& book, const Lesson& contents);
/// Of more than 150 the oldest is forgotten.
std::optional<BookFault> rememberCopied(Book& book, const Lesson& contents, ItemId lesson);

}  // namespace rangeline
