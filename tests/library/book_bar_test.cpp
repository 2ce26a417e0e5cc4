// What the window says of books that cannot be written, and what it offers.

#include "library/book_bar.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include "library_support.h"
#include "support/find_widget.h"

namespace rangeline::test {
namespace {

class Bar : public OpenDesk {
  protected:
    /// Opens the book again after it was changed behind the window's back.
    void openAfter(const std::function<void(QByteArray&)>& change) {
        desk_.reset();
        QFile file(path_);
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        QByteArray bytes = file.readAll();
        change(bytes);
        file.resize(0);
        file.seek(0);
        file.write(bytes);
        file.close();
        reopen();
    }
    void reopen() {
        document_ = std::make_unique<LessonDocument>();
        desk_ = std::make_unique<BookDesk>(*document_, window_);
        bar_ = std::make_unique<BookBar>(*desk_, &window_);
        ASSERT_TRUE(desk_->openBook(path_));
        ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    }
    bool offers(const QString& name) const {
        const auto* button = findNamed<QPushButton>(*bar_, name);
        return button != nullptr && !button->isHidden();
    }

    std::unique_ptr<BookBar> bar_;
};

TEST_F(Bar, ABookThatIsWholeNeedsNoWords) {
    desk_.reset();
    reopen();
    EXPECT_TRUE(bar_->isHidden());
    EXPECT_TRUE(desk_->isWritable());
}

TEST_F(Bar, ANewerBookCanOnlyBeReadAndCopied) {
    openAfter([](QByteArray& bytes) { bytes[63] = 99; });
    EXPECT_TRUE(bar_->text().contains("newer Rangeline")) << bar_->text().toStdString();
    EXPECT_TRUE(offers("Save a copy ..."));
    EXPECT_FALSE(offers("Save what can be read ..."));
    EXPECT_FALSE(desk_->isWritable());
    openFirst();
    EXPECT_FALSE(document_->lesson().placements.empty()) << "its lessons are shown";
}

TEST_F(Bar, ABookThatAnotherWindowHoldsCanOnlyBeRead) {
    desk_.reset();
    const auto other = Book::open(nameOnDisk(path_));
    ASSERT_FALSE(other.value()->verify());
    reopen();
    EXPECT_TRUE(bar_->text().contains("open in another window")) << bar_->text().toStdString();
    EXPECT_FALSE(desk_->isWritable());
    openFirst();
    const Lesson before = document_->lesson();
    ASSERT_TRUE(applyName("Mine"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->journal().fault().has_value(); }));
    EXPECT_TRUE(document_->isModified()) << "it is not said to be kept";
    EXPECT_EQ(inTheFile(), before);
}

TEST_F(Bar, ADamagedBookIsRefusedAndWhatCanBeReadIsSavedElsewhereWithTheLosses) {
    openAfter([](QByteArray& bytes) {
        const qsizetype at = bytes.indexOf("Peel, seed");
        ASSERT_GE(at, 0);
        bytes[at] = 'p';
    });
    EXPECT_TRUE(bar_->text().contains("damaged")) << bar_->text().toStdString();
    EXPECT_TRUE(offers("Save what can be read ..."));
    EXPECT_FALSE(desk_->isWritable());
    QString said;
    QTimer::singleShot(200, [&said] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(box, nullptr);
        said = box->text();
        box->accept();
    });
    const QString saved = folder_.filePath("saved.rangeline");
    desk_->salvageTo(path_, saved);
    EXPECT_TRUE(said.contains("saved.rangeline")) << said.toStdString();
    EXPECT_TRUE(said.contains("not as they were written")) << said.toStdString();
    EXPECT_TRUE(desk_->isOpen(saved));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk_->book()->isSettled(); }));
    EXPECT_TRUE(desk_->isWritable());
    EXPECT_TRUE(bar_->isHidden());
}

}  // namespace
}  // namespace rangeline::test
