#pragma once

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <memory>

#include "library/book_desk.h"
#include "library/samples_book.h"
#include "text/book_fault_text.h"

namespace rangeline::test {

/// The book of the samples, open on a desk.
class OpenDesk : public ::testing::Test {
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

}  // namespace rangeline::test
