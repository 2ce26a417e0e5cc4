// A lesson out of what the book holds; versions of it; what has changed in the book since.

#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTabBar>
#include <QTest>
#include <QTimer>
#include <map>

#include "book/library.h"
#include "library/change_offer.h"
#include "library/comparison.h"
#include "library/library_page.h"
#include "library/new_lesson_dialog.h"
#include "library/versions_dialog.h"
#include "library_support.h"
#include "support/find_widget.h"
#include "support/focus_names.h"

namespace rangeline::test {
namespace {

const QLocale english(QLocale::English, QLocale::UnitedStates);

class Lessons : public OpenDesk {
  protected:
    ItemId named(ItemKind kind, const std::string& name) {
        const auto& items = desk_->book()->items();
        const auto found = std::ranges::find_if(
            items, [&](const Item& item) { return item.kind == kind && item.name == name; });
        return found == items.end() ? ItemId{} : found->id;
    }
    /// Does it on the book's thread and waits for the answer.
    template <class Work>
    auto inBook(Work work) {
        std::optional<decltype(work(std::declval<Book&>()))> answer;
        desk_->book()->ask(work, [&](auto given) { answer = std::move(given); });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }));
        return *answer;
    }
    static void press(QWidget& root, const QString& name) {
        auto* button = findNamed<QPushButton>(root, name);
        ASSERT_NE(button, nullptr) << name.toStdString();
        ASSERT_TRUE(button->isEnabled()) << name.toStdString();
        button->click();
    }
};

TEST_F(Lessons, WhatTakesTheFocusHasANameInTheListAndInEveryDialog) {
    openFirst();
    NewLessonDialog made(*desk_, english, Units::UsCustomary, QDateTime::currentDateTime());
    VersionsDialog versions(*desk_, english);
    LibraryPage page(*desk_);
    for (QWidget* root : std::initializer_list<QWidget*>{&made, &versions, &page}) {
        SCOPED_TRACE(root->metaObject()->className());
        root->show();
        QApplication::processEvents();
        expectNames(*root);
    }
}

TEST_F(Lessons, LettersOfThePageBelongToOneEachAndToNoMenu) {
    LibraryPage page(*desk_);
    QStringList texts{"&Book", "&Change", "&Arrange", "&Show", "&Help"};
    for (const QAbstractButton* button : page.findChildren<QAbstractButton*>()) {
        texts.append(button->text());
    }
    const auto* kinds = page.findChild<QTabBar*>();
    ASSERT_NE(kinds, nullptr);
    for (int tab = 0; tab < kinds->count(); ++tab) {
        texts.append(kinds->tabText(tab));
    }
    std::map<QChar, QString> owners;
    for (const QString& text : texts) {
        const auto at = text.indexOf('&');
        if (at >= 0) {
            const auto [owner, first] = owners.emplace(text.at(at + 1).toUpper(), text);
            EXPECT_TRUE(first) << text.toStdString() << " and " << owner->second.toStdString();
        }
    }
}

TEST_F(Lessons, EachListHasItsOwnWayToBeginSomething) {
    LibraryPage page(*desk_);
    auto* kinds = page.findChild<QTabBar*>();
    QSignalSpy wanted(&page, &LibraryPage::newWanted);
    const auto press = [&](int tab, const char* text) {
        kinds->setCurrentIndex(tab);
        findNamed<QPushButton>(page, text)->click();
    };
    press(0, "New lesson ...");
    press(1, "Write a dish ...");
    press(2, "Write down a kitchen ...");
    ASSERT_EQ(wanted.size(), 3);
    EXPECT_EQ(wanted[1][0].value<ItemKind>(), ItemKind::Dish);
    EXPECT_EQ(wanted[2][0].value<ItemKind>(), ItemKind::Kitchen);
}

TEST_F(Lessons, ANewLessonSaysWhenItsTimesStandInAnOrderThatCannotBeMeant) {
    NewLessonDialog dialog(*desk_, english, Units::UsCustomary,
                           QDateTime(QDate(2027, 10, 8), QTime(9, 0)));
    findNamed<QLineEdit>(dialog, "Name of the lesson")->setText("Early tasting");
    auto* dishes = findNamed<QTreeWidget>(dialog, "Dishes");
    dishes->topLevelItem(0)->setCheckState(0, Qt::Checked);
    auto* make = findNamed<QPushButton>(dialog, "Make the lesson");
    ASSERT_TRUE(QTest::qWaitFor([&] { return make->isEnabled(); }));
    const auto says = [&](const QString& sentence) {
        const auto labels = dialog.findChildren<QLabel*>();
        return std::ranges::any_of(
            labels, [&](const QLabel* label) { return label->text().contains(sentence); });
    };
    EXPECT_FALSE(says("Everyone is out before the plates are served."));
    findNamed<QCheckBox>(dialog, "Everyone is out")->click();
    EXPECT_TRUE(says("Everyone is out before the plates are served."));
    EXPECT_TRUE(make->isEnabled()) << "it is the cook's own business";
}

