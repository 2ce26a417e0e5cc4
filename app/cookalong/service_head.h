#pragma once
// What a service begins with, and what it leaves in the log.

#include <QDateTime>
#include <vector>

#include "book/versions.h"
#include "live/service.h"
#include "live_store/service_file.h"

namespace rangeline {

/// When plating is to be if the cooking begins now: the lesson's own time where that is within half
/// a day and no step would be late by it; else as soon as the plan allows, on a whole minute.
QDateTime usualServing(const Lesson& lesson, const QDateTime& now);

/// A service of the lesson that is served at `serving`, whatever the lesson says; `item` is its
/// number in the book, or 0. The clock is read for it.
live::ServiceHead serviceHead(Lesson lesson, std::int64_t item, const QDateTime& serving,
                              const live::ClockSource& clock);

/// What the service tells of its steps, for the book's log.
std::vector<LogEntry> logOf(const live::ServiceHead& head, const live::Service& service);

}  // namespace rangeline
