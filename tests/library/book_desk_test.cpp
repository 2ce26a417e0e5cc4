// The book as the window uses it, with real files.

#include <gtest/gtest.h>

#include <QFile>
#include <QMessageBox>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include "book/library.h"
#include "library/book_bar.h"
#include "library/book_desk.h"
#include "library/library_page.h"
#include "library/samples_book.h"
#include "library_support.h"
#include "support/find_widget.h"
#include "text/book_fault_text.h"

namespace rangeline::test {
namespace {

class Desk : public OpenDesk {};

TEST_F(Desk, AnEditIsInTheFileWithoutSaving) {
    openFirst();
    ASSERT_TRUE(applyName("Sunday supper"));
    EXPECT_TRUE(document_->isModified());
    ASSERT_TRUE(kept());
    EXPECT_FALSE(document_->isModified());
    desk_.reset();
    open();
    EXPECT_EQ(inTheFile().head.name, "Sunday supper");
}

TEST_F(Desk, UndoAndRedoGoOnAfterReopening) {
    openFirst();
    const Lesson before = document_->lesson();
    ASSERT_TRUE(applyName("One"));
    ASSERT_TRUE(applyName("Two"));
    document_->undoStack().undo();
    ASSERT_TRUE(kept());
    open();
    openFirst();
    EXPECT_EQ(document_->lesson().head.name, "One");
    EXPECT_FALSE(document_->isModified());
    document_->undoStack().redo();
    EXPECT_EQ(document_->lesson().head.name, "Two");
    document_->undoStack().undo();
    document_->undoStack().undo();
    EXPECT_EQ(document_->lesson(), before);
    ASSERT_TRUE(kept());
    EXPECT_EQ(inTheFile(), before);
}

TEST_F(Desk, AGestureThatEndsWhereItBeganLeavesTheFileAsItWas) {
    openFirst();
    ASSERT_FALSE(document_->lesson().placements.empty());
    const auto [key, placement] = *document_->lesson().placements.begin();
    Placement moved = placement;
    moved.start = moved.start + Duration::minutes(1);
    const Lesson before = document_->lesson();
    const GestureId gesture = document_->newGesture();
    document_->apply(SetPlacements{{{key, moved}}}, QStringLiteral("move"), gesture);
    document_->apply(SetPlacements{{{key, placement}}}, QStringLiteral("move"), gesture);
    ASSERT_TRUE(kept());
    EXPECT_EQ(document_->lesson(), before);
    EXPECT_EQ(inTheFile(), before);
}

TEST_F(Desk, AMovedBookKeepsTheEditInMemoryAndTheCopyTakesIt) {
    openFirst();
    BookBar bar(*desk_, &window_);
    ASSERT_TRUE(QFile::rename(path_, folder_.filePath(QStringLiteral("moved.rangeline"))));
    ASSERT_TRUE(applyName("Kept all the same"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->journal().fault().has_value(); }));
    EXPECT_EQ(desk_->journal().fault()->code, BookFaultCode::Gone);
    EXPECT_TRUE(bar.isVisibleTo(&window_));
    EXPECT_TRUE(bar.text().contains(QStringLiteral("moved or deleted")))
        << bar.text().toStdString();
    EXPECT_TRUE(document_->isModified());
    path_ = folder_.filePath(QStringLiteral("copy.rangeline"));
    desk_->saveCopy(path_);
    ASSERT_TRUE(kept());
    EXPECT_EQ(desk_->book()->path(), path_);
    EXPECT_EQ(inTheFile().head.name, "Kept all the same");
}

TEST_F(Desk, TheLibraryShownFromALessonHasThatOneChosen) {
    LibraryPage page(*desk_);
    ASSERT_TRUE(desk_->openBook(path_));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    openFirst();
    page.show();
    const auto* list = findNamed<QTreeWidget>(page, QStringLiteral("What the book holds"));
    ASSERT_NE(list->currentItem(), nullptr);
    EXPECT_TRUE(list->currentItem()->text(0).startsWith(QStringLiteral("First lesson")));
}

TEST_F(Desk, WhatWasDeletedIsListedOnlyWhereItIsAskedForOnceTheBookIsOpenedAgain) {
    LibraryPage page(*desk_);
    ASSERT_TRUE(desk_->openBook(path_));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    auto* list = findNamed<QTreeWidget>(page, QStringLiteral("What the book holds"));
    const int lessons = list->topLevelItemCount();
    findNamed<QPushButton>(page, QStringLiteral("Delete"))->click();
    ASSERT_TRUE(desk_->openBook(path_));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    EXPECT_TRUE(QTest::qWaitFor([&] { return list->topLevelItemCount() == lessons - 1; }));
    auto* purge = findNamed<QPushButton>(page, QStringLiteral("Delete for good ..."));
    EXPECT_TRUE(purge->isHidden());
    page.findChild<QCheckBox*>()->setChecked(true);
    EXPECT_EQ(list->topLevelItemCount(), lessons);
    ASSERT_FALSE(purge->isHidden());
    QTimer::singleShot(0, [] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(box, nullptr);
        box->button(QMessageBox::Yes)->click();
    });
    purge->click();
    EXPECT_TRUE(QTest::qWaitFor([&] { return list->topLevelItemCount() == lessons - 1; }));
    EXPECT_FALSE(purge->isEnabled());
}

