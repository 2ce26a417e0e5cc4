#pragma once
// The book that a first start shows.

#include <QString>
#include <optional>

#include "book/book.h"
#include "model/lesson.h"

namespace rangeline {

/// Where this user's book of the samples lies: in XDG_DATA_HOME, or in its usual place.
QString samplesPath();
/// A new book with the sample lessons, and their kitchens and dishes each once.
std::optional<BookFault> makeSamplesBook(const QString& path);
/// Adds the lesson, with its kitchen and dishes as items of their own unless the book has them
/// already just as they are. A dish linked to another dish of its lesson stays the lesson's own.
Result<ItemId, BookFault> addWithParts(Book& book, const Lesson& lesson);
/// The lesson of the book that is just this one, or that these contents were copied into before and
/// that has been changed since; else it is added like that, under a name that no other lesson has.
struct CopiedLesson {
    ItemId id;
    bool before = false;  ///< it was copied before; what it holds may have changed since
};
Result<CopiedLesson, BookFault> findOrAddLesson(Book& book, Lesson lesson);

}  // namespace rangeline
