#pragma once

#include "book/book.h"

namespace rangeline::test {

/// Does that to the book and seals the lesson and the book as if it had always been so.
std::optional<BookFault> sealAfter(Book& book, ItemId lesson, const char* sql);

}  // namespace rangeline::test
