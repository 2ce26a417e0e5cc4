#include "safety/cooling.h"

#include <gtest/gtest.h>

#include <cmath>

namespace rangeline {
namespace {

/// Of a sphere the volume by the surface.
double sphere(double diameter) {
    return diameter / 6;
}

// Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed., example 5.1: the junction
// of a thermocouple, from 25 to 199 degrees C in gas of 200.
TEST(LumpedBody, ThermocoupleOfIncroperaExample51) {
    const LumpedBody junction{8500, 400, 20, 400, sphere(7.06e-4)};
    EXPECT_NEAR(timeConstant(junction), 1.0, 0.001);
    EXPECT_NEAR(biotNumber(junction), 0.0024, 0.0001);
    const auto seconds = secondsToReach(Temperature::celsius(25), Temperature::celsius(199),
                                        Temperature::celsius(200), timeConstant(junction));
    ASSERT_TRUE(seconds);
    EXPECT_NEAR(*seconds, 5.16, 0.01) << "the book rounds to 5.2";
}

// Cengel, Heat and Mass Transfer, example 4-1: 99 per cent of the difference after 10 s.
TEST(LumpedBody, ThermocoupleOfCengelExample41) {
    const LumpedBody junction{8500, 320, 35, 210, sphere(1e-3)};
    EXPECT_NEAR(biotNumber(junction), 0.001, 0.00001);
    EXPECT_NEAR(1 / timeConstant(junction), 0.462, 0.002) << "the book rounds on the way";
    const auto seconds = secondsToReach(Temperature::celsius(0), Temperature::celsius(99),
                                        Temperature::celsius(100), timeConstant(junction));
    ASSERT_TRUE(seconds);
    EXPECT_NEAR(*seconds, 10, 0.1);
}

// University of Oklahoma, a course's exercise on Newton's law of cooling: from 90 to 60 degrees C
// in one minute in a room of 25; at 40 after 2.369 minutes.
TEST(Cooling, ExerciseOnNewtonsLaw) {
    const auto at = [](std::int64_t degrees, double constant) {
        return secondsToReach(Temperature::celsius(90), Temperature::celsius(degrees),
                              Temperature::celsius(25), constant);
    };
    const double constant = 60 / *at(60, 1);
    EXPECT_NEAR(*at(40, constant) / 60, 2.369, 0.001);
}

// By hand: ln(105/20), ln(105/10) and ln(105/5) time constants.
TEST(Cooling, ComesNearTheRoomButDoesNotReachIt) {
    const auto above = [](std::int64_t degrees) {
        return secondsToReach(Temperature::fahrenheit(175), Temperature::fahrenheit(70 + degrees),
                              Temperature::fahrenheit(70), 1);
    };
    EXPECT_NEAR(*above(20), 1.66, 0.005);
    EXPECT_NEAR(*above(10), 2.35, 0.005);
    EXPECT_NEAR(*above(5), 3.04, 0.005);
    EXPECT_FALSE(above(0));
    EXPECT_FALSE(above(-5));
}

TEST(CoolingEstimate, ARackHalvesIt) {
    const auto lying = [](LyingFood how) {
        return estimateCooling(how, Length::millimetres(20), Temperature::celsius(80),
                               Temperature::celsius(25), Temperature::celsius(20));
    };
    const auto tray = lying(LyingFood::OnTray);
    const auto rack = lying(LyingFood::OnRack);
    ASSERT_TRUE(tray && rack);
    EXPECT_NEAR(static_cast<double>(tray->stillAir.inSeconds()),
                2 * static_cast<double>(rack->stillAir.inSeconds()), 60);
    EXPECT_LT(tray->movingAir, tray->stillAir);
    // 1000 * 3700 * 0.02 / 10 s times ln 12, by hand.
    EXPECT_EQ(tray->stillAir, Duration::minutes(306));
}

TEST(CoolingEstimate, AThickLayerIsBeyondWhatTheEstimateHoldsFor) {
    const auto layer = [](std::int64_t millimetres) {
        return estimateCooling(LyingFood::OnTray, Length::millimetres(millimetres),
                               Temperature::celsius(80), Temperature::celsius(25),
                               Temperature::celsius(20));
    };
    EXPECT_LE(layer(2)->biot, lumpedUpTo);
    EXPECT_GT(layer(20)->biot, lumpedUpTo);
}

TEST(CoolingEstimate, NothingWhereTheRoomIsTooWarm) {
    const auto inRoomOf = [](std::int64_t room) {
        return estimateCooling(LyingFood::OnTray, Length::millimetres(10), Temperature::celsius(80),
                               Temperature::celsius(25), Temperature::celsius(room));
    };
    EXPECT_TRUE(inRoomOf(24));
    EXPECT_FALSE(inRoomOf(25));
    EXPECT_FALSE(inRoomOf(90));
    EXPECT_FALSE(estimateCooling(LyingFood::OnTray, Length(), Temperature::celsius(80),
                                 Temperature::celsius(25), Temperature::celsius(20)));
}

}  // namespace
}  // namespace rangeline