TEST_F(Lessons, ANewLessonIsMadeOfTickedDishesAndWarnsOfAGuestsAllergenAtOnce) {
    const QDateTime now(QDate(2027, 10, 8), QTime(9, 0), QTimeZone("America/Chicago"));
    NewLessonDialog dialog(*desk_, english, Units::UsCustomary, now);
    auto* make = findNamed<QPushButton>(dialog, "Make the lesson");
    EXPECT_FALSE(make->isEnabled());
    findNamed<QLineEdit>(dialog, "Name of the lesson")->setText("Two dishes");
    auto* dishes = findNamed<QTreeWidget>(dialog, "Dishes");
    for (const char* name : {"Roast carrots with warm lentils", "Cheese puffs with herb salad"}) {
        const auto rows = dishes->findItems(name, Qt::MatchExactly);
        ASSERT_EQ(rows.size(), 1) << name;
        rows.front()->setCheckState(0, Qt::Checked);
        EXPECT_FALSE(make->isEnabled()) << "not before the dish is read";
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return make->isEnabled(); }));
    findNamed<QSpinBox>(dialog, "Cheese puffs with herb salad, covers")->setValue(7);
    auto* guests = findNamed<QListWidget>(dialog, "What guests must not eat");
    guests->findItems("milk", Qt::MatchExactly).front()->setCheckState(Qt::Checked);
    bool said = false;
    for (const QLabel* label : dialog.findChildren<QLabel*>()) {
        said = said || label->text().contains("milk");
    }
    EXPECT_TRUE(said) << "what contains milk is said before the lesson is made";

    QSignalSpy opened(desk_.get(), &BookDesk::lessonOpened);
    make->click();
    ASSERT_TRUE(opened.wait());
    const Lesson& lesson = document_->lesson();
    EXPECT_EQ(lesson.head.name, "Two dishes");
    EXPECT_EQ(lesson.head.servingTime, "2027-10-09T18:30");
    EXPECT_EQ(lesson.head.zone, "America/Chicago");
    EXPECT_EQ(lesson.head.guestAllergens, std::vector<std::string>{"milk"});
    ASSERT_EQ(lesson.servings.size(), 2U);
    EXPECT_EQ(lesson.servings[0].covers + lesson.servings[1].covers, 4 + 7);
    EXPECT_EQ(
        std::ranges::count(document_->findings(), FindingCode::GuestAllergen, &Finding::code) > 0,
        true);
}

TEST_F(Lessons, TheBookKeepsTheFoodSafetyLimitsThatWereChosenForTheNextLesson) {
    const QDateTime now(QDate(2027, 10, 8), QTime(9, 0), QTimeZone("America/Chicago"));
    NewLessonDialog first(*desk_, english, Units::UsCustomary, now);
    auto* limits = findNamed<QComboBox>(first, "Food-safety limits");
    inBook([](Book& book) { return profileOf(book); });
    EXPECT_EQ(limits->currentText(), "household");
    limits->setCurrentText("food code (professional kitchens)");
    findNamed<QTreeWidget>(first, "Dishes")->topLevelItem(0)->setCheckState(0, Qt::Checked);
    auto* make = findNamed<QPushButton>(first, "Make the lesson");
    ASSERT_TRUE(QTest::qWaitFor([&] { return make->isEnabled(); }));
    QSignalSpy opened(desk_.get(), &BookDesk::lessonOpened);
    make->click();
    ASSERT_TRUE(opened.wait());
    EXPECT_EQ(document_->lesson().head.profile, SafetyProfile::FoodCode);

    NewLessonDialog next(*desk_, english, Units::UsCustomary, now);
    limits = findNamed<QComboBox>(next, "Food-safety limits");
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return limits->currentText() == "food code (professional kitchens)"; }));
}

