// What is written beside the form of a step: pans, attention, what it waits for, the picture.

#include "writing/step_pages.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPushButton>
#include <QTest>

#include "book/judge.h"
#include "support/focus_names.h"
#include "writing/dish_changes.h"
#include "writing/dish_editor.h"
#include "writing/graph_view.h"
#include "writing/text_table.h"
#include "writing/ties.h"

namespace rangeline::test {
namespace {

Dish threeSteps() {
    Dish dish = newDish("Leeks");
    for (const char* name : {"Slice the leeks", "Sweat the leeks", "Stir the sauce"}) {
        const StepId id = addStep(dish, {0, 99}, name);
        suggest(dish.components[0].steps.back(), {}, Units::UsCustomary);
    }
    return dish;
}

class Pages : public ::testing::Test {
  protected:
    void SetUp() override {
        editor_.show();
        chooseStep(2);
    }
    void chooseStep(int number) {
        auto* tree = findNamed<QTreeWidget>(editor_, "Components and steps");
        tree->setCurrentItem(tree->topLevelItem(0)->child(number));
        QApplication::processEvents();
    }
    void openPage(int number) {
        editor_.findChild<StepPages*>()->setCurrentIndex(number);
        QApplication::processEvents();
    }
    /// Types into the cell as one does, and leaves it by that key.
    void type(const QString& table, int line, int column, const QString& text,
              Qt::Key key = Qt::Key_Return) {
        auto* cells = findNamed<TextTable>(editor_, table);
        ASSERT_NE(cells, nullptr);
        cells->setFocus();
        cells->setCurrentCell(line, column);
        QTest::keyClick(cells->viewport(), Qt::Key_F2);
        auto* field = cells->findChild<QLineEdit*>();
        ASSERT_NE(field, nullptr);
        field->selectAll();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, key);
        QApplication::processEvents();
        QApplication::processEvents();
    }
    const Step& step(std::size_t number) { return editor_.dish().components[0].steps.at(number); }
    bool isSaid(const QString& words) {
        const auto* problems = editor_.findChild<ProblemList*>();
        if (!problems->findItems(words, Qt::MatchContains).isEmpty()) {
            return true;
        }
        const auto labels = editor_.findChildren<QLabel*>();
        return std::ranges::any_of(
            labels, [&](const QLabel* label) { return label->text().contains(words); });
    }

