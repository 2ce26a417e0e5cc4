// Rangeline as it is used: the window on a sample, driven through its actions and panels.

#include <gmock/gmock.h>

#include <QAbstractButton>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <map>

#include "book/library.h"
#include "inspect/findings_panel.h"
#include "inspect/shelf_panel.h"
#include "library/book_desk.h"
#include "library/change_offer.h"
#include "library/samples_book.h"
#include "support/find_widget.h"
#include "timeline_view/timeline_view.h"
#include "window/arranger.h"
#include "window/main_window.h"
#include "window/notice.h"
#include "window/reasons.h"

namespace rangeline::test {
namespace {

class Window : public ::testing::Test {
  protected:
    void SetUp() override {
        QSettings().clear();
        window_ = std::make_unique<MainWindow>(QLocale(QLocale::English, QLocale::UnitedStates));
        window_->show();
    }

    void openSample(const QString& name) {
        ASSERT_TRUE(window_->openFile(QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/") + name));
    }
    LessonDocument& document() { return window_->document(); }
    int count(Severity severity) {
        return static_cast<int>(
            std::ranges::count(document().findings(), severity, &Finding::severity));
    }
    /// Waits for the plan, or for the word that there is none.
    bool arranged(QAction* action) {
        auto* arranger = window_->findChild<Arranger*>();
        QSignalSpy done(arranger, &Arranger::done);
        action->trigger();
        constexpr int patience = 120'000;  // milliseconds
        return (!done.isEmpty() || done.wait(patience)) && done.front().at(1).toBool();
    }

    std::unique_ptr<MainWindow> window_;
};

TEST_F(Window, ArrangingIsOneStepOfUndo) {
    openSample("first-lesson.json");
    const Placements before = document().lesson().placements;
    std::vector<PlacementChange> all;
    for (const auto& [key, placement] : before) {
        all.push_back({key, std::nullopt});
    }
    ASSERT_FALSE(document().apply(SetPlacements{all}, "clear"));
    EXPECT_GT(window_->findChild<ShelfPanel*>()->count(), 0);

    ASSERT_TRUE(arranged(window_->actions().arrange));
    EXPECT_EQ(window_->findChild<ShelfPanel*>()->count(), 0);
    EXPECT_EQ(count(Severity::Collision), 0);
    EXPECT_EQ(document().undoStack().count(), 2);

    window_->actions().undo->trigger();
    EXPECT_TRUE(document().lesson().placements.empty());
    window_->actions().undo->trigger();
    EXPECT_EQ(document().lesson().placements, before);
}

TEST_F(Window, ArrangingTheShelfLeavesThePlacedStepsAndTheirPins) {
    openSample("first-lesson.json");
    const Placements before = document().lesson().placements;
    const auto onShelf = std::ranges::find_if(
        before, [](const auto& each) { return std::holds_alternative<StepKey>(each.first); });
    ASSERT_FALSE(document().apply(SetPlacements{{{onShelf->first, std::nullopt}}}, "take off"));
    ASSERT_TRUE(arranged(window_->actions().arrangeShelf));
    for (const auto& [key, placement] : before) {
        if (std::holds_alternative<StepKey>(key) && key != onShelf->first) {
            EXPECT_EQ(document().lesson().placements.at(key), placement);
        }
    }
    EXPECT_EQ(window_->findChild<ShelfPanel*>()->count(), 0);
}

TEST_F(Window, WhatCannotBeArrangedStaysAsItWas) {
    openSample("cannot-work.json");
    const Lesson before = document().lesson();
    EXPECT_FALSE(arranged(window_->actions().arrange));
    EXPECT_EQ(document().lesson(), before);
    EXPECT_TRUE(window_->findChild<Notice*>()->isHidden()) << "it is said once";
    EXPECT_THAT(window_->findChild<Reasons*>()->title().toStdString(),
                ::testing::HasSubstr("Not possible"));
}

TEST_F(Window, WhatCannotBeArrangedIsExplainedAndHelped) {
    openSample("cannot-work.json");
    auto* reasons = window_->findChild<Reasons*>();
    EXPECT_FALSE(reasons->isVisible());
    EXPECT_FALSE(arranged(window_->actions().arrange));
    const auto buttons = [&] { return reasons->findChildren<QPushButton*>(); };
    constexpr int patience = 60'000;  // milliseconds
    ASSERT_TRUE(QTest::qWaitFor([&] { return !buttons().isEmpty(); }, patience));
    EXPECT_TRUE(reasons->isVisible());

    const Lesson before = document().lesson();
    const int steps = document().undoStack().count();
    buttons().front()->click();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return document().undoStack().count() == steps + 2; }, patience))
        << "it is planned at once";
    EXPECT_FALSE(reasons->isVisible());
    EXPECT_EQ(count(Severity::Collision), 0);
    window_->actions().undo->trigger();
    window_->actions().undo->trigger();
    EXPECT_EQ(document().lesson(), before);
}

TEST_F(Window, AFindingLeadsToItsBlock) {
    openSample("harvest-plate.json");
    const auto found = std::ranges::find_if(document().findings(), [&](const Finding& finding) {
        return !finding.keys.empty() &&
               document().lesson().placements.contains(finding.keys.front());
    });
    ASSERT_NE(found, document().findings().end());
    const PlacementKey wanted = found->keys.front();
    auto* panel = window_->findChild<FindingsPanel*>();
    panel->chooseFor(wanted);
    auto* tree = findNamed<QTreeWidget>(*panel, "Findings");
    Q_EMIT tree->itemActivated(tree->currentItem(), 0);
    EXPECT_THAT(window_->timeline().selection(), ::testing::Contains(wanted));
}

TEST_F(Window, AStepFromTheShelfIsPutDownWithTheKeyboard) {
    openSample("first-lesson.json");
    const auto step = std::ranges::find_if(document().lesson().placements, [](const auto& each) {
        return std::holds_alternative<StepKey>(each.first);
    });
    const PlacementKey key = step->first;
    ASSERT_FALSE(document().apply(SetPlacements{{{key, std::nullopt}}}, "take off"));
    window_->findChild<ShelfPanel*>()->pickUp();
    QTest::keyClick(&window_->timeline(), Qt::Key_Return);
    EXPECT_TRUE(document().lesson().placements.contains(key));
    EXPECT_EQ(document().undoStack().count(), 2);
}

TEST_F(Window, EscapePutsAPickedUpStepBack) {
    openSample("first-lesson.json");
    const Lesson before = document().lesson();
    window_->timeline().select({before.placements.begin()->first});
    window_->actions().pickUp->trigger();
    QTest::keyClick(&window_->timeline(), Qt::Key_Right);
    QTest::keyClick(&window_->timeline(), Qt::Key_Escape);
    EXPECT_EQ(document().lesson(), before);
}

// ---- leaving ----

/// Presses the button with that text in the question that comes.
void answerWith(const QString& text) {
    QTimer::singleShot(0, [text] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(box, nullptr);
        for (QAbstractButton* button : box->buttons()) {
            if (button->text().remove(u'&') == text) {
                button->click();
                return;
            }
        }
        box->reject();
        FAIL() << "no such button";
    });
}

