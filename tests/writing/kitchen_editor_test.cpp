#include "writing/kitchen_editor.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>

#include "book/judge.h"
#include "model/starting_kitchens.h"
#include "support/focus_names.h"

namespace rangeline::test {
namespace {

class Kitchens : public ::testing::Test {
  protected:
    void SetUp() override {
        editor_.show();
        QApplication::processEvents();
    }
    QTableWidget& table(const QString& name) { return *findNamed<QTableWidget>(editor_, name); }

    KitchenEditor editor_{startingKitchens().front().make(), Units::UsCustomary};
};

TEST_F(Kitchens, CellsChangeWhatTheyTellOf) {
    table("Burners").item(0, 1)->setText("14");
    table("Burners").item(0, 2)->setText("12000 Btu/h");
    table("Ovens").item(0, 4)->setText("12");
    table("Pans, boards, tools").item(2, 2)->setText("3");
    table("Cooks").item(0, 1)->setText("150");
    const Kitchen& kitchen = editor_.kitchen();
    EXPECT_EQ(kitchen.burners[0].widestVessel, Length::inches(14));
    EXPECT_EQ(kitchen.burners[0].power->amount, 12'000);
    EXPECT_EQ(kitchen.ovens[0].warmUpTo(Temperature::fahrenheit(350)), Duration::minutes(12));
    EXPECT_EQ(kitchen.wares[2].count, 3);
    EXPECT_EQ(kitchen.cooks[0].pacePercent, 150);
    EXPECT_FALSE(judgeKitchen(kitchen));
}

TEST_F(Kitchens, FieldsTellOfTheKitchenAsAWhole) {
    const auto write = [&](const QString& name, const QString& text) {
        auto* field = findNamed<QLineEdit>(editor_, name);
        ASSERT_NE(field, nullptr);
        field->setText(text);
        Q_EMIT field->editingFinished();
    };
    write("Width of the range", "24");
    write("One cook watches at most", "5");
    write("Temperature of the room", "95");
    EXPECT_EQ(editor_.kitchen().rangeWidth, Length::inches(24));
    EXPECT_EQ(editor_.kitchen().watchLimit, 5);
    EXPECT_EQ(editor_.kitchen().room, Temperature::fahrenheit(95));
    write("Temperature of the room", "hot");
    EXPECT_EQ(editor_.kitchen().room, Temperature::fahrenheit(95));
    write("Temperature of the room", "");
    EXPECT_FALSE(editor_.kitchen().room);
    editor_.undo();
    EXPECT_EQ(editor_.kitchen().room, Temperature::fahrenheit(95));
}

TEST_F(Kitchens, WhatCannotBeStaysAsItWas) {
    const Kitchen before = editor_.kitchen();
    table("Burners").item(0, 1)->setText("wide");
    table("Pans, boards, tools").item(0, 1)->setText("wheelbarrow");
    table("Pans, boards, tools").item(0, 2)->setText("0");
    EXPECT_EQ(editor_.kitchen(), before);
    EXPECT_EQ(table("Burners").item(0, 1)->text(), "12 in");
}

TEST_F(Kitchens, RowsComeAndGoAndCanBeTakenBack) {
    const Kitchen before = editor_.kitchen();
    for (QPushButton* button : editor_.findChildren<QPushButton*>()) {
        if (button->text().contains("One more")) {
            button->click();
        }
    }
    EXPECT_EQ(editor_.kitchen().burners.size(), before.burners.size() + 1);
    EXPECT_EQ(editor_.kitchen().cooks.size(), before.cooks.size() + 1);
    EXPECT_FALSE(judgeKitchen(editor_.kitchen()));
    for (int i = 0; i < 5; ++i) {
        editor_.undo();
    }
    EXPECT_EQ(editor_.kitchen(), before);
}

TEST_F(Kitchens, WhatTakesTheFocusHasAName) {
    expectNames(editor_);
}

TEST(StartingKitchens, AreFourThatCanBeKept) {
    EXPECT_EQ(startingKitchens().size(), 4U);
    for (const StartingKitchen& each : startingKitchens()) {
        const auto fault = judgeKitchen(each.make());
        EXPECT_FALSE(fault) << each.key << ": " << fault->place;
    }
}

}  // namespace
}  // namespace rangeline::test