TEST_F(Desk, ABookThatCannotBeOpenedAgainLeavesNothingToPress) {
    LibraryPage page(*desk_);
    ASSERT_TRUE(desk_->openBook(path_));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    QFile file(path_);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("no book any more");
    file.close();
    QTimer::singleShot(0, [] {
        if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) {
            box->reject();
        }
    });
    EXPECT_FALSE(desk_->openBook(path_));
    EXPECT_EQ(desk_->book(), nullptr);
    EXPECT_FALSE(desk_->noBook().isEmpty());
    EXPECT_EQ(
        findNamed<QTreeWidget>(page, QStringLiteral("What the book holds"))->topLevelItemCount(),
        0);
    for (const QPushButton* button : page.findChildren<QPushButton*>()) {
        EXPECT_FALSE(button->isEnabled()) << button->text().toStdString();
    }
}

TEST_F(Desk, TheLibraryFindsByIngredientAndBringsBackWhatWasDeleted) {
    LibraryPage page(*desk_);
    ASSERT_TRUE(desk_->openBook(path_));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    auto* list = findNamed<QTreeWidget>(page, QStringLiteral("What the book holds"));
    ASSERT_NE(list, nullptr);
    const int lessons = list->topLevelItemCount();
    EXPECT_GT(lessons, 2);
    const QString first = list->topLevelItem(0)->text(0);
    const auto listed = [&](int count) {
        return QTest::qWaitFor([&] { return list->topLevelItemCount() == count; });
    };
    const auto said = [&](const QString& name) {
        const auto rows = list->findItems(name, Qt::MatchExactly);
        return rows.isEmpty() ? QString("not there") : rows.first()->text(1);
    };
    const QString second = list->topLevelItem(1)->text(0);
    for (const QString& name : {first, second}) {
        list->setCurrentItem(list->findItems(name, Qt::MatchExactly).first());
        findNamed<QPushButton>(page, QStringLiteral("Delete"))->click();
        ASSERT_TRUE(QTest::qWaitFor([&] { return said(name) == QStringLiteral("deleted"); }));
    }
    for (const QString& name : {first, second}) {
        list->setCurrentItem(list->findItems(name, Qt::MatchExactly).first());
        findNamed<QPushButton>(page, QStringLiteral("Bring back"))->click();
        ASSERT_TRUE(QTest::qWaitFor([&] { return said(name).isEmpty(); }));
    }
    EXPECT_TRUE(listed(lessons));
    findNamed<QLineEdit>(page, QStringLiteral("Search the book"))->setText(QStringLiteral("butt"));
    EXPECT_TRUE(QTest::qWaitFor([&] {
        return !list->findItems(QStringLiteral("butter"), Qt::MatchContains, 1).isEmpty();
    }));
}

}  // namespace
}  // namespace rangeline::test
