#include "text/quantities.h"

#include <gtest/gtest.h>

#include "text/supper.h"

namespace rangeline::test {
namespace {

TEST(Quantities, Durations) {
    EXPECT_EQ(durationText(80_min, american), "1 h 20 min");
    EXPECT_EQ(durationText(12_min, american), "12 min");
    EXPECT_EQ(durationText(30_s, american), "30 s");
    EXPECT_EQ(durationText(90_s, american), "1 min 30 s");
    EXPECT_EQ(durationText(2_h, american), "2 h");
    EXPECT_EQ(durationText(Duration(), american), "0 min");
    EXPECT_EQ(durationText(-5_min, american), "-5 min");
    EXPECT_EQ(durationText(Duration::hours(1000), german), "1.000 h");
}

TEST(Quantities, TemperaturesInTheLessonsUnits) {
    EXPECT_EQ(temperatureText(425_F, Units::UsCustomary, american), "425 °F");
    EXPECT_EQ(temperatureText(220_C, Units::Metric, american), "220 °C");
    // 350 °F = 176.7 °C, 135 °F = 57.2 °C, 165 °F = 73.9 °C (GNU units 2.22).
    EXPECT_EQ(temperatureText(350_F, Units::Metric, american), "176.7 °C");
    EXPECT_EQ(temperatureText(135_F, Units::Metric, american), "57.2 °C");
    EXPECT_EQ(temperatureText(165_F, Units::Metric, american), "73.9 °C");
    EXPECT_EQ(temperatureText(350_F, Units::Metric, german), "176,7 °C");
    EXPECT_EQ(temperatureText(63_C, Units::UsCustomary, american), "145.4 °F");
}

TEST(Quantities, Lengths) {
    EXPECT_EQ(lengthText(Length::inches(12), Units::UsCustomary, american), "12 in");
    EXPECT_EQ(
        lengthText(Length::nanometres(11 * 25'400'000 + 12'700'000), Units::UsCustomary, american),
        "11½ in");
    EXPECT_EQ(lengthText(Length::nanometres(3 * 1'587'500), Units::UsCustomary, american),
              "3⁄16 in");
    EXPECT_EQ(lengthText(Length::millimetres(280), Units::Metric, american), "28 cm");
    EXPECT_EQ(lengthText(Length::millimetres(265), Units::Metric, german), "26,5 cm");
    EXPECT_EQ(lengthText(Length::millimetres(6), Units::Metric, american), "6 mm");
}

TEST(Quantities, Volumes) {
    EXPECT_EQ(volumeText(2400, Units::Metric, american), "2.4 l");
    EXPECT_EQ(volumeText(750, Units::Metric, american), "750 ml");
    // 3 US quarts are 2839 ml (GNU units 2.22).
    EXPECT_EQ(volumeText(2839, Units::UsCustomary, american), "3 qt");
}

TEST(Quantities, Fractions) {
    EXPECT_EQ(fractionText({1, 2}, american), "½");
    EXPECT_EQ(fractionText({7, 4}, american), "1¾");
    EXPECT_EQ(fractionText({1, 3}, american), "⅓");
    EXPECT_EQ(fractionText({19, 7}, american), "2 5⁄7");
    EXPECT_EQ(fractionText(4, american), "4");
    EXPECT_EQ(fractionText(0, american), "0");
    EXPECT_EQ(fractionText({-3, 2}, american), "-1½");
    EXPECT_EQ(fractionText({7, 100}, american), "0.07");
    EXPECT_EQ(fractionText({7, 100}, german), "0,07");
}

TEST(Quantities, Amounts) {
    EXPECT_EQ(amountText({{3, 2}, {3, 2}, "tsp"}, american), "1½ tsp");
    EXPECT_EQ(amountText({2, 3, "tbsp"}, american), "2–3 tbsp");
    EXPECT_EQ(amountText({{3, 2}, {3, 2}, "kg"}, american), "1.5 kg");
    EXPECT_EQ(amountText({{3, 2}, {3, 2}, "kg"}, german), "1,5 kg");
    EXPECT_EQ(amountText({8, 8, ""}, american), "8");
}

TEST(Quantities, AnAmountThatIsNearOneIsToldAsScantOrGenerous) {
    const auto told = [](Nearness nearness) {
        return measuredText(KitchenAmount{{{1, 4}, {1, 4}, "cup"}, nearness}, QLocale("en_US"));
    };
    EXPECT_EQ(told(Nearness::Close), QString("¼ cup"));
    EXPECT_EQ(told(Nearness::Scant), QString("a scant ¼ cup"));
    EXPECT_EQ(told(Nearness::Generous), QString("a generous ¼ cup"));
    EXPECT_EQ(told(Nearness::LessThan), QString("less than ¼ cup"));
}

// 1 oz = 28.349523125 g (NIST Handbook 44): 80 g are 2.82 oz, 500 g are 17.6 oz.
TEST(Quantities, AWeightIsToldAsItIsWeighedInTheKitchensUnits) {
    const QLocale us("en_US");
    EXPECT_EQ(weightText({80, 80, {}}, Units::Metric, us), QString("80 g"));
    EXPECT_EQ(weightText({80, 80, {}}, Units::UsCustomary, us), QString("2¾ oz"));
    EXPECT_EQ(weightText({500, 500, {}}, Units::UsCustomary, us), QString("1⅛ lb"));
    EXPECT_EQ(weightText({80, 120, {}}, Units::Metric, us), QString("80–120 g"));
}

}  // namespace
}  // namespace rangeline::test
