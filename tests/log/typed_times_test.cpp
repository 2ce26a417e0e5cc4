// Times of day as they are typed after class, and what they come to.

#include "log/typed_times.h"

#include <gtest/gtest.h>

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

const QLocale english(QLocale::English, QLocale::UnitedStates);

Clock servedAt(const char* local, const char* zone = "America/Chicago") {
    Head head;
    head.servingTime = local;
    head.zone = zone;
    return Clock(head, english);
}

TEST(TypedTimes, AreReadAsTheyAreWritten) {
    for (const char* text : {"18:05", "1805", "18.05", " 18 05 ", "6:05 pm", "6.05p", "605PM"}) {
        EXPECT_EQ(typedTime(text), (TypedTime{18 * 60 + 5, true})) << text;
    }
    EXPECT_EQ(typedTime("6:05"), (TypedTime{6 * 60 + 5, false}));
    EXPECT_EQ(typedTime("06:05"), (TypedTime{6 * 60 + 5, true}));
    EXPECT_EQ(typedTime("12:10 am"), (TypedTime{10, true}));
    EXPECT_EQ(typedTime("7"), (TypedTime{7 * 60, false}));
    for (const char* text : {"", "soon", "25:00", "18:75", "13 pm", "18:05:", "-3"}) {
        EXPECT_FALSE(typedTime(text)) << text;
    }
}

constexpr DurationRange usual{Duration::minutes(10), Duration::minutes(20), Duration::minutes(30)};

TEST(TypedTimes, OfTheHalfOfTheDayThatThePlanSays) {
    const Clock clock = servedAt("2027-10-09T19:00");
    const ReadTimes read = readTimes("6:05", "6:25", minutes(-60, -40), usual, clock);
    EXPECT_EQ(read.began, minute(-55));
    EXPECT_EQ(read.ended, minute(-35));
    EXPECT_EQ(read.took(), 20_min);
    EXPECT_EQ(read.doubt, TypedDoubt::None);
    EXPECT_FALSE(read.nextDay);
}

TEST(TypedTimes, ThatEndBeforeTheyBeginAreWrong) {
    const Clock clock = servedAt("2027-10-09T19:00");
    const ReadTimes read = readTimes("18:30", "18:10", minutes(-60, -40), usual, clock);
    EXPECT_EQ(read.doubt, TypedDoubt::EndsFirst);
    EXPECT_TRUE(isWrong(read.doubt));
}

TEST(TypedTimes, MayEndOnTheNextDay) {
    const Clock clock = servedAt("2027-10-10T00:30");
    const ReadTimes read = readTimes("23:50", "0:12", minutes(-40, -20), usual, clock);
    EXPECT_EQ(read.took(), 22_min);
    EXPECT_TRUE(read.nextDay);
    EXPECT_EQ(read.doubt, TypedDoubt::None);
}

TEST(TypedTimes, AreCountedOverTheHourThatDaylightSavingTakes) {
    const Clock clock = servedAt("2027-03-14T04:00");  // 2 to 3 does not happen that night
    const ReadTimes read = readTimes("1:50", "3:10", minutes(-70, -50), usual, clock);
    EXPECT_EQ(read.took(), 20_min);
}

TEST(TypedTimes, ThatAreUnlikelyAreDoubtedButTaken) {
    const Clock clock = servedAt("2027-10-09T19:00");
    const auto doubt = [&](const char* began, const char* ended) {
        const ReadTimes read = readTimes(began, ended, minutes(-60, -40), usual, clock);
        EXPECT_FALSE(isWrong(read.doubt));
        return read.doubt;
    };
    EXPECT_EQ(doubt("18:00", "19:10"), TypedDoubt::Long);
    EXPECT_EQ(doubt("18:00", "18:04"), TypedDoubt::Short);
    EXPECT_EQ(doubt("18:00", "18:00"), TypedDoubt::NoLength);
    EXPECT_EQ(doubt("15:30", "15:50"), TypedDoubt::FarAway);
}

TEST(TypedTimes, MayHaveGaps) {
    const Clock clock = servedAt("2027-10-09T19:00");
    const ReadTimes only = readTimes("", "18:21", minutes(-60, -40), usual, clock);
    EXPECT_FALSE(only.began);
    EXPECT_EQ(only.ended, minute(-39));
    EXPECT_FALSE(only.took());
    EXPECT_EQ(only.doubt, TypedDoubt::None);
    EXPECT_EQ(readTimes("x", "", minutes(-60, -40), usual, clock).doubt, TypedDoubt::NoTime);
}

}  // namespace
}  // namespace rangeline::test
