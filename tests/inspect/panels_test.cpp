#include <gmock/gmock.h>

#include <QAbstractButton>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QSpinBox>
#include <QTest>
#include <algorithm>

#include "inspect/findings_panel.h"
#include "inspect/lesson_head_dialog.h"
#include "inspect/shelf_panel.h"
#include "inspect/small_kitchen.h"
#include "inspect/step_inspector.h"
#include "support/find_widget.h"
#include "text/quantities.h"

namespace rangeline::test {
namespace {

class Panels : public ::testing::Test {
  protected:
    void open(const Lesson& lesson) { document_.setLesson(lesson); }
    const Placement& placed(const std::string& step) const {
        return document_.lesson().placements.at(key(step));
    }
    static void click(QWidget& root, const QString& name) {
        auto* button = findNamed<QAbstractButton>(root, name);
        ASSERT_NE(button, nullptr) << name.toStdString();
        button->click();
    }

    /// In place of what the field holds.
    static void type(QWidget& root, const QString& name, const QString& text) {
        auto* field = findNamed<QLineEdit>(root, name);
        ASSERT_NE(field, nullptr) << name.toStdString();
        field->selectAll();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
    }

    LessonDocument document_;
    QLocale locale_{QLocale::English, QLocale::UnitedStates};
};

// ---- the chosen step ----

TEST_F(Panels, StartButtonsMoveByTheGrainEachAStepOfUndo) {
    open(smallKitchen().lesson);
    StepInspector inspector(document_, locale_);
    inspector.setKey(key("sear"));
    click(inspector, "Start later");
    click(inspector, "Start later");
    EXPECT_EQ(placed("sear").start, minute(-28));
    document_.undoStack().undo();
    EXPECT_EQ(placed("sear").start, minute(-29));
    click(inspector, "Start earlier");
    EXPECT_EQ(placed("sear").start, minute(-30));
}

TEST_F(Panels, AStepThatCollidesHasNoMinutesToSpareToSpeakOf) {
    LessonBuilder builder = smallKitchen();
    builder.place("garnish", -22);  // ann sears until -20
    assign(builder.lesson.placements.at(key("garnish")), "ann");
    open(builder.lesson);
    StepInspector inspector(document_, locale_);
    const auto says = [&](const QString& words) {
        const auto labels = inspector.findChildren<QLabel*>();
        return std::ranges::any_of(
            labels, [&](const QLabel* label) { return label->text().contains(words); });
    };
    inspector.setKey(key("garnish"));
    EXPECT_TRUE(says("It collides"));
    Placement later = placed("garnish");
    later.start = minute(-15);
    ASSERT_FALSE(document_.apply(SetPlacements{{{key("garnish"), later}}}, "move"));
    EXPECT_FALSE(says("It collides"));
}

TEST_F(Panels, AnotherPanIsChosenFromTheList) {
    open(smallKitchen().lesson);
    StepInspector inspector(document_, locale_);
    inspector.setKey(key("sear"));
    auto* list = findNamed<QComboBox>(inspector, "Saute pan");
    ASSERT_NE(list, nullptr);
    list->setCurrentIndex(1);
    Q_EMIT list->activated(1);
    EXPECT_EQ(placed("sear").wares.front().number, 1);
    document_.undoStack().undo();
    EXPECT_EQ(placed("sear").wares.front().number, 0);
    EXPECT_EQ(list->currentIndex(), 0);
}

TEST_F(Panels, PinningAndTakingOffTheTimeline) {
    open(smallKitchen().lesson);
    StepInspector inspector(document_, locale_);
    inspector.setKey(key("sear"));
    click(inspector, "Pinned: arranging leaves it here");
    EXPECT_TRUE(placed("sear").pinned);
    click(inspector, "Back to the shelf");
    EXPECT_FALSE(document_.lesson().placements.contains(key("sear")));
    EXPECT_EQ(document_.undoStack().count(), 2);
}

TEST_F(Panels, TheStartIsShownAsTheRestOfTheWindowShowsTimes) {
    LessonBuilder builder = smallKitchen();
    for (const auto& [units, mark] :
         {std::pair(Units::UsCustomary, true), {Units::Metric, false}}) {
        builder.lesson.head.units = units;
        open(builder.lesson);
        StepInspector inspector(document_, locale_);
        inspector.setKey(key("sear"));
        auto* start = findNamed<QLineEdit>(inspector, "Start");
        ASSERT_NE(start, nullptr);
        EXPECT_EQ(start->text().endsWith("M"), mark) << start->text().toStdString();
    }
}

TEST_F(Panels, ATypedStartMayHaveTwelveHoursOrTwentyFour) {
    open(smallKitchen().lesson);
    const Clock clock(document_.lesson().head, locale_);
    const QDateTime wanted = clock.moment(minute(-25));
    for (const QString& form : {QStringLiteral("HH:mm"), QStringLiteral("HHmm"),
                                QStringLiteral("h:mm AP"), QStringLiteral("h.mmap")}) {
        StepInspector inspector(document_, locale_);
        inspector.setKey(key("sear"));
        auto* start = findNamed<QLineEdit>(inspector, "Start");
        start->selectAll();
        QTest::keyClicks(start, locale_.toString(wanted, form));
        QTest::keyClick(start, Qt::Key_Return);
        EXPECT_EQ(placed("sear").start, minute(-25)) << form.toStdString();
        ASSERT_EQ(document_.undoStack().count(), 1);
        document_.undoStack().undo();
    }
}

// ---- the shelf ----

TEST_F(Panels, TheShelfListsWhatIsNotPlacedAndHandsItOver) {
    open(smallKitchen().lesson);
    ShelfPanel shelf(document_, locale_, [](const auto&) { return std::make_unique<QMimeData>(); });
    EXPECT_EQ(shelf.count(), 1);
    std::vector<StepKey> pickedUp;
    QObject::connect(&shelf, &ShelfPanel::pickedUp,
                     [&](const std::vector<StepKey>& steps) { pickedUp = steps; });
    click(shelf, "Pick up");
    EXPECT_THAT(pickedUp, ::testing::ElementsAre(key("garnish")));
    ASSERT_FALSE(document_.apply(SetPlacements{{{key("sear"), std::nullopt}}}, "take off"));
    EXPECT_EQ(shelf.count(), 2);
}

// ---- findings ----

TEST_F(Panels, ACollisionIsListedJumpedToAndRepaired) {
    LessonBuilder builder = smallKitchen();
    builder.place("garnish", -22);  // ann sears until -20
    assign(builder.lesson.placements.at(key("garnish")), "ann");
    open(builder.lesson);
    FindingsPanel panel(document_, locale_);
    const auto isTwice = [](const Finding& f) { return f.code == FindingCode::HandsTwice; };
    ASSERT_TRUE(std::ranges::any_of(document_.findings(), isTwice));

    const Finding* shown = nullptr;
    Finding jumpedTo;
    QObject::connect(&panel, &FindingsPanel::placeWanted, [&](const Finding& finding) {
        jumpedTo = finding;
        shown = &jumpedTo;
    });
    panel.chooseFor(key("garnish"));
    auto* tree = findNamed<QTreeWidget>(panel, "Findings");
    Q_EMIT tree->itemActivated(tree->currentItem(), 0);
    ASSERT_NE(shown, nullptr);
    EXPECT_EQ(shown->code, FindingCode::HandsTwice);

    click(panel, "Do it");
    EXPECT_FALSE(std::ranges::any_of(document_.findings(), isTwice));
    EXPECT_EQ(document_.undoStack().count(), 1);
}

TEST_F(Panels, TryingARepairOutChangesNothing) {
    LessonBuilder builder = smallKitchen();
    builder.place("garnish", -22);
    assign(builder.lesson.placements.at(key("garnish")), "ann");
    open(builder.lesson);
    FindingsPanel panel(document_, locale_);
    panel.chooseFor(key("garnish"));
    SetPlacements shown;
    QObject::connect(&panel, &FindingsPanel::previewed,
                     [&](const SetPlacements& edit) { shown = edit; });
    click(panel, "Try it out");
    EXPECT_FALSE(shown.changes.empty());
    EXPECT_EQ(document_.lesson(), builder.lesson);
    click(panel, "Try it out");
    EXPECT_TRUE(shown.changes.empty());
}

TEST_F(Panels, WithNothingFoundTheListTeaches) {
    FindingsPanel panel(document_, locale_);
    const auto labels = panel.findChildren<QLabel*>();
    EXPECT_TRUE(std::ranges::any_of(
        labels, [](const QLabel* label) { return label->text().contains("collides"); }));
}

// ---- the head ----

TEST_F(Panels, CoversAndServingTimeAreOneStepOfUndo) {
    open(smallKitchen().lesson);
    const Lesson before = document_.lesson();
    LessonHeadDialog dialog(document_, locale_);
    type(dialog, "Served at", "7:15 PM");
    auto* covers = dialog.findChild<QSpinBox*>();
    ASSERT_NE(covers, nullptr);
    covers->setValue(7);
    dialog.accept();
    EXPECT_EQ(dialog.refusal(), QString());
    EXPECT_EQ(document_.lesson().servings.front().covers, 7);
    EXPECT_NE(document_.lesson().head.servingTime, before.head.servingTime);
    document_.undoStack().undo();
    EXPECT_EQ(document_.lesson(), before);
}

TEST_F(Panels, OtherCoversShowWhatTheyChangeBeforeTheyAreAccepted) {
    LessonBuilder builder = smallKitchen();
    Serving& serving = builder.lesson.servings.front();
    serving.covers = serving.dish.writtenFor = 4;
    serving.dish.components.front().ingredients = {{"leeks", Amount{2, 2, "cup"}, {}, {}, {}}};
    open(builder.lesson);
    LessonHeadDialog dialog(document_, locale_);
    auto* changes = dialog.findChild<CoversPreview*>();
    auto* covers = dialog.findChild<QSpinBox*>();
    EXPECT_TRUE(changes->isHidden());
    covers->setValue(8);
    EXPECT_FALSE(changes->isHidden());
    EXPECT_TRUE(changes->toPlainText().contains("leeks: 4 cups instead of 2 cups"))
        << changes->toPlainText().toStdString();
    EXPECT_EQ(document_.undoStack().count(), 0);
    covers->setValue(4);
    EXPECT_TRUE(changes->isHidden());
}

/// The clock that the named field shows.
QString shownAt(QWidget& root, const QString& name) {
    return findNamed<QLineEdit>(root, name)->text();
}

TEST_F(Panels, TastingAndLeavingGoAlongWithServingTheKitchensOpeningDoesNot) {
    LessonBuilder builder = smallKitchen();
    builder.lesson.head.kitchenOpens = Instant::atMinutes(-120);
    builder.lesson.head.tasting = Instant::atMinutes(5);
    builder.lesson.head.everyoneOut = Instant::atMinutes(45);
    open(builder.lesson);
    const Head before = document_.lesson().head;
    LessonHeadDialog dialog(document_, locale_);
    const Clock clock(before, locale_);
    const QString opens = shownAt(dialog, "The kitchen opens");
    type(dialog, "Served at", locale_.toString(clock.moment(minute(60)), "h:mm AP"));
    EXPECT_EQ(shownAt(dialog, "Tasting"), clock.at(minute(65)));
    EXPECT_EQ(shownAt(dialog, "Everyone is out"), clock.at(minute(105)));
    EXPECT_EQ(shownAt(dialog, "The kitchen opens"), opens);
    dialog.accept();
    const Head& after = document_.lesson().head;
    EXPECT_EQ(after.tasting, before.tasting);
    EXPECT_EQ(after.everyoneOut, before.everyoneOut);
    EXPECT_EQ(after.kitchenOpens, Instant::atMinutes(-180));
}

TEST_F(Panels, TimesInAnOrderThatCannotBeMeantAreSaidAtOnce) {
    LessonBuilder builder = smallKitchen();
    builder.lesson.head.everyoneOut = Instant::atMinutes(45);
    open(builder.lesson);
    LessonHeadDialog dialog(document_, locale_);
    const auto says = [&dialog] {
        const auto labels = dialog.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [](const QLabel* label) {
            return !label->isHidden() && label->text().contains("Everyone is out before");
        });
    };
    EXPECT_FALSE(says());
    const Clock clock(document_.lesson().head, locale_);
    type(dialog, "Everyone is out", clock.at(minute(-30)));
    EXPECT_TRUE(says());
    type(dialog, "Everyone is out", clock.at(minute(30)));
    EXPECT_FALSE(says());
}

TEST_F(Panels, WhatIsNoTimeIsNotTakenForOne) {
    open(smallKitchen().lesson);
    LessonHeadDialog dialog(document_, locale_);
    type(dialog, "Served at", "soon");
    dialog.accept();
    EXPECT_TRUE(dialog.refusal().contains("soon")) << dialog.refusal().toStdString();
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(Panels, ADishServedOnceMoreLaterAndTakenOutAgainAreEachOneStepOfUndo) {
    open(smallKitchen().lesson);
    const Lesson before = document_.lesson();
    const QString name = QString::fromStdString(before.servings.front().dish.name);
    {
        LessonHeadDialog dialog(document_, locale_);
        click(dialog, name + ", once more");
        QCoreApplication::processEvents();
        auto* form = dialog.findChild<ServingsForm*>();
        ASSERT_EQ(form->servings().size(), 2U);
        form->findChildren<QSpinBox*>().back()->setValue(15);
        dialog.accept();
        ASSERT_EQ(dialog.refusal(), QString());
    }
    const auto& servings = document_.lesson().servings;
    ASSERT_EQ(servings.size(), 2U);
    EXPECT_EQ(servings[1].offset, 15_min);
    EXPECT_NE(servings[1].dish.id, servings[0].dish.id);
    EXPECT_EQ(document_.lesson().placements, before.placements);
    {
        LessonHeadDialog dialog(document_, locale_);
        click(dialog, name + ", take out");
        QCoreApplication::processEvents();
        dialog.accept();
        ASSERT_EQ(dialog.refusal(), QString());
    }
    EXPECT_EQ(document_.lesson().servings.size(), 1U);
    document_.undoStack().undo();
    EXPECT_EQ(document_.lesson().servings.size(), 2U);
    document_.undoStack().undo();
    EXPECT_EQ(document_.lesson(), before);
}

TEST_F(Panels, AFileThatIsNoLessonAddsNoDishesAndSaysWhy) {
    open(smallKitchen().lesson);
    LessonHeadDialog dialog(document_, locale_);
    dialog.addDishesOf(QStringLiteral("no-such-lesson.json"));
    EXPECT_FALSE(dialog.refusal().isEmpty());
    EXPECT_EQ(dialog.findChild<ServingsForm*>()->servings().size(), 1U);
}

TEST_F(Panels, AHeadThatIsLeftAsItIsChangesNothing) {
    open(smallKitchen().lesson);
    LessonHeadDialog dialog(document_, locale_);
    dialog.accept();
    EXPECT_EQ(dialog.refusal(), QString());
    EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(Panels, AHeadWithoutAnybodyIsRefusedWithTheReason) {
    open(smallKitchen().lesson);
    LessonHeadDialog dialog(document_, locale_);
    click(dialog, "ann");
    dialog.accept();
    EXPECT_FALSE(dialog.refusal().isEmpty());
    EXPECT_EQ(document_.undoStack().count(), 0);
}

}  // namespace
}  // namespace rangeline::test
