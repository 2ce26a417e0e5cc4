#pragma once
// Editing a lesson of a book: each edit is one short transaction that also keeps its inverse, so
// that undo and redo go on after the book is opened again.

#include <string>
#include <vector>

#include "book/book.h"
#include "model/edit.h"

namespace rangeline {

/// Older undo steps of a lesson are forgotten beyond these.
inline constexpr std::int64_t mostUndoSteps = 500;
inline constexpr std::int64_t mostUndoBytes = 2'000'000;
/// A book with more of them is refused; from half as many on the oldest go.
inline constexpr std::int64_t mostStepsInBook = 200'000;

/// Done when it returns without a fault. Refused with the reason where the lesson would be
/// unusable. `name` names the step of undo; edits that follow each other with the same `gesture`
/// (not 0) are one step.
std::optional<BookFault> applyEdit(Book& book, ItemId lesson, const Edit& edit,
                                   const std::string& name, int gesture = 0);
/// Several edits as one step.
std::optional<BookFault> applyEdits(Book& book, ItemId lesson, const std::vector<Edit>& edits,
                                    const std::string& name, int gesture = 0);

/// What undo or redo has done to the lesson, for a copy of it elsewhere: apply in this order.
struct Replayed {
    std::string name;
    std::vector<Edit> edits;
};
/// NothingToDo where there is no step. The names stay with the steps.
Result<Replayed, BookFault> undo(Book& book, ItemId lesson);
Result<Replayed, BookFault> redo(Book& book, ItemId lesson);

/// The names of the steps: what undo takes back next is the last of `undo`, what redo does next the
/// first of `redo`.
struct Steps {
    std::vector<std::string> undo;
    std::vector<std::string> redo;
};
Result<Steps, BookFault> undoSteps(Book& book, ItemId lesson);

/// The steps with what they would do, in the order of Steps. SealBroken if one is not as it was
/// written.
struct StepEdits {
    std::vector<Replayed> undo;
    std::vector<Replayed> redo;
};
Result<StepEdits, BookFault> undoEdits(Book& book, ItemId lesson);

}  // namespace rangeline
