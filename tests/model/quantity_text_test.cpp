// The grammar of quantities in lesson files. Factors between units: inch 25.4 mm, °F against °C
// (NIST Special Publication 811, appendix B, from memory).

#include "model/quantity_text.h"

#include <gtest/gtest.h>

#include "base/random.h"

namespace rangeline {
namespace {

template <class T>
struct Row {
    const char* text;
    T value;
};

TEST(QuantityText, DurationsAreReadAsWritten) {
    const Row<Duration> rows[] = {
        {"0 min", Duration()},
        {"0 s", Duration()},
        {"-0 min", Duration()},
        {"90 s", Duration::seconds(90)},
        {"12 min", Duration::minutes(12)},
        {"80 min", Duration::minutes(80)},
        {"1 h 20 min", Duration::minutes(80)},
        {"1 h 30 s", Duration::seconds(3630)},
        {"2 min 5 s", Duration::seconds(125)},
        {"-5 min", Duration::minutes(-5)},
        {"-1 h 35 min", Duration::minutes(-95)},
        {"168 h", Duration::hours(168)},
    };
    for (const auto& row : rows) {
        const auto read = parseDuration(row.text);
        ASSERT_TRUE(read.ok()) << row.text;
        EXPECT_EQ(read.value(), row.value) << row.text;
    }
}

TEST(QuantityText, OtherDurationsAreRefused) {
    for (const char* text :
         {"",          " ",           "min",        "-",         "12min",  "12  min",
          " 12 min",   "12 min ",     "1.5 min",    "1,5 min",   "+5 min", "--5 min",
          "5 min 1 h", "5 min 5 min", "1 h -5 min", "1 h20 min", "١٢ min", "1234567890 min",
          "0x5 min",   "1e3 min",     "½ h",        "NaN min",   "inf s"}) {
        const auto read = parseDuration(text);
        ASSERT_FALSE(read.ok()) << text;
        EXPECT_EQ(read.error().figures.size(), 2U) << text;
    }
}

TEST(QuantityText, AnUnknownUnitIsNamedWithTheKnownOnes) {
    const auto noUnit = parseDuration("12");
    ASSERT_FALSE(noUnit.ok());
    EXPECT_EQ(noUnit.error(), (Fault{FaultCode::BadUnit, {}, {"", "h, min, s"}}));
    EXPECT_EQ(parseDuration("12 minutes").error().figures[0], "minutes");
    EXPECT_EQ(parseTemperature("425 K").error().figures[0], "K");
    EXPECT_EQ(parseLength("10 ft").error().figures[0], "ft");
    EXPECT_EQ(parseVolume("2 qt").error().figures[0], "qt");
    EXPECT_EQ(parsePower("2 kW").error().figures[0], "kW");
}

TEST(QuantityText, DurationsAreWrittenInTheLargestUnits) {
    EXPECT_EQ(toText(Duration()), "0 min");
    EXPECT_EQ(toText(Duration::seconds(59)), "59 s");
    EXPECT_EQ(toText(Duration::seconds(90)), "1 min 30 s");
    EXPECT_EQ(toText(Duration::minutes(60)), "1 h");
    EXPECT_EQ(toText(Duration::seconds(-3661)), "-1 h 1 min 1 s");
    EXPECT_EQ(toText(Instant::atMinutes(-95)), "-1 h 35 min");
}

TEST(QuantityText, TemperaturesAreReadAsWritten) {
    const Row<Temperature> rows[] = {
        {"425 °F", Temperature::fahrenheit(425)},
        {"425°F", Temperature::fahrenheit(425)},
        {"425 F", Temperature::fahrenheit(425)},
        {"220 °C", Temperature::celsius(220)},
        {"220C", Temperature::celsius(220)},
        {"73.9 °C", Temperature::tenthsCelsius(739)},
        {"-4.5 °F", Temperature::tenthsFahrenheit(-45)},
        {"0 °F", Temperature::fahrenheit(0)},
    };
    for (const auto& row : rows) {
        const auto read = parseTemperature(row.text);
        ASSERT_TRUE(read.ok()) << row.text;
        EXPECT_EQ(read.value(), row.value) << row.text;
    }
    for (const char* text : {"", "°F", "425", "425.25 °F", "425. °F", ".5 °F", "425 °  F", "hot"}) {
        EXPECT_FALSE(parseTemperature(text).ok()) << text;
    }
}

TEST(QuantityText, TemperaturesAreWrittenInTheWantedScaleWhereExact) {
    EXPECT_EQ(toText(Temperature::fahrenheit(425), Units::UsCustomary), "425 °F");
    EXPECT_EQ(toText(Temperature::fahrenheit(425), Units::Metric), "425 °F");
    EXPECT_EQ(toText(Temperature::fahrenheit(212), Units::Metric), "100 °C");
    EXPECT_EQ(toText(Temperature::celsius(220), Units::UsCustomary), "428 °F");
    EXPECT_EQ(toText(Temperature::tenthsCelsius(-5), Units::Metric), "-0.5 °C");
    EXPECT_EQ(toText(TemperatureDelta::fahrenheit(25), Units::Metric), "25 °F");
    EXPECT_EQ(toText(TemperatureDelta::celsius(10), Units::UsCustomary), "18 °F");
}

TEST(QuantityText, LengthsAreReadAsWritten) {
    const Row<Length> rows[] = {
        {"10 in", Length::inches(10)},
        {"10.5 in", Length::nanometres(266'700'000)},
        {"26 cm", Length::millimetres(260)},
        {"265 mm", Length::millimetres(265)},
        {"0.0625 in", Length::nanometres(1'587'500)},
        {"26.5 cm", Length::millimetres(265)},
    };
    for (const auto& row : rows) {
        const auto read = parseLength(row.text);
        ASSERT_TRUE(read.ok()) << row.text;
        EXPECT_EQ(read.value(), row.value) << row.text;
    }
    for (const char* text :
         {"", "10", "10\"", "10.00005 in", "1/2 in", "10 IN", "109999985 in", "-109999985 in"}) {
        EXPECT_FALSE(parseLength(text).ok()) << text;
    }
}

TEST(QuantityText, VolumesAndPowersAreReadAsWritten) {
    EXPECT_EQ(parseVolume("2500 mL").value(), 2500);
    EXPECT_EQ(parseVolume("2.5 L").value(), 2500);
    EXPECT_FALSE(parseVolume("-55944448.13 L").ok());
    EXPECT_FALSE(parseVolume("2.5 mL").ok());
    EXPECT_EQ(volumeText(2500), "2.5 L");
    EXPECT_EQ(volumeText(2510), "2510 mL");
    EXPECT_EQ(volumeText(900), "900 mL");
    EXPECT_EQ(parsePower("9000 Btu/h").value(), (Power{9000, Power::Unit::BtuPerHour}));
    EXPECT_EQ(parsePower("1800 W").value(), (Power{1800, Power::Unit::Watt}));
    EXPECT_FALSE(parsePower("1.8 W").ok());
}

TEST(QuantityText, AmountsAreReadAsWritten) {
    const Row<Amount> rows[] = {
        {"2", {Rational(2), Rational(2), ""}},
        {"3/4 cup", {Rational(3, 4), Rational(3, 4), "cup"}},
        {"1 1/2 tsp", {Rational(3, 2), Rational(3, 2), "tsp"}},
        {"0.5 lb", {Rational(1, 2), Rational(1, 2), "lb"}},
        {"2-3", {Rational(2), Rational(3), ""}},
        {"1 1/2-2 fl oz", {Rational(3, 2), Rational(2), "fl oz"}},
    };
    for (const auto& row : rows) {
        const auto read = parseAmount(row.text);
        ASSERT_TRUE(read.ok()) << row.text;
        EXPECT_EQ(read.value(), row.value) << row.text;
    }
    for (const char* text : {"", "cup", "1/0 cup", "1 1/", "2 ", "2-", "-2 cup", "2 3 cup", "½ cup",
                             "1.2345 cup", "99999999999 cup"}) {
        EXPECT_FALSE(parseAmount(text).ok()) << text;
    }
}

TEST(QuantityText, WhateverIsWrittenIsReadBackExactly) {
    Random random(7);
    for (int i = 0; i < 5000; ++i) {
        const auto units = random.chance(0.5) ? Units::Metric : Units::UsCustomary;
        const auto duration = Duration::seconds(random.between(-604'800, 604'800));
        EXPECT_EQ(parseDuration(toText(duration)).value(), duration);
        const auto celsius = Temperature::tenthsCelsius(random.between(-600, 10'000));
        EXPECT_EQ(parseTemperature(toText(celsius, units)).value(), celsius);
        const auto fahrenheit = Temperature::tenthsFahrenheit(random.between(-760, 10'000));
        EXPECT_EQ(parseTemperature(toText(fahrenheit, units)).value(), fahrenheit);
        const auto length = Length::nanometres(random.between(0, 10'000'000'000));
        EXPECT_EQ(parseLength(toText(length, units)).value(), length);
        const auto sixteenths = Length::nanometres(random.between(0, 1000) * 1'587'500);
        EXPECT_EQ(parseLength(toText(sixteenths, units)).value(), sixteenths);
        const std::int64_t millilitres = random.between(1, 1'000'000);
        EXPECT_EQ(parseVolume(volumeText(millilitres)).value(), millilitres);
        const Rational fraction(random.between(0, 100'000), random.between(1, 1000));
        EXPECT_EQ(parseRational(toText(fraction)).value(), fraction);
    }
}

}  // namespace
}  // namespace rangeline