TEST_F(Window, UnsavedChangesAreAskedFor) {
    openSample("first-lesson.json");
    const PlacementKey key = document().lesson().placements.begin()->first;
    ASSERT_FALSE(document().apply(SetPlacements{{{key, std::nullopt}}}, "take off"));
    EXPECT_TRUE(window_->isWindowModified());
    answerWith("Go back");
    EXPECT_FALSE(window_->close());
    EXPECT_TRUE(window_->isVisible());
    answerWith("Give them up");
    EXPECT_TRUE(window_->close());
}

TEST_F(Window, AnOpenedLessonIsRemembered) {
    openSample("first-lesson.json");
    EXPECT_THAT(window_->files().recent().list(),
                ::testing::ElementsAre(::testing::ResultOf(
                    [](const QString& path) { return path.endsWith("first-lesson.json"); }, true)));
}

// ---- for everybody ----

TEST_F(Window, EveryWidgetThatTakesTheFocusHasAName) {
    openSample("harvest-plate.json");
    window_->timeline().select({document().lesson().placements.begin()->first});
    for (QWidget* widget : window_->findChildren<QWidget*>()) {
        const bool inside = widget->focusProxy() != nullptr ||
                            widget->objectName().startsWith(QStringLiteral("qt_")) ||
                            widget->window() != window_.get();
        if (widget->focusPolicy() != Qt::NoFocus && !inside) {
            EXPECT_FALSE(accessibleName(widget).isEmpty())
                << widget->metaObject()->className() << " in "
                << widget->parentWidget()->metaObject()->className();
        }
    }
}