    DishEditor editor_{threeSteps(), Units::UsCustomary};
};

TEST_F(Pages, WaitsAreTypedLineByLine) {
    openPage(2);
    const QString table = "What the step waits for";
    type(table, 0, 2, "5");
    type(table, 0, 3, "20 min");
    type(table, 1, 0, "Slice the leeks");
    const std::vector<Tie> wanted{
        {step(1).id, true, false, Duration::minutes(5), Duration::minutes(20)},
        {step(0).id, true, false, {}, {}}};
    EXPECT_EQ(tiesOf(editor_.dish(), step(2).id), wanted);
    editor_.undo();
    EXPECT_EQ(tiesOf(editor_.dish(), step(2).id).size(), 1U);
}

TEST_F(Pages, WhatIsNotUnderstoodIsSaidAndStaysAndEscapeKeepsWhatWasTyped) {
    openPage(2);
    const QString table = "What the step waits for";
    const Dish before = editor_.dish();
    type(table, 0, 2, "a while");
    EXPECT_EQ(editor_.dish(), before);
    EXPECT_TRUE(isSaid("“a while” is not understood"));
    EXPECT_EQ(findNamed<TextTable>(editor_, table)->item(0, 2)->text(), "a while");
    type(table, 0, 2, "7", Qt::Key_Escape);
    EXPECT_TRUE(editor_.isVisible());
    EXPECT_EQ(tiesOf(editor_.dish(), step(2).id).at(0).least, Duration::minutes(7));
}

TEST_F(Pages, ALineIsTakenAwayWithDelete) {
    openPage(2);
    auto* table = findNamed<TextTable>(editor_, "What the step waits for");
    table->setCurrentCell(0, 0);
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_TRUE(step(2).uses.empty());
}

TEST_F(Pages, SeveralPansAndPartsOfAttentionAreTyped) {
    openPage(1);
    chooseStep(0);
    const QString pans = "Pans, boards and tools";
    const auto had = static_cast<int>(step(0).wares.size());
    type(pans, had, 0, "bowl");
    type(pans, had, 4, "2");
    ASSERT_EQ(step(0).wares.size(), static_cast<std::size_t>(had) + 1);
    EXPECT_EQ(step(0).wares.back().count, 2);
    const QString parts = "What it needs, one after the other";
    type(parts, 1, 0, "nobody");
    type(parts, 1, 1, "3");
    EXPECT_EQ(step(0).segments.back(), (Segment{Attention::Away, Duration::minutes(3), false}));
    EXPECT_FALSE(judgeDish(editor_.dish()));
}

TEST_F(Pages, AStepIsMovedByDroppingIt) {
    auto* tree = findNamed<QTreeWidget>(editor_, "Components and steps");
    const StepId last = step(2).id;
    const QRect first = tree->visualItemRect(tree->topLevelItem(0)->child(0));
    const auto dropAt = [&](QPoint at) {
        QMimeData data;
        QDropEvent drop(at, Qt::MoveAction, &data, Qt::LeftButton, {});
        // A drag that begins nowhere has no target yet: straight to where drops arrive.
        static_cast<QObject*>(editor_.findChild<DishOutline*>())
            ->eventFilter(tree->viewport(), &drop);
        QApplication::processEvents();
    };
    dropAt({first.center().x(), first.bottom() - 1});
    EXPECT_EQ(step(1).id, last);
    dropAt({first.center().x(), first.top() + 1});
    EXPECT_EQ(step(0).id, last);
    dropAt({first.center().x(), tree->viewport()->height() - 1});
    EXPECT_EQ(step(0).id, last) << "dropped on nothing it stays";
    editor_.undo();
    editor_.undo();
    EXPECT_EQ(step(2).id, last);
}

TEST_F(Pages, AnUnusualTimeIsSaidAndRefusesNothing) {
    openPage(0);
    chooseStep(1);
    EXPECT_FALSE(isSaid("usual for it"));
    auto* likely = findNamed<QLineEdit>(editor_, "Usually takes");
    likely->setFocus();
    likely->selectAll();
    QTest::keyClicks(likely, "25");
    QTest::keyClick(likely, Qt::Key_Return);
    EXPECT_TRUE(isSaid("“Sweat the leeks” takes 25 min; usual for it are 4 min to 10 min."));
    EXPECT_TRUE(findNamed<QPushButton>(editor_, "Keep in the book")->isEnabled());
}

TEST_F(Pages, TheSamePanIsOneGesture) {
    openPage(1);
    auto* button = findNamed<QPushButton>(editor_, "Goes on in the same pans as the step above");
    ASSERT_TRUE(button->isEnabled());
    button->click();
    EXPECT_EQ(step(2).wares.back().carriesOn, step(1).id);
    chooseStep(0);
    EXPECT_FALSE(button->isEnabled()) << "nothing is above the first";
}

TEST_F(Pages, CountersAndSinksAreTypedWithHowMuchOfThem) {
    openPage(1);
    const QString places = "Counter, shelf, sink and the like";
    type(places, 0, 0, "sink");
    type(places, 0, 1, "2");
    ASSERT_EQ(step(2).pools.size(), 1U);
    EXPECT_EQ(step(2).pools[0], (PoolNeed{PoolId{"sink"}, 2}));
    type(places, 0, 1, "none");
    EXPECT_TRUE(isSaid("“none” is not understood"));
    EXPECT_EQ(step(2).pools[0].amount, 2);
}

TEST_F(Pages, AWaitIsCountedFromTheEndsThatAreChosen) {
    openPage(2);
    const QString table = "What the step waits for";
    type(table, 1, 0, "Slice the leeks");
    findNamed<TextTable>(editor_, table)->item(1, 1)->setText({});
    QApplication::processEvents();
    type(table, 1, 5, "start");
    type(table, 1, 2, "10");
    const std::vector<Tie> ties = tiesOf(editor_.dish(), step(2).id);
    ASSERT_EQ(ties.size(), 2U);
    EXPECT_EQ(ties[1].fromEnd, StepEnd::Start);
    EXPECT_EQ(ties[1].toEnd, StepEnd::Start);
    EXPECT_EQ(ties[1].least, Duration::minutes(10));
}

TEST_F(Pages, AllergensAndDangersAreWrittenByName) {
    openPage(1);
    auto* allergens = findNamed<QLineEdit>(editor_, "Allergens");
    allergens->setFocus();
    QTest::keyClicks(allergens, "milk, egg");
    QTest::keyClick(allergens, Qt::Key_Return);
    EXPECT_EQ(step(2).hazards.allergens, (std::vector<std::string>{"milk", "eggs"}));
}

TEST_F(Pages, ALineIsDrawnByDraggingAndByKeysAndTakenAway) {
    openPage(2);
    auto* graph = editor_.findChild<GraphView*>();
    const auto at = [&](std::size_t number) {
        return graph->graph().nodes[number].box.center().toPoint();
    };
    QTest::mousePress(graph, Qt::LeftButton, {}, at(0));
    QTest::mouseMove(graph, at(1));
    QMouseEvent move(QEvent::MouseMove, QPointF(at(2)), graph->mapToGlobal(at(2)), Qt::NoButton,
                     Qt::LeftButton, {});
    QApplication::sendEvent(graph, &move);
    QTest::mouseRelease(graph, Qt::LeftButton, {}, at(2));
    const StepId first = step(0).id;
    const auto usesFirst = [&] {
        return std::ranges::find(step(2).uses, first, &Use::step) != step(2).uses.end();
    };
    EXPECT_TRUE(usesFirst());
    editor_.undo();
    EXPECT_FALSE(usesFirst());

    chooseStep(0);
    graph->setFocus();
    for (const Qt::Key key : {Qt::Key_L, Qt::Key_Right, Qt::Key_Right, Qt::Key_Return}) {
        QTest::keyClick(graph, key);
    }
    EXPECT_TRUE(usesFirst());
    chooseStep(0);
    for (int lines = 0; lines < 2 && usesFirst(); ++lines) {
        QTest::keyClick(graph, Qt::Key_Space);
        QTest::keyClick(graph, Qt::Key_Delete);
    }
    EXPECT_FALSE(usesFirst());
}

TEST_F(Pages, AComponentIsMadeSimplerInWordsAndByStepsThatFallAway) {
    openPage(3);
    const auto simpler = [&]() -> const auto& {
        return editor_.dish().components[0].simpler;
    };
    auto* how = findNamed<QLineEdit>(editor_, "How it is made simpler");
    auto* falls = findNamed<QListWidget>(editor_, "Steps that fall away");
    ASSERT_NE(how, nullptr);
    ASSERT_NE(falls, nullptr);
    falls->item(2)->setCheckState(Qt::Checked);
    ASSERT_TRUE(simpler());
    EXPECT_TRUE(isSaid("say in a few words how it is made simpler"));
    how->setText("melted butter, no sauce");
    Q_EMIT how->editingFinished();
    EXPECT_EQ(simpler()->how, "melted butter, no sauce");
    EXPECT_EQ(simpler()->without, std::vector{step(2).id});
    EXPECT_FALSE(judgeDish(editor_.dish()));
    falls->item(2)->setCheckState(Qt::Unchecked);
    EXPECT_TRUE(isSaid("tick at least one step"));
    how->clear();
    Q_EMIT how->editingFinished();
    EXPECT_FALSE(simpler());
}

TEST_F(Pages, WhatTakesTheFocusHasANameOnEveryPage) {
    for (int page = 0; page < 4; ++page) {
        openPage(page);
        expectNames(editor_);
    }
}

}  // namespace
}  // namespace rangeline::test
