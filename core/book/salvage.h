#pragma once
// What can still be read of a damaged book, put into a new one. The damaged file is only read.

#include <optional>
#include <string>
#include <vector>

#include "base/result.h"
#include "book/book_fault.h"
#include "book/items.h"

namespace rangeline {

struct Lost {
    std::string what;  ///< "item 12", "version 3"
    std::string name;  ///< where that could be read
    BookFault why;
};

struct Salvaged {
    std::vector<Item> kept;      ///< as they are in the new book
    std::vector<Item> doubtful;  ///< of those kept: usable, but not sealed as they should be
    std::vector<Lost> lost;
};

/// Puts each kitchen, dish and lesson that the model accepts into a new book at `target`, with its
/// versions and the cooking log. Undo journals are left behind. AlreadyThere if there is such a
/// file; the reason if not even a list of items can be read.
Result<Salvaged, BookFault> salvage(const std::string& damaged, const std::string& target);

}  // namespace rangeline