TEST_F(Lessons, AVersionIsKeptComparedAndGoneBackToAsOneStepOfUndo) {
    openFirst();
    const Lesson before = document_->lesson();
    VersionsDialog dialog(*desk_, english);
    findNamed<QLineEdit>(dialog, "Name of the new version")->setText("as taught");
    press(dialog, "Keep");
    auto* list = findNamed<QListWidget>(dialog, "Versions");
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->count() == 1; }));

    const auto [key, placement] = *before.placements.begin();
    ASSERT_FALSE(document_->apply(SetPlacements{{{key, std::nullopt}}}, "take off"));
    Head head = before.head;
    head.crew.resize(1);
    ASSERT_FALSE(document_->apply(SetHead{head}, "crew"));
    const Lesson changed = document_->lesson();
    const Comparison comparison = compare(before, changed, english, Units::UsCustomary);
    ASSERT_EQ(comparison.moved.size(), 1U);
    EXPECT_TRUE(comparison.moved.front().after.isEmpty());
    EXPECT_EQ(comparison.before.placed, comparison.after.placed + 1);

    list->setCurrentRow(-1);
    list->setCurrentRow(0);
    auto* rows = findNamed<QTreeWidget>(dialog, "Comparison");
    ASSERT_TRUE(QTest::qWaitFor([&] {
        return !rows->findItems("not placed", Qt::MatchExactly | Qt::MatchRecursive, 2).isEmpty();
    }));
    press(dialog, "Go back to this version");
    ASSERT_TRUE(QTest::qWaitFor([&] { return document_->lesson() == before; }));
    ASSERT_TRUE(kept());
    EXPECT_EQ(inTheFile(), before);
    document_->undoStack().undo();
    EXPECT_EQ(document_->lesson(), changed);
    ASSERT_TRUE(kept());
    EXPECT_EQ(inTheFile(), changed);
}

TEST_F(Lessons, AChangedDishIsOfferedShowsWhatItWouldDoAndIsTakenAsOneStep) {
    const ItemId dish = named(ItemKind::Dish, "Roast carrots with warm lentils");
    ASSERT_NE(dish.number, 0);
    openFirst();
    ChangeOffer offer(*desk_, english);
    offer.look();
    const auto nothing = inBook([](Book&) { return true; });  // after what look() asked
    EXPECT_TRUE(nothing);
    EXPECT_TRUE(offer.isHidden());

    EXPECT_FALSE(inBook([dish](Book& book) { return rename(book, dish, "Carrots, renamed"); }));
    offer.look();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !offer.isHidden(); }));
    EXPECT_TRUE(offer.text().contains("Carrots, renamed")) << offer.text().toStdString();

    const Lesson before = document_->lesson();
    QTimer::singleShot(50, [] {
        auto* dialog = QApplication::activeModalWidget();
        ASSERT_NE(dialog, nullptr);
        EXPECT_NE(findNamed<QTreeWidget>(*dialog, "Comparison"), nullptr);
        findNamed<QPushButton>(*dialog, "Take the change")->click();
    });
    press(offer, "See what it would do ...");
    EXPECT_EQ(document_->lesson().servings.front().dish.name, "Carrots, renamed");
    EXPECT_EQ(document_->lesson().placements, before.placements);
    ASSERT_TRUE(kept());
    offer.look();
    inBook([](Book&) { return true; });
    EXPECT_TRUE(offer.isHidden()) << "what is taken is not offered again";
    document_->undoStack().undo();
    EXPECT_EQ(document_->lesson(), before);
}

TEST_F(Lessons, ALessonFromAFileIsCopiedIntoTheBookOnceAndKeepsItsUndoThere) {
    LessonDocument other;
    ASSERT_FALSE(other.load(QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/first-lesson.json")));
    const auto lessons = [&] {
        return std::ranges::count(desk_->book()->items(), ItemKind::Lesson, &Item::kind);
    };
    const auto before = lessons();
    document_->setLesson(other.lesson());
    desk_->copyIntoBook();
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->journal().lesson().has_value(); }));
    EXPECT_EQ(desk_->journal().lesson(), firstLesson()) << "it is there already";

    ASSERT_TRUE(applyName("Another supper"));
    ASSERT_TRUE(kept());
    document_->setLesson(other.lesson());
    desk_->copyIntoBook();
    ASSERT_TRUE(QTest::qWaitFor([&] { return document_->lesson().head.name == "Another supper"; }));
    EXPECT_EQ(desk_->journal().lesson(), firstLesson()) << "as it was left in the book";
    EXPECT_EQ(lessons(), before);
    EXPECT_TRUE(document_->undoStack().canUndo());

    // With other contents it is another lesson.
    Lesson longer = other.lesson();
    longer.servings.front().covers += 1;
    document_->setLesson(longer);
    desk_->copyIntoBook();
    ASSERT_TRUE(QTest::qWaitFor([&] { return lessons() == before + 1; }));
    EXPECT_NE(desk_->journal().lesson(), firstLesson());

    // One that was deleted is not found again.
    ASSERT_TRUE(desk_->isWritable());
    desk_->change(
        [id = firstLesson()](Book& book) { return setState(book, id, ItemState::Deleted); });
    document_->setLesson(other.lesson());
    desk_->copyIntoBook();
    ASSERT_TRUE(QTest::qWaitFor([&] { return lessons() == before + 2; }));
}

}  // namespace
}  // namespace rangeline::test
