// A dish written in the editor, by what a cook types and chooses.

#include "writing/dish_editor.h"

#include <gmock/gmock.h>

#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QMessageBox>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <QTimer>
#include <QTreeWidget>
#include <functional>

#include "book/judge.h"
#include "support/focus_names.h"
#include "text/words.h"
#include "writing/dish_changes.h"
#include "writing/step_form.h"

namespace rangeline::test {
namespace {

class Editor : public ::testing::Test {
  protected:
    void SetUp() override {
        editor_.show();
        QApplication::processEvents();
    }
    void type(const QString& field, const QString& text) {
        auto* edit = findNamed<QLineEdit>(editor_, field);
        ASSERT_NE(edit, nullptr) << field.toStdString();
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    void choose(const QString& list, const QString& text) {
        auto* box = findNamed<QComboBox>(editor_, list);
        ASSERT_NE(box, nullptr) << list.toStdString();
        const int row = box->findText(text);
        ASSERT_GE(row, 0) << text.toStdString();
        box->setCurrentIndex(row);
        Q_EMIT box->activated(row);
    }
    const Step& step(std::size_t number) { return editor_.dish().components[0].steps.at(number); }
    QPushButton& keep() { return *findNamed<QPushButton>(editor_, "Keep in the book"); }

    DishEditor editor_{newDish("New dish"), Units::UsCustomary};
};

TEST_F(Editor, StepsAreTypedOneAfterTheOtherAndSuggestWhatTheyNeed) {
    EXPECT_FALSE(keep().isEnabled());
    type("The next step", "Slice the leeks");
    type("The next step", "Sweat the leeks 8 to 10 minutes over low heat");
    type("The next step", "Bake them at 400 F for 20 minutes");
    ASSERT_EQ(editor_.dish().components[0].steps.size(), 3U);
    EXPECT_EQ(step(0).wares.at(0).kind, "board");
    EXPECT_EQ(step(1).technique, "sweat");
    EXPECT_EQ(std::get<BurnerHeat>(step(1).heat).level, "low");
    EXPECT_EQ(step(1).time.likely, Duration::minutes(9));
    EXPECT_EQ(std::get<OvenHeat>(step(2).heat).lowest, Temperature::fahrenheit(400));
    EXPECT_EQ(step(2).uses.at(0).step, step(1).id);
    EXPECT_TRUE(keep().isEnabled());
}

TEST_F(Editor, WhatIsTypedAsPlatingTakesAllThatLeadsNowhere) {
    type("The next step", "Slice the leeks");
    type("The next step", "Sweat the leeks 8 minutes");
    findNamed<QPushButton>(editor_, "New component")->click();
    type("The next step", "Whisk the eggs");
    findNamed<QPushButton>(editor_, "New component")->click();
    type("The next step", "Plate it, 3 minutes");
    const Step& plating = editor_.dish().components.at(2).steps.at(0);
    EXPECT_TRUE(plating.plates);
    ASSERT_EQ(plating.uses.size(), 2U);
    EXPECT_EQ(plating.uses[0].step, step(1).id);
    EXPECT_EQ(plating.uses[1].step, editor_.dish().components[1].steps[0].id);
}

TEST_F(Editor, ANewComponentIsNamedAtOnceAndItsFirstStepTypedNext) {
    findNamed<QPushButton>(editor_, "New component")->click();
    auto* name = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(name, nullptr);
    QTest::keyClicks(name, "Glaze");
    QTest::keyClick(name, Qt::Key_Return);
    EXPECT_EQ(editor_.dish().components.at(1).name, "Glaze");
    EXPECT_EQ(QApplication::focusWidget(), findNamed<QLineEdit>(editor_, "The next step"));
}

TEST_F(Editor, TheOnlyComponentGoesByTheNameOfTheDishUntilItHasItsOwn) {
    auto* name = findNamed<QLineEdit>(editor_, "Name of the dish");
    ASSERT_NE(name, nullptr);
    const auto write = [&](const QString& text) {
        name->setText(text);
        Q_EMIT name->editingFinished();
    };
    write("Leek plate");
    EXPECT_EQ(editor_.dish().components[0].name, "Leek plate");
    findNamed<QPushButton>(editor_, "New component")->click();
    write("Winter plate");
    EXPECT_EQ(editor_.dish().components[0].name, "Leek plate");
}

TEST_F(Editor, ANarrowWindowCutsOffNoField) {
    type("The next step", "Fry the leeks");
    editor_.resize(10, 10);
    editor_.show();
    QApplication::processEvents();
    const auto* form = editor_.findChild<StepForm*>();
    ASSERT_NE(form, nullptr);
    EXPECT_GE(form->viewport()->width(), form->widget()->minimumSizeHint().width());
}

TEST_F(Editor, FieldsChangeTheChosenStep) {
    type("The next step", "Season");
    type("Usually takes", "1 h 20");
    type("Hands at last", "2");
    choose("Meanwhile", "nobody");
    choose("Cooked", "in the oven");
    type("Oven, at least", "350");
    type("Oven, at most", "375 F");
    choose("In or on", "baking dish");
    type("Keeps at room temperature", "20");
    type("Pieces for each cover", "1 1/2");
    type("Width of a piece", "2 1/2");
    type("Volume for each cover", "300 ml");
    const Step& made = step(0);
    EXPECT_EQ(made.time.likely, Duration::minutes(80));
    EXPECT_EQ(made.time.longest, Duration::minutes(80));
    EXPECT_EQ(made.segments,
              (std::vector<Segment>{{Attention::Away, {}, true},
                                    {Attention::Hands, Duration::minutes(2), false}}));
    EXPECT_EQ(std::get<OvenHeat>(made.heat).highest, Temperature::fahrenheit(375));
    EXPECT_EQ(made.wares.at(0).kind, "baking-dish");
    EXPECT_EQ(made.after.atRoom, Duration::minutes(20));
    EXPECT_EQ(made.piecesPerCover, Rational(3, 2));
    EXPECT_EQ(made.pieceWidth, Length::nanometres(63'500'000));
    EXPECT_EQ(made.millilitresPerCover, 300);
    EXPECT_FALSE(judgeDish(editor_.dish()));
}

TEST_F(Editor, WhatCannotBeTakenIsSaidAndNothingIsKeptMeanwhile) {
    type("The next step", "Season");
    const Step before = step(0);
    type("Usually takes", "a while");
    EXPECT_EQ(step(0), before);
    EXPECT_FALSE(keep().isEnabled());
    type("Usually takes", "7");
    EXPECT_TRUE(keep().isEnabled());
}

TEST_F(Editor, ATimeForEachPieceAsksForThePieces) {
    type("The next step", "Slice the leeks");
    choose("The time is for", "each piece");
    EXPECT_FALSE(keep().isEnabled());
    type("Pieces for each cover", "2");
    choose("The time is for", "each piece");
    EXPECT_TRUE(keep().isEnabled());
    EXPECT_EQ(step(0).timePer, TimePer::Piece);
}

TEST_F(Editor, AProblemIsSaidWithItsStep) {
    type("The next step", "Fry the leeks");
    choose("In or on", "nothing");
    EXPECT_FALSE(keep().isEnabled());
    auto* problems = editor_.findChild<ProblemList*>();
    ASSERT_EQ(problems->count(), 1);
    EXPECT_TRUE(problems->item(0)->text().startsWith("“Fry the leeks”: it is on a burner"));
}

TEST_F(Editor, WhatIsDoneInTheSamePanGoesOnInThatOfTheStepAbove) {
    type("The next step", "Sear the leeks in the pot 5 minutes");
    type("The next step", "Deglaze with wine in the same pot 2 minutes");
    ASSERT_EQ(step(1).wares.size(), 1U);
    EXPECT_EQ(step(1).wares[0].kind, "pot");
    EXPECT_EQ(step(1).wares[0].carriesOn, step(0).id);
    EXPECT_FALSE(judgeDish(editor_.dish()));
}

TEST_F(Editor, ADishThatNeverReachesThePlateIsRemarkedOnAndMayBeKept) {
    type("The next step", "Slice the leeks");
    auto* problems = editor_.findChild<ProblemList*>();
    ASSERT_EQ(problems->count(), 1);
    EXPECT_TRUE(problems->item(0)->text().contains("Nothing ends on the plate yet"));
    EXPECT_TRUE(keep().isEnabled());
    type("The next step", "Plate the leeks");
    EXPECT_EQ(problems->count(), 0);
}

TEST_F(Editor, WhatKeepsHotButDoesNotWaitHotIsRemarkedOn) {
    type("The next step", "Mash the leeks");
    type("The next step", "Plate them");
    auto* tree = findNamed<QTreeWidget>(editor_, "Components and steps");
    tree->setCurrentItem(tree->topLevelItem(0)->child(0));
    auto* problems = editor_.findChild<ProblemList*>();
    type("Keeps hot", "40 min");
    ASSERT_EQ(problems->count(), 1);
    EXPECT_TRUE(problems->item(0)->text().startsWith("“Mash the leeks” keeps hot only so long"));
    EXPECT_TRUE(keep().isEnabled());
    type("Keeps at room temperature", "20 min");
    EXPECT_EQ(problems->count(), 0);
}

TEST_F(Editor, WhatGoesIntoAStepIsInViewWhenItIsChosen) {
    for (int i = 1; i <= 12; ++i) {
        type("The next step", QString("Slice leek %1").arg(i));
    }
    auto* tree = findNamed<QTreeWidget>(editor_, "Components and steps");
    auto* uses = findNamed<QListWidget>(editor_, "What goes into it");
    for (const int number : {11, 1}) {
        tree->setCurrentItem(tree->topLevelItem(0)->child(number));
        QApplication::processEvents();
        const auto ticked = uses->findItems(QString("Slice leek %1").arg(number), Qt::MatchExactly);
        ASSERT_EQ(ticked.size(), 1);
        EXPECT_EQ(ticked[0]->checkState(), Qt::Checked);
        EXPECT_TRUE(uses->viewport()->rect().contains(uses->visualItemRect(ticked[0])));
    }
}

TEST_F(Editor, AHeatTypedInFullIsNotLengthenedToAnotherThatBeginsLikeIt) {
    type("The next step", "Fry the leeks");
    auto* level = findNamed<QComboBox>(editor_, "Heat of the burner");
    ASSERT_NE(level, nullptr);
    level->setFocus();
    level->lineEdit()->selectAll();
    QTest::keyClicks(level->lineEdit(), "medium");
    QTest::keyClick(level->lineEdit(), Qt::Key_Return);
    EXPECT_EQ(std::get<BurnerHeat>(step(0).heat).level, "medium");
}

TEST_F(Editor, AllProblemsAreListedMarkedAndLeadToTheirField) {
    type("The next step", "Fry the leeks");
    choose("In or on", "nothing");
    type("The next step", "Fry the onions");
    choose("In or on", "nothing");
    type("The next step", "Serve");
    auto* problems = editor_.findChild<ProblemList*>();
    ASSERT_EQ(problems->count(), 2);
    const int high = problems->height();
    auto* tree = findNamed<QTreeWidget>(editor_, "Components and steps");
    EXPECT_FALSE(tree->topLevelItem(0)->child(0)->icon(0).isNull());
    EXPECT_TRUE(tree->topLevelItem(0)->child(2)->icon(0).isNull());
    problems->setCurrentRow(0);
    QTest::keyClick(problems, Qt::Key_Return);
    auto* pan = findNamed<QComboBox>(editor_, "In or on");
    EXPECT_TRUE(pan->hasFocus());
    EXPECT_EQ(tree->currentItem()->text(0), "Fry the leeks");
    EXPECT_TRUE(pan->accessibleDescription().contains("needs a pan"));
    choose("In or on", "skillet");
    EXPECT_EQ(problems->count(), 1);
    EXPECT_EQ(problems->height(), high) << "nothing jumps";
    EXPECT_TRUE(pan->accessibleDescription().isEmpty());
}

TEST_F(Editor, WhatWasTakenBackCanBeBroughtAgainUntilTheNextChange) {
    type("The next step", "Season");
    type("The next step", "Serve");
    const Dish written = editor_.dish();
    editor_.undo();
    editor_.undo();
    editor_.redo();
    editor_.redo();
    EXPECT_EQ(editor_.dish(), written);
    editor_.undo();
    type("The next step", "Rest");
    const Dish other = editor_.dish();
    editor_.redo();
    EXPECT_EQ(editor_.dish(), other);
}

TEST_F(Editor, WhatWaitsHotInAnOvenGetsAnOvenAndWhatWaitsColdAShelf) {
    type("The next step", "Roast the squash");
    choose("Waits", storageText(Storage::HotInOven));
    ASSERT_TRUE(step(0).after.holdingHeat);
    EXPECT_TRUE(keep().isEnabled());
    type("Oven that keeps it hot, at least", "150");
    EXPECT_EQ(step(0).after.holdingHeat->lowest, Temperature::fahrenheit(150));
    choose("Waits", storageText(Storage::Cold));
    EXPECT_FALSE(step(0).after.holdingHeat);
    choose("What it takes up while it waits", "fridge shelf");
    EXPECT_EQ(step(0).after.place, (PoolNeed{PoolId{"fridge-shelf"}, 1}));
    EXPECT_TRUE(keep().isEnabled());
}

TEST_F(Editor, AStepOfABurnerSaysHowStrongItMustBe) {
    type("The next step", "Sear the chops");
    type("Least power of the burner", "9000 Btu/h");
    const auto power = std::get<BurnerHeat>(step(0).heat).leastPower;
    ASSERT_TRUE(power);
    EXPECT_EQ(power->amount, 9000);
    type("Least power of the burner", "strong");
    EXPECT_FALSE(keep().isEnabled());
    EXPECT_EQ(std::get<BurnerHeat>(step(0).heat).leastPower, power);
    auto* field = findNamed<QLineEdit>(editor_, "Least power of the burner");
    field->clear();
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_FALSE(std::get<BurnerHeat>(step(0).heat).leastPower);
}

TEST_F(Editor, AStepMayBeThereOnlyWhereAnotherWasDoneBefore) {
    type("The next step", "Roast the squash");
    type("The next step", "Warm it up again");
    choose("Only where this step was done before", "Roast the squash");
    EXPECT_EQ(step(1).onlyIfAhead, step(0).id);
    choose("Only where this step was done before", "always");
    EXPECT_FALSE(step(1).onlyIfAhead);
}

TEST_F(Editor, ADishSaysHowLongItsPlatesMayWait) {
    type("Plates may wait", "3 min");
    EXPECT_EQ(editor_.dish().platesHold, Duration::minutes(3));
    type("Plates may wait", "a little");
    EXPECT_EQ(editor_.dish().platesHold, Duration::minutes(3));
    EXPECT_FALSE(keep().isEnabled());
}

TEST_F(Editor, AllergensThatANameSuggestsAreNotedOnlyWhereTheyAreAccepted) {
    auto* note = findNamed<QPushButton>(editor_, "Note the suggested allergens");
    auto* leave = findNamed<QPushButton>(editor_, "Leave the suggested allergens out");
    type("The next ingredient", "2 tbsp butter");
    EXPECT_TRUE(note->isVisible());
    EXPECT_THAT(editor_.dish().components[0].ingredients.at(0).allergens, testing::IsEmpty());
    note->click();
    EXPECT_THAT(editor_.dish().components[0].ingredients.at(0).allergens,
                testing::ElementsAre("milk"));
    EXPECT_FALSE(note->isVisible());
    type("The next ingredient", "1 cup flour");
    EXPECT_TRUE(leave->isVisible());
    leave->click();
    EXPECT_FALSE(leave->isVisible());
    EXPECT_THAT(editor_.dish().components[0].ingredients.at(1).allergens, testing::IsEmpty());
}

TEST_F(Editor, IngredientsAreTypedAsLines) {
    type("The next ingredient", "2 tbsp butter, diced");
    type("The next ingredient", "3 large leeks");
    const auto ingredient = [&](std::size_t number) {
        return editor_.dish().components[0].ingredients.at(number);
    };
    EXPECT_EQ(ingredient(0).cut, "diced");
    EXPECT_EQ(ingredient(1).note, "large");
    auto* table = findNamed<QTableWidget>(editor_, "Ingredients");
    table->item(0, 0)->setText("1/2 cup");
    QApplication::processEvents();
    table->item(0, 4)->setText("milk");
    QApplication::processEvents();
    EXPECT_EQ(ingredient(0).amount->unit, "cup");
    EXPECT_THAT(ingredient(0).allergens, testing::ElementsAre("milk"));
}

TEST_F(Editor, TheNameOfAnIngredientHasRoomHoweverNarrowItIs) {
    auto* table = findNamed<QTableWidget>(editor_, "Ingredients");
    const int letters = 14 * table->fontMetrics().averageCharWidth();
    for (const int width : {1600, 700}) {
        editor_.resize(width, 700);
        editor_.show();
        QApplication::processEvents();
        EXPECT_GE(table->columnWidth(1), letters) << width;
        EXPECT_GE(table->horizontalHeader()->length(), table->viewport()->width()) << width;
    }
}

TEST_F(Editor, WhatCannotBeTakenHoldsNothingElseBackAndStaysAsItWasTyped) {
    type("The next step", "Season");
    type("Usually takes", "a while");
    type("Keeps at room temperature", "20");
    type("The next ingredient", "salt");
    EXPECT_EQ(step(0).after.atRoom, Duration::minutes(20));
    EXPECT_EQ(findNamed<QLineEdit>(editor_, "Usually takes")->text(), "a while");
    EXPECT_FALSE(keep().isEnabled());
    editor_.undo();
    EXPECT_NE(findNamed<QLineEdit>(editor_, "Usually takes")->text(), "a while");
    EXPECT_TRUE(keep().isEnabled());
}

TEST_F(Editor, FiguresThatAreOnlyShownRoundedAreNotRounded) {
    DishEditor metric(newDish("New dish"), Units::Metric);
    Dish dish = newDish("Thighs");
    addStep(dish, {0, 0}, "Roast");
    Step& roast = dish.components[0].steps[0];
    roast.hazards.target = Temperature::fahrenheit(160);
    roast.pieceWidth = Length::inches(3);
    roast.piecesPerCover = Rational(1);
    roast.wares = {WareNeed{"sheet", {}, {}, 1, {}, false}};
    metric.goOnWith(dish);
    metric.show();
    findNamed<QTreeWidget>(metric, "Components and steps")
        ->setCurrentItem(
            findNamed<QTreeWidget>(metric, "Components and steps")->topLevelItem(0)->child(0));
    auto* takes = findNamed<QLineEdit>(metric, "Usually takes");
    takes->setFocus();
    takes->selectAll();
    QTest::keyClicks(takes, "50\r");
    const Step& made = metric.dish().components[0].steps[0];
    EXPECT_EQ(made.time.likely, Duration::minutes(50));
    EXPECT_EQ(made.hazards.target, roast.hazards.target);
    EXPECT_EQ(made.pieceWidth, roast.pieceWidth);
}

/// Presses that button of the question that is asked meanwhile; whether there was one.
bool answered(const QString& button, const std::function<void()>& how) {
    bool asked = false;
    QTimer::singleShot(0, [&] {
        if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
            asked = true;
            for (QAbstractButton* one : box->buttons()) {
                if (one->text().remove(u'&') == button) {
                    one->click();
                }
            }
        }
    });
    how();
    QApplication::processEvents();
    return asked;
}

TEST_F(Editor, LeavingAsksWhereALineIsStillBeingTyped) {
    for (const char* line : {"The next step", "The next ingredient", "Each cover gets"}) {
        editor_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&editor_));
        auto* edit = findNamed<QLineEdit>(editor_, line);
        edit->setFocus();
        QTest::keyClicks(edit, "one leek");
        EXPECT_TRUE(answered("Go on writing", [this] { editor_.reject(); })) << line;
        EXPECT_TRUE(editor_.isVisible()) << line;
        while (!(editor_.dish() == newDish("New dish"))) {
            editor_.undo();
        }
    }
    EXPECT_FALSE(answered("Go on writing", [this] { editor_.reject(); }));
    EXPECT_FALSE(editor_.isVisible());
}

