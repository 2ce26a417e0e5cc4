// The book as the window uses it, with real files.

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "book/library.h"
#include "library/book_bar.h"
#include "library/book_desk.h"
#include "library/library_page.h"
#include "library/samples_book.h"
#include "support/find_widget.h"
#include "text/book_fault_text.h"

namespace rangeline::test {
namespace {

class Desk : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto fault = makeSamplesBook(path_);
        ASSERT_FALSE(fault) << sentence(*fault).toStdString();
        open();
    }
    void open() {
        desk_.reset();
        document_ = std::make_unique<LessonDocument>();
        desk_ = std::make_unique<BookDesk>(*document_, window_);
        ASSERT_TRUE(desk_->openBook(path_));
        ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    }
    /// "First lesson", which is placed, whatever it is called by now.
    ItemId firstLesson() {
        const auto& items = desk_->book()->items();
        const auto found = std::ranges::find_if(items, [](const Item& item) {
            return item.kind == ItemKind::Lesson && item.name.starts_with("First lesson");
        });
        if (lesson_.number == 0 && found != items.end()) {
            lesson_ = found->id;
        }
        return lesson_;
    }
    void openFirst() {
        QSignalSpy opened(desk_.get(), &BookDesk::lessonOpened);
        desk_->openLesson(firstLesson());
        ASSERT_TRUE(opened.wait());
    }
    bool applyName(const std::string& name, GestureId gesture = 0) {
        Head head = document_->lesson().head;
        head.name = name;
        return !document_->apply(SetHead{head}, QStringLiteral("rename"), gesture);
    }
    bool kept() {
        return QTest::qWaitFor([&] { return desk_->journal().isKept(); });
    }
    Lesson inTheFile() {
        auto book = Book::open(nameOnDisk(path_), BookAccess::ReadOnly);
        auto lesson = book.value()->lesson(firstLesson());
        return lesson.value();
    }

    ItemId lesson_;
    QTemporaryDir folder_;
    QString path_ = folder_.filePath(QStringLiteral("book.rangeline"));
    QWidget window_;
    std::unique_ptr<LessonDocument> document_;
    std::unique_ptr<BookDesk> desk_;
};

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

TEST_F(Desk, TheLibraryFindsByIngredientAndBringsBackWhatWasDeleted) {
    LibraryPage page(*desk_);
    ASSERT_TRUE(desk_->openBook(path_));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    auto* list = findNamed<QListWidget>(page, QStringLiteral("What the book holds"));
    ASSERT_NE(list, nullptr);
    const int lessons = list->count();
    EXPECT_GT(lessons, 2);
    const QString first = list->item(0)->text();
    findNamed<QPushButton>(page, QStringLiteral("Delete"))->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->count() == lessons - 1; }));
    findNamed<QPushButton>(page, QStringLiteral("Bring back “%1”").arg(first))->click();
    ASSERT_TRUE(QTest::qWaitFor([&] { return list->count() == lessons; }));
    findNamed<QLineEdit>(page, QStringLiteral("Search the book"))->setText(QStringLiteral("butt"));
    EXPECT_TRUE(QTest::qWaitFor([&] {
        return !list->findItems(QStringLiteral("butter"), Qt::MatchContains).isEmpty();
    }));
}

}  // namespace
}  // namespace rangeline::test
