#include "exchange/calendar.h"

#include <gmock/gmock.h>
#include <libical/ical.h>

#include <memory>

namespace rangeline {
namespace {

using testing::HasSubstr;
using testing::Not;

using Parsed = std::unique_ptr<icalcomponent, void (*)(icalcomponent*)>;

Parsed parse(const Calendar& calendar) {
    return {icalparser_parse_string(writeCalendar(calendar).c_str()), icalcomponent_free};
}

Calendar oneEvent() {
    return {"Supper",
            1'700'000'000,
            {{"a@rangeline",
              1'800'000'000,
              1'800'000'600,
              "Sear",
              "front left burner",
              "Until: brown",
              {},
              {{1'800'000'000, "Start: Sear"}, {1'800'000'600, "Look at: Sear"}}}}};
}

TEST(Calendar, IsReadBackByTheLibraryWithTheSameTimes) {
    const Parsed read = parse(oneEvent());
    ASSERT_NE(read, nullptr);
    EXPECT_EQ(icalcomponent_count_errors(read.get()), 0);
    icalcomponent* event = icalcomponent_get_first_component(read.get(), ICAL_VEVENT_COMPONENT);
    ASSERT_NE(event, nullptr);
    const auto seconds = [](icaltimetype time) {
        return icaltime_as_timet_with_zone(time, nullptr);
    };
    EXPECT_EQ(seconds(icalcomponent_get_dtstart(event)), 1'800'000'000);
    EXPECT_EQ(seconds(icalcomponent_get_dtend(event)), 1'800'000'600);
    EXPECT_STREQ(icalcomponent_get_summary(event), "Sear");
    EXPECT_STREQ(icalcomponent_get_location(event), "front left burner");
    EXPECT_EQ(icalcomponent_count_components(event, ICAL_VALARM_COMPONENT), 2);
    EXPECT_TRUE(icalrestriction_check(read.get())) << "breaks a rule of RFC 5545";
}

TEST(Calendar, KeepsTextsThatTheFormatWouldTakeForItsOwn) {
    Calendar calendar = oneEvent();
    const std::string text = "Salt; pepper, \\ and\nEND:VEVENT äöü 🍲";
    calendar.events.front().summary = text;
    const Parsed read = parse(calendar);
    icalcomponent* event = icalcomponent_get_first_component(read.get(), ICAL_VEVENT_COMPONENT);
    EXPECT_EQ(icalcomponent_get_summary(event), text);
    EXPECT_EQ(icalcomponent_count_components(read.get(), ICAL_VEVENT_COMPONENT), 1);
}

TEST(Calendar, LeavesControlCharactersOut) {
    Calendar calendar = oneEvent();
    calendar.events.front().summary = "a\r\x1b\x07z";
    EXPECT_THAT(writeCalendar(calendar), HasSubstr("SUMMARY:az\r\n"));
}

TEST(Calendar, BreaksNoLineBeyond75Bytes) {
    Calendar calendar = oneEvent();
    calendar.events.front().summary = std::string(300, 'x');
    const std::string text = writeCalendar(calendar);
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = text.find("\r\n", begin);
        EXPECT_LE(end - begin, 75U);
        begin = end + 2;
    }
}

TEST(Calendar, AnEventWithoutLengthHasNoEnd) {
    Calendar calendar = oneEvent();
    calendar.events.front().end = calendar.events.front().begin;
    EXPECT_THAT(writeCalendar(calendar), Not(HasSubstr("DTEND")));
}

TEST(Calendar, WithoutEventsIsACalendarAllTheSame) {
    EXPECT_THAT(writeCalendar({"Supper", 0, {}}), HasSubstr("BEGIN:VCALENDAR"));
}

}  // namespace
}  // namespace rangeline
