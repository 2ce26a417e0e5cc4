#pragma once
// What the cooking log of a book says of a dish.

#include <map>
#include <vector>

#include "book/book.h"
#include "rehearse/learned.h"

namespace rangeline {

/// By step of the dish, as its card says it: for a load or a piece, of a cook at pace 1.
using DishLog = std::map<StepId, std::vector<Logging>>;

/// Loggings of lessons that the dish was copied into, also where its ids had to be others there.
/// Those of a lesson that is not known any more count if no other dish has that id. Reads on the
/// book's thread.
Result<DishLog, BookFault> dishLog(Book& book, ItemId dish);

}  // namespace rangeline
