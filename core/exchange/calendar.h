#pragma once
// Calendars as programs exchange them: iCalendar (RFC 5545), written with libical.

#include <cstdint>
#include <span>
#include <string>
#include <vector>

namespace rangeline {

/// A point in time without any zone: seconds since 1970-01-01T00:00:00Z.
using UnixSeconds = std::int64_t;

/// Reminds at an instant of its own.
struct CalendarAlarm {
    UnixSeconds at = 0;
    std::string text;
};

struct CalendarEvent {
    std::string
        uid;  ///< the same whenever the same thing is exported again, so that it is replaced
    UnixSeconds begin = 0;
    UnixSeconds end = 0;  ///< >= begin; equal for an event that takes no time
    std::string summary;
    std::string location;
    std::string description;
    std::vector<std::string> categories;
    std::vector<CalendarAlarm> alarms;
};

struct Calendar {
    std::string name;
    UnixSeconds written = 0;  ///< when it was made
    std::vector<CalendarEvent> events;
};

/// UTF-8. All times are in UTC, so that no reader needs to know a zone's rules. Control characters
/// of texts are left out, line breaks are kept.
std::string writeCalendar(const Calendar& calendar);

}  // namespace rangeline
