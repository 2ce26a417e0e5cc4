#include "exchange/calendar.h"

#include <libical/ical.h>

#include <memory>

namespace rangeline {
namespace {

struct ComponentDeleter {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Owned = std::unique_ptr<icalcomponent, ComponentDeleter>;

/// What no reader accepts: control characters except line break and tab.
std::string plain(const std::string& text) {
    std::string kept;
    for (const char letter : text) {
        const auto code = static_cast<unsigned char>(letter);
        if (letter == '\n' || letter == '\t' || (code >= 0x20 && code != 0x7f)) {
            kept += letter;
        }
    }
    return kept;
}

icaltimetype utc(UnixSeconds seconds) {
    return icaltime_from_timet_with_zone(static_cast<time_t>(seconds), 0,
                                         icaltimezone_get_utc_timezone());
}

void addText(icalcomponent* to, icalproperty* (*make)(const char*), const std::string& text) {
    if (!text.empty()) {
        icalcomponent_add_property(to, make(plain(text).c_str()));
    }
}

icalcomponent* alarmOf(const CalendarAlarm& alarm) {
    icalcomponent* made = icalcomponent_new_valarm();
    icalcomponent_add_property(made, icalproperty_new_action(ICAL_ACTION_DISPLAY));
    addText(made, icalproperty_new_description, alarm.text);
    icaltriggertype trigger{};
    trigger.time = utc(alarm.at);
    trigger.duration = icaldurationtype_null_duration();
    icalproperty* when = icalproperty_new_trigger(trigger);
    icalproperty_add_parameter(when, icalparameter_new_value(ICAL_VALUE_DATETIME));
    icalcomponent_add_property(made, when);
    return made;
}

icalcomponent* eventOf(const CalendarEvent& event, icaltimetype written) {
    icalcomponent* made = icalcomponent_new_vevent();
    icalcomponent_add_property(made, icalproperty_new_uid(plain(event.uid).c_str()));
    icalcomponent_add_property(made, icalproperty_new_dtstamp(written));
    icalcomponent_add_property(made, icalproperty_new_dtstart(utc(event.begin)));
    if (event.end > event.begin) {
        icalcomponent_add_property(made, icalproperty_new_dtend(utc(event.end)));
    }
    addText(made, icalproperty_new_summary, event.summary);
    addText(made, icalproperty_new_location, event.location);
    addText(made, icalproperty_new_description, event.description);
    for (const std::string& category : event.categories) {
        addText(made, icalproperty_new_categories, category);
    }
    for (const CalendarAlarm& alarm : event.alarms) {
        icalcomponent_add_component(made, alarmOf(alarm));
    }
    return made;
}

}  // namespace

std::string writeCalendar(const Calendar& calendar) {
    const Owned all(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
    icalcomponent_add_property(all.get(), icalproperty_new_version("2.0"));
    icalcomponent_add_property(all.get(), icalproperty_new_prodid("-//Rangeline//Rangeline//EN"));
    addText(all.get(), icalproperty_new_name, calendar.name);
    for (const CalendarEvent& event : calendar.events) {
        icalcomponent_add_component(all.get(), eventOf(event, utc(calendar.written)));
    }
    const std::unique_ptr<char, decltype(&std::free)> text(
        icalcomponent_as_ical_string_r(all.get()), &std::free);
    return text == nullptr ? std::string() : std::string(text.get());
}

}  // namespace rangeline
