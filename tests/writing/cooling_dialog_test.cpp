#include "writing/cooling_dialog.h"

#include <gtest/gtest.h>

#include <QPushButton>

#include "support/find_widget.h"

namespace rangeline::test {
namespace {

QString said(const CoolingDialog& dialog) {
    QString all;
    for (const QLabel* label : dialog.findChildren<QLabel*>()) {
        all += label->text() + QLatin1Char('\n');
    }
    return all;
}

bool mayUse(const CoolingDialog& dialog) {
    for (const QPushButton* button : dialog.findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("Use"))) {
            return button->isEnabled();
        }
    }
    return false;
}

// By hand: 3.7e6 J/(m3 K) * 0.002 m / 10 W/(m2 K) = 740 s, times ln((80 - 20) / (25 - 20)) = 2.485.
TEST(CoolingDialog, AThinLayerIsEstimatedAndMayBeUsed) {
    CoolingDialog dialog(Units::Metric, nullptr);
    findNamed<QLineEdit>(dialog, "How thick")->setText("2 mm");
    findNamed<QLineEdit>(dialog, "As hot as")->setText("80");
    findNamed<QLineEdit>(dialog, "Cooled to")->setText("25");
    findNamed<QLineEdit>(dialog, "In a room of")->setText("20");
    ASSERT_TRUE(dialog.estimate());
    EXPECT_EQ(dialog.estimate()->stillAir, Duration::minutes(31));
    EXPECT_TRUE(said(dialog).contains("31 min in still air"));
    EXPECT_TRUE(said(dialog).contains("Thin enough"));
    EXPECT_TRUE(mayUse(dialog));
}

TEST(CoolingDialog, BeginsWithALayerThatCools) {
    for (const Units units : {Units::UsCustomary, Units::Metric}) {
        EXPECT_TRUE(CoolingDialog(units, nullptr).estimate());
    }
}

TEST(CoolingDialog, AThickLayerIsToldToBeBeyondTheReckoning) {
    CoolingDialog dialog(Units::UsCustomary, nullptr);
    findNamed<QLineEdit>(dialog, "How thick")->setText("2 in");
    EXPECT_TRUE(said(dialog).contains("stays warm longer"));
}

TEST(CoolingDialog, WhatDoesNotCoolIsNotUsed) {
    CoolingDialog dialog(Units::Metric, nullptr);
    for (const char* text : {"", "warm", "21", "90"}) {
        findNamed<QLineEdit>(dialog, "Cooled to")->setText(text);
        EXPECT_FALSE(mayUse(dialog)) << text;
    }
}

}  // namespace
}  // namespace rangeline::test