TEST_F(Editor, ACellTypedBeforeAnotherComponentIsChosenStaysWithItsOwn) {
    type("The next step", "Season");
    type("The next ingredient", "2 leeks");
    auto* tree = findNamed<QTreeWidget>(editor_, "Components and steps");
    findNamed<QPushButton>(editor_, "New component")->click();
    type("The next step", "Whisk");
    type("The next ingredient", "3 eggs");
    tree->setCurrentItem(tree->topLevelItem(0));
    auto* table = findNamed<QTableWidget>(editor_, "Ingredients");
    ASSERT_EQ(table->item(0, 1)->text(), "leeks");
    table->item(0, 1)->setText("onions");
    tree->setCurrentItem(tree->topLevelItem(1));
    QApplication::processEvents();
    EXPECT_EQ(editor_.dish().components[0].ingredients.at(0).name, "onions");
    EXPECT_EQ(editor_.dish().components[1].ingredients.at(0).name, "eggs");
}

TEST_F(Editor, TheFirstEscapeGivesUpOnlyTheLineInHand) {
    for (const char* line : {"The next step", "The next ingredient"}) {
        editor_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&editor_));
        auto* edit = findNamed<QLineEdit>(editor_, line);
        edit->setFocus();
        QTest::keyClicks(edit, "2 lb potat");
        QTest::keyClick(edit, Qt::Key_Escape);
        EXPECT_TRUE(editor_.isVisible());
        EXPECT_EQ(edit->text(), "");
    }
    EXPECT_EQ(editor_.dish(), newDish("New dish"));
    QTest::keyClick(&editor_, Qt::Key_Escape);
    EXPECT_FALSE(editor_.isVisible());
}

