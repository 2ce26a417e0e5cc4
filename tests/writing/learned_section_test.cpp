// Times from the cooking log, offered beside those of the card.

#include <gtest/gtest.h>

#include <QApplication>
#include <QGroupBox>
#include <QPushButton>

#include "support/find_widget.h"
#include "writing/dish_changes.h"
#include "writing/dish_editor.h"

namespace rangeline::test {
namespace {

std::vector<Logging> nights(std::initializer_list<int> minutes, const std::string& cook) {
    std::vector<Logging> made;
    for (const int each : minutes) {
        made.push_back({cook + std::to_string(made.size()), cook, Duration::minutes(each)});
    }
    return made;
}

class LearnedTimes : public ::testing::Test {
  protected:
    LearnedTimes() : editor_(oneStep(), Units::UsCustomary) {
        editor_.show();
        auto* tree = findNamed<QTreeWidget>(editor_, "Components and steps");
        tree->setCurrentItem(tree->topLevelItem(0)->child(0));
        QApplication::processEvents();
    }
    static Dish oneStep() {
        Dish dish = newDish("Leeks");
        addStep(dish, {0, 0}, "Slice the leeks");
        return dish;
    }
    const Step& step() const { return editor_.dish().components[0].steps[0]; }
    void log(std::vector<Logging> loggings) {
        editor_.setLoggings({{step().id, std::move(loggings)}});
        QApplication::processEvents();
    }
    QPushButton* button(const QString& whose) {
        return findNamed<QPushButton>(editor_, QStringLiteral("Take the times of ") + whose);
    }

    DishEditor editor_;
};

TEST_F(LearnedTimes, ChangeNothingBeforeTheyAreTakenAndCanBeTakenBack) {
    const DurationRange before = step().time;
    log(nights({14, 10, 12}, "Ann"));
    ASSERT_NE(button("everyone"), nullptr);
    EXPECT_EQ(step().time, before);
    button("everyone")->click();
    QApplication::processEvents();
    EXPECT_EQ(step().time,
              (DurationRange{Duration::minutes(10), Duration::minutes(12), Duration::minutes(14)}));
    ASSERT_NE(button("everyone"), nullptr);
    EXPECT_FALSE(button("everyone")->isEnabled()) << "they are those of the card now";
    editor_.undo();
    EXPECT_EQ(step().time, before);
}

TEST_F(LearnedTimes, AreOfferedByCookWhereTheyDiffer) {
    std::vector<Logging> all = nights({10, 11, 12}, "Ann");
    for (const Logging& logging : nights({20, 21, 25}, "Bo")) {
        all.push_back(logging);
    }
    log(all);
    ASSERT_NE(button("Bo"), nullptr);
    button("Bo")->click();
    QApplication::processEvents();
    EXPECT_EQ(step().time.likely, Duration::minutes(21));
}

TEST_F(LearnedTimes, AreNotThereWhereTheLogTeachesNothing) {
    log(nights({10, 11}, "Ann"));
    EXPECT_EQ(button("everyone"), nullptr);
    log(nights({10, 11, 12}, "Ann"));
    EXPECT_NE(button("everyone"), nullptr);
    log({});
    EXPECT_EQ(button("everyone"), nullptr);
}

}  // namespace
}  // namespace rangeline::test
