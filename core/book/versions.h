#pragma once
// Named versions of a lesson, whole copies of the book, and the cooking log.

#include <string>
#include <vector>

#include "book/book.h"
#include "model/edit.h"

namespace rangeline {

struct Version {
    std::int64_t id = 0;
    std::string name;
    std::string made;  ///< UTC: "2027-10-09T16:30:00Z"

    friend bool operator==(const Version&, const Version&) = default;
};

/// Keeps the lesson as it is now under that name. `now` is UTC as in Version::made.
Result<std::int64_t, BookFault> keepVersion(Book& book, ItemId lesson, const std::string& name,
                                            const std::string& now);
/// Keeps another lesson as a version of it, for salvaging.
std::optional<BookFault> insertVersion(Book& book, ItemId lesson, const std::string& name,
                                       const std::string& made, const Lesson& kept);
/// Oldest first.
Result<std::vector<Version>, BookFault> versions(Book& book, ItemId lesson);
Result<Lesson, BookFault> versionLesson(Book& book, std::int64_t version);
/// The lesson becomes as it was then: one step of undo.
std::optional<BookFault> restoreVersion(Book& book, ItemId lesson, std::int64_t version);
std::optional<BookFault> removeVersion(Book& book, ItemId lesson, std::int64_t version);

/// What makes the one lesson out of the other, in an order in which it can be applied.
std::vector<Edit> editsFrom(const Lesson& lesson, const Lesson& wanted);

/// A copy of the whole book; a file that is there is replaced once the copy is whole.
std::optional<BookFault> saveCopy(Book& book, const std::string& target);

/// What a step really took.
struct LogEntry {
    std::string day;  ///< local date: "2027-10-09"
    std::optional<ItemId> lesson;
    std::string dish;  ///< ids as in the lesson
    std::string step;
    std::string cook;
    int covers = 1;
    Duration planned;
    Duration took;

    friend bool operator==(const LogEntry&, const LogEntry&) = default;
};

std::optional<BookFault> addToLog(Book& book, const std::vector<LogEntry>& entries);
/// What one service tells, in one transaction with its id, so that an end that is done again after
/// a crash adds nothing.
std::optional<BookFault> addServiceToLog(Book& book, const std::string& service,
                                         const std::vector<LogEntry>& entries);
/// What is known of a step, oldest first; of all steps where it is empty.
Result<std::vector<LogEntry>, BookFault> cookingLog(Book& book, const std::string& step = {});

}  // namespace rangeline