TEST_F(Window, NoTwoActionsShareAShortcut) {
    std::map<QString, QString> taken;
    for (const QAction* action : window_->findChildren<QAction*>()) {
        for (const QKeySequence& keys : action->shortcuts()) {
            const auto [before, added] = taken.emplace(keys.toString(), action->text());
            EXPECT_TRUE(added) << keys.toString().toStdString() << ": "
                               << before->second.toStdString() << " and "
                               << action->text().toStdString();
        }
    }
    EXPECT_FALSE(taken.empty());
}

TEST_F(Window, APlanIsNotPutOnALessonThatWasChangedWhileItWasArranged) {
    openSample("first-lesson.json");
    auto* arranger = window_->findChild<Arranger*>();
    QSignalSpy done(arranger, &Arranger::done);
    window_->actions().arrange->trigger();
    Lesson changed = document().lesson();
    changed.head.name = "Another name";
    ASSERT_FALSE(document().apply(SetHead{changed.head}, "rename"));
    ASSERT_TRUE(done.wait(20'000));
    EXPECT_FALSE(done.first().at(1).toBool());
    EXPECT_EQ(document().lesson(), changed);
}

TEST_F(Window, ALessonThatIsComeBackToOffersItsDishAsItWasChangedMeanwhile) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("lessons.rangeline");
    ASSERT_FALSE(makeSamplesBook(path));
    ASSERT_TRUE(window_->openFile(path));
    auto* desk = window_->findChild<BookDesk*>();
    ASSERT_NE(desk, nullptr);
    QSignalSpy opened(desk, &BookDesk::lessonOpened);
    window_->openLessonNamed("First lesson: roast carrots with warm lentils");
    ASSERT_TRUE(!opened.isEmpty() || opened.wait());
    auto* offer = window_->findChild<ChangeOffer*>();
    ASSERT_NE(offer, nullptr);
    bool renamed = false;
    desk->book()->ask(
        [](Book& book) {
            const auto dish = findItem(book, ItemKind::Dish, "Roast carrots with warm lentils");
            return dish.ok() && !rename(book, dish.value().id, "Carrots and lentils");
        },
        [&](bool done) { renamed = done; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return renamed; }));
    const auto turn = [this] { QTest::keyClick(window_.get(), Qt::Key_B, Qt::ControlModifier); };
    turn();
    EXPECT_TRUE(offer->isHidden()) << "it belongs to the lesson, not to the book's lists";
    turn();
    EXPECT_TRUE(QTest::qWaitFor([&] { return offer->isVisible(); }));
    window_.reset();  // before the folder goes
}

TEST_F(Window, MenuItemsHaveLettersOfTheirOwn) {
    for (const QMenu* menu : window_->findChildren<QMenu*>()) {
        std::map<QChar, QString> letters;
        for (const QAction* action : menu->actions()) {
            const qsizetype mark = action->text().indexOf(u'&');
            if (mark >= 0) {
                const auto [before, added] =
                    letters.emplace(action->text().at(mark + 1).toLower(), action->text());
                EXPECT_TRUE(added)
                    << menu->title().toStdString() << ": " << before->second.toStdString()
                    << " and " << action->text().toStdString();
            }
        }
    }
}

TEST_F(Window, WithoutALessonOnlyOpeningIsOffered) {
    EXPECT_FALSE(window_->actions().copyOut->isEnabled());
    EXPECT_FALSE(window_->actions().arrange->isEnabled());
    EXPECT_TRUE(window_->actions().open->isEnabled());
}

}  // namespace
}  // namespace rangeline::test