TEST_F(Editor, KeepingTakesTheLineThatIsStillBeingTyped) {
    type("The next step", "Plate the leeks");
    auto* gets = findNamed<QLineEdit>(editor_, "Each cover gets");
    gets->setFocus();
    QTest::keyClicks(gets, "one leek");
    editor_.accept();
    EXPECT_FALSE(editor_.isVisible());
    EXPECT_EQ(editor_.dish().perCover, "one leek");
}

TEST_F(Editor, UndoKeysTakeBackTheStepWhereTheLineHasNothingToTakeBack) {
    type("The next step", "Season");
    auto* next = findNamed<QLineEdit>(editor_, "The next step");
    next->setFocus();
    QTest::keyClick(next, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(editor_.dish().components[0].steps.empty());
    QTest::keyClicks(next, "Chop");
    QTest::keyClick(next, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(next->text(), "") << "the line's own";
}

TEST_F(Editor, EveryChangeCanBeTakenBack) {
    const Dish before = editor_.dish();
    type("The next step", "Season");
    type("Usually takes", "7");
    type("The next ingredient", "salt");
    for (int i = 0; i < 3; ++i) {
        editor_.undo();
    }
    EXPECT_EQ(editor_.dish(), before);
    editor_.undo();
    EXPECT_EQ(editor_.dish(), before);
}

TEST_F(Editor, EachKeyWithAltHasOneMeaning) {
    QStringList letters;
    const auto add = [&letters](const QString& text) {
        if (const QKeySequence key = QKeySequence::mnemonic(text); !key.isEmpty()) {
            letters << key.toString();
        }
    };
    for (const QLabel* label : editor_.findChildren<QLabel*>()) {
        if (label->buddy() != nullptr) {
            add(label->text());
        }
    }
    for (const QAbstractButton* button : editor_.findChildren<QAbstractButton*>()) {
        add(button->text());
    }
    for (const QTabBar* tabs : editor_.findChildren<QTabBar*>()) {
        for (int tab = 0; tab < tabs->count(); ++tab) {
            add(tabs->tabText(tab));
        }
    }
    EXPECT_GT(letters.size(), 10);
    letters.sort();
    for (qsizetype i = 1; i < letters.size(); ++i) {
        EXPECT_NE(letters[i - 1], letters[i]);
    }
}

TEST_F(Editor, WhatTakesTheFocusHasAName) {
    type("The next step", "Season");
    expectNames(editor_);
}

}  // namespace
}  // namespace rangeline::test
