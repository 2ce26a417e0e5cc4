#include "timeline/time_scale.h"

#include <gmock/gmock.h>

namespace rangeline {
namespace {

using ::testing::ElementsAre;

Instant at(std::int64_t minutes) {
    return Instant::atMinutes(minutes);
}

std::vector<std::int64_t> minutesOf(const std::vector<Tick>& ticks, bool onlyLabelled = false) {
    std::vector<std::int64_t> minutes;
    for (const Tick& tick : ticks) {
        if (tick.labelled || !onlyLabelled) {
            minutes.push_back(tick.at.inSeconds() / 60);
        }
    }
    return minutes;
}

TEST(TimeScale, TimeToXAndBack) {
    const TimeScale scale(at(-60), 100, 2.5);
    EXPECT_DOUBLE_EQ(scale.xOf(at(-60)), 100);
    EXPECT_DOUBLE_EQ(scale.xOf(at(0)), 250);
    EXPECT_EQ(scale.timeAt(250), at(0));
    EXPECT_EQ(scale.timeAt(100 + 2.5 / 60 * 7), at(-60) + Duration::seconds(7));
    EXPECT_DOUBLE_EQ(scale.widthOf(Duration::seconds(30)), 1.25);
}

TEST(TimeScale, BarsThatTouchInTimeTouchOnTheDevice) {
    for (const double device : {1.0, 1.25, 1.5, 2.0, 10.0}) {
        const TimeScale scale(at(0), 3.3, 1.37, device);
        for (int minute = 0; minute < 50; ++minute) {
            const Extent left = scale.snapped(Interval{at(minute), at(minute + 1)});
            const Extent right = scale.snapped(Interval{at(minute + 1), at(minute + 2)});
            EXPECT_DOUBLE_EQ(left.end, right.begin);
            EXPECT_NEAR(left.begin * device, std::round(left.begin * device), 1e-9);
        }
    }
}

TEST(TimeScale, ShortBarsKeepOneDevicePixel) {
    const TimeScale scale(at(0), 0, 0.01, 2.0);
    EXPECT_DOUBLE_EQ(scale.snapped(Interval{at(0), at(1)}).width(), 0.5);
    EXPECT_DOUBLE_EQ(scale.snapped(Interval{at(1), at(1)}).width(), 0);
}

TEST(TimeScale, ZoomKeepsTheTimeUnderTheAnchor) {
    const TimeScale scale(at(-90), 20, 3);
    const TimeScale zoomed = scale.zoomed(1.7, 311);
    EXPECT_DOUBLE_EQ(zoomed.unitsPerMinute(), 5.1);
    EXPECT_EQ(zoomed.timeAt(311), scale.timeAt(311));
}

TEST(TickStep, SmallestKitchenStepThatIsWideEnough) {
    const auto minutes = [](double perMinute, double gap) {
        return tickStep(TimeScale(at(0), 0, perMinute), gap).inSeconds() / 60;
    };
    EXPECT_EQ(minutes(10, 10), 1);
    EXPECT_EQ(minutes(10, 11), 5);
    EXPECT_EQ(minutes(10, 51), 10);
    EXPECT_EQ(minutes(10, 101), 15);
    EXPECT_EQ(minutes(10, 151), 30);
    EXPECT_EQ(minutes(10, 301), 60);
    EXPECT_EQ(minutes(10, 601), 120);
    EXPECT_EQ(minutes(0.0001, 600), 1440);
}

TEST(Ticks, RoundClockTimesWhateverTheServingTime) {
    // Served at 18:37; one minute is 2 units, so lines every 10 minutes and labels every 30.
    const TimeScale scale(at(-40), 0, 2);
    const Duration clock = Duration::hours(18) + Duration::minutes(37);
    const std::vector<Tick> ticks = ticksIn(scale, {at(-40), at(3)}, clock, 20, 60);
    EXPECT_THAT(minutesOf(ticks), ElementsAre(-37, -27, -17, -7, 3));
    EXPECT_THAT(minutesOf(ticks, true), ElementsAre(-37, -7));
}

TEST(Ticks, LabelsAlwaysStandOnLines) {
    // Lines every 10 minutes: labels of at least 13 minutes cannot be every 15.
    const TimeScale scale(at(0), 0, 1);
    EXPECT_THAT(minutesOf(ticksIn(scale, {at(0), at(60)}, Duration(), 9, 13), true),
                ElementsAre(0, 30, 60));
}

TEST(Ticks, BothEndsOfTheWindowCount) {
    const TimeScale scale(at(0), 0, 1);
    EXPECT_THAT(minutesOf(ticksIn(scale, {at(-60), at(60)}, Duration(), 60, 60)),
                ElementsAre(-60, 0, 60));
    EXPECT_THAT(minutesOf(ticksIn(scale, {at(-59), at(-1)}, Duration(), 60, 60)), ElementsAre());
}

}  // namespace
}  // namespace rangeline
