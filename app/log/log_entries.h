#pragma once
// What was cooked, as it goes to the cooking log.

#include <vector>

#include "book/versions.h"
#include "live/taken.h"

namespace rangeline {

/// Each step with its cook and the day on which it began, by the lesson's own clock.
std::vector<LogEntry> logEntries(const Lesson& lesson, std::optional<ItemId> item,
                                 const std::vector<live::Taken>& taken);

enum class Logged : std::uint8_t {
    Yes,
    AlreadyThere  ///< the log has one of these steps of the lesson for that day: nothing was added
};
/// All of them or none, in one transaction; `service` names this class, so that what is done again
/// after a crash adds nothing. `another`: of a second class on the same day, so that it is no
/// matter what the log has already.
Result<Logged, BookFault> logClass(Book& book, const std::string& service,
                                   const std::vector<LogEntry>& entries, bool another);

}  // namespace rangeline
