#pragma once

#include <QString>

#include "book/book_fault.h"

namespace rangeline {

/// What is wrong with the book and what to do; without the book's name.
QString sentence(const BookFault& fault);

}  // namespace rangeline
