#pragma once
// Why a book was refused, cannot be written, or a wish about it cannot be met. app/text makes the
// sentence.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "model/fault.h"

namespace rangeline {

enum class BookFaultCode : std::uint8_t {
    // opening
    CannotOpen,    ///< 0: the system's reason
    EmptyFile,     ///< no bytes at all
    NotABook,      ///< another kind of file
    TooLarge,      ///< 0: size in bytes, 1: limit
    AlreadyThere,  ///< a new book would replace a file
    // refused: damaged or made to harm; salvage() reads what can be read
    ForeignSchema,  ///< 0: the table, index, trigger or view that should not be, or is not, so
    ForeignMode,    ///< kept with a write-ahead log
    TooMany,        ///< 0: what, 1: limit
    Damaged,        ///< 0: what SQLite found
    SealBroken,     ///< 0: what no longer is as it was written: "item 12", "the list of items"
    BadValue,       ///< 0: where: "item 12"; `value` says what, where the model found it
    // shown, but not writable
    NewerBook,      ///< 0: its version, 1: the newest known here
    OpenElsewhere,  ///< another process has it open for writing
    ReadOnlyFile,   ///< the file, its folder or the medium cannot be written
    NeedsRecovery,  ///< an unfinished change must be taken back first, and nothing can be written
    NotVerified,    ///< verify() has not ended yet
    // while writing: the book is as it was before
    ChangedElsewhere,  ///< another program wrote into it since it was read
    Gone,              ///< moved or deleted: no file has its name any more
    Replaced,          ///< its name belongs to another file now
    DiskFull,          ///< 0: the path
    CannotWrite,       ///< 0: the path, 1: the reason
    Busy,              ///< another program holds it locked
    // wishes
    NoSuchItem,    ///< 0: its number or name
    SeveralItems,  ///< 0: the name, 1: their numbers
    NothingToDo,   ///< nothing to undo or redo
    Refused        ///< the lesson, dish or kitchen would be unusable; `value` says why
};

struct BookFault {
    BookFaultCode code{};
    std::vector<std::string> figures;
    std::optional<Fault> value;

    friend bool operator==(const BookFault&, const BookFault&) = default;
};

/// Whether the book itself is wrong, so that salvaging is worth offering.
bool isDamage(BookFaultCode code);

}  // namespace rangeline
