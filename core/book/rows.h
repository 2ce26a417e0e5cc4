#pragma once
// Kitchens, dishes and lessons to and from their rows. For core/book only. Reading reports BadValue
// for what cannot be read or the model refuses; what is given then has no meaning.

#include <optional>
#include <vector>

#include "book/connection.h"
#include "book/items.h"
#include "book/judge.h"
#include "model/edit.h"

namespace rangeline {

/// A new row of `items`, sealed later.
ItemId insertItem(Connection& connection, ItemKind kind, const std::string& name);
void updateName(Connection& connection, ItemId id, const std::string& name);

Kitchen readKitchenRow(Connection& connection, ItemId id);
Dish readDishRow(Connection& connection, ItemId id);
Lesson readLessonRows(Connection& connection, ItemId id);

void writeKitchenRow(Connection& connection, ItemId id, const Kitchen& kitchen);
void writeDishRow(Connection& connection, ItemId id, const Dish& dish);
/// All rows of a lesson that has none yet.
void writeLessonRows(Connection& connection, ItemId id, const Lesson& lesson);
/// The rows that the edit, which led to this lesson, has changed.
void writeEdited(Connection& connection, ItemId id, const Lesson& lesson, const Edit& edit);

/// Reads all of an item and throws it away, for what is reported.
void readItemRows(Connection& connection, const Item& item);

}  // namespace rangeline
