#include "inspect/time_of_day.h"

#include <gtest/gtest.h>

namespace rangeline::test {
namespace {

const QLocale english(QLocale::English, QLocale::UnitedStates);

std::optional<QTime> twelve(const char* typed, QTime near = {17, 0}) {
    return timeOfDay(QString::fromUtf8(typed), english, true, near);
}

TEST(TimeOfDay, TypedInAnyUsualForm) {
    for (const char* typed : {"5:30 PM", "5:30pm", "5.30 p.m.", "5:30 p", "530pm", "530", "17:30",
                              "1730", "17h30", "17.30", " 5:30 PM "}) {
        EXPECT_EQ(twelve(typed), QTime(17, 30)) << typed;
    }
    EXPECT_EQ(twelve("5 pm"), QTime(17, 0));
    EXPECT_EQ(twelve("5:30:15 PM"), QTime(17, 30, 15));
}

TEST(TimeOfDay, NoonAndMidnight) {
    EXPECT_EQ(twelve("12:00 PM"), QTime(12, 0));
    EXPECT_EQ(twelve("12:00 AM"), QTime(0, 0));
    EXPECT_EQ(twelve("0:15"), QTime(0, 15));
}

TEST(TimeOfDay, WithoutAMarkItStaysInTheHalfOfTheDay) {
    EXPECT_EQ(twelve("8:15", {9, 0}), QTime(8, 15));
    EXPECT_EQ(twelve("8:15", {21, 0}), QTime(20, 15));
    EXPECT_EQ(twelve("08:15", {21, 0}), QTime(8, 15)) << "a leading nought counts to 24";
    EXPECT_EQ(timeOfDay("8:15", english, false, {21, 0}), QTime(8, 15));
}

TEST(TimeOfDay, TheLocalesOwnWords) {
    const QLocale japanese(QLocale::Japanese);
    EXPECT_EQ(timeOfDay("5:30 " + japanese.pmText(), japanese, true, {9, 0}), QTime(17, 30));
}

TEST(TimeOfDay, WhatIsNone) {
    for (const char* typed : {"", "soon", "25:00", "5:61", "17305", "5:30 xm", "-3"}) {
        EXPECT_EQ(twelve(typed), std::nullopt) << typed;
    }
}

}  // namespace
}  // namespace rangeline::test
