#include "text/usual_units.h"

#include <gtest/gtest.h>

namespace rangeline::test {
namespace {

TEST(UsualUnits, AreThoseOfTheCountryNotOfTheLanguage) {
    EXPECT_EQ(usualUnits(QLocale(QLocale::English, QLocale::UnitedStates)), Units::UsCustomary);
    EXPECT_EQ(usualUnits(QLocale(QLocale::Spanish, QLocale::UnitedStates)), Units::UsCustomary);
    EXPECT_EQ(usualUnits(QLocale(QLocale::German, QLocale::Germany)), Units::Metric);
    // Miles on its roads, but grams and degrees Celsius in its kitchens (common practice).
    EXPECT_EQ(usualUnits(QLocale(QLocale::English, QLocale::UnitedKingdom)), Units::Metric);
}

TEST(UsualUnits, AreThoseOfTheSamplesWhereNoCountryIsKnown) {
    EXPECT_EQ(usualUnits(QLocale::c()), Units::UsCustomary);
}

}  // namespace
}  // namespace rangeline::test
