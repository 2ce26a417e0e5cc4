#include <gtest/gtest.h>

#include "text/quantities.h"
#include "text/supper.h"

namespace rangeline::test {
namespace {

Head headAt(const char* time, const char* zone, Units units) {
    Head head;
    head.servingTime = time;
    head.zone = zone;
    head.units = units;
    return head;
}

const Head chicago = headAt("2027-10-09T18:30", "America/Chicago", Units::UsCustomary);
const Head berlin = headAt("2027-10-09T18:30", "Europe/Berlin", Units::Metric);

TEST(Clock, TwelveHoursInUsUnitsElseTwentyFour) {
    EXPECT_EQ(Clock(chicago, american).at(minute(-80)), "5:10 PM");
    EXPECT_EQ(Clock(berlin, american).at(minute(-80)), "17:10");
    EXPECT_EQ(Clock(berlin, german).at(minute(-80)), "17:10");
    EXPECT_EQ(Clock(chicago, american).at(minute(-390)), "12:00 PM");
}

TEST(Clock, SecondsOnlyWhereThereAreAny) {
    EXPECT_EQ(Clock(chicago, american).at(Instant::atSeconds(-30)), "6:29:30 PM");
    EXPECT_EQ(Clock(berlin, german).at(Instant::atSeconds(-30)), "18:29:30");
}

TEST(Clock, TheDayWhereItIsAnother) {
    EXPECT_EQ(Clock(chicago, american).at(minute(-24 * 60)), "Fri 6:30 PM");
    EXPECT_EQ(Clock(berlin, american).at(minute(6 * 60)), "Sun 00:30");
    EXPECT_EQ(Clock(chicago, american).at(minute(-10 * 24 * 60)), "9/29/27 6:30 PM");
}

TEST(Clock, Spans) {
    const Clock clock(chicago, american);
    EXPECT_EQ(clock.span(minutes(-80, -35)), "from 5:10 to 5:55 PM");
    EXPECT_EQ(clock.span(minutes(-400, -380)), "from 11:50 AM to 12:10 PM");
    EXPECT_EQ(clock.span(minutes(-80, -80)), "at 5:10 PM");
    EXPECT_EQ(clock.span(minutes(320, 340)), "from 11:50 PM to Sun 12:10 AM");
    EXPECT_EQ(Clock(berlin, american).span(minutes(-80, -35)), "from 17:10 to 17:55");
}

TEST(Clock, Iso) {
    EXPECT_EQ(Clock(chicago, american).iso(minute(-80)), "2027-10-09T17:10:00-05:00");
    EXPECT_EQ(Clock(berlin, german).iso(Instant::serving()), "2027-10-09T18:30:00+02:00");
}

// Daylight saving ends in Chicago on 7 November 2027 at 2:00 (US rule: first Sunday in November).
TEST(Clock, CountsTrueHoursOverTheChangeOfTheClocks) {
    const Head head = headAt("2027-11-07T03:00", "America/Chicago", Units::UsCustomary);
    EXPECT_EQ(Clock(head, american).at(minute(-180)), "1:00 AM");
    EXPECT_EQ(Clock(head, american).iso(minute(-180)), "2027-11-07T01:00:00-05:00");
}

TEST(Clock, AServingTimeInTheSkippedHourIsStillATime) {
    const Head head = headAt("2027-03-14T02:30", "America/Chicago", Units::UsCustomary);
    EXPECT_TRUE(Clock(head, american).moment(Instant::serving()).isValid());
}

// In Lebanon the clocks go from midnight to one.
TEST(Clock, AServingTimeInAnHourSkippedAtMidnightStaysOnItsDay) {
    const Head head = headAt("2027-03-28T00:30", "Asia/Beirut", Units::Metric);
    EXPECT_EQ(Clock(head, american).moment(Instant::serving()).toUTC(),
              QDateTime(QDate(2027, 3, 27), QTime(22, 30), Qt::UTC));
}

TEST(Clock, AnUnknownZoneIsTakenAsUtc) {
    const Head head = headAt("2027-10-09T18:30", "Kitchen/Sink", Units::Metric);
    EXPECT_EQ(Clock(head, american).iso(Instant::serving()), "2027-10-09T18:30:00+00:00");
}

}  // namespace
}  // namespace rangeline::test
