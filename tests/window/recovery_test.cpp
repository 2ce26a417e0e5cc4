// What is not saved is kept while the program runs, and only then in use.

#include "window/recovery.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QtTest>

#include "document/placing.h"

namespace rangeline::test {
namespace {

class RecoveryTest : public ::testing::Test {
  protected:
    void SetUp() override {
        ASSERT_FALSE(document_.load(sample_));
        recovery_ = std::make_unique<Recovery>(document_, folder_);
    }

    void takeOneOff() {
        const PlacementKey key = document_.lesson().placements.begin()->first;
        ASSERT_FALSE(document_.apply(takeAway(document_.index(), {&key, 1}), "take off"));
    }
    int files() const { return static_cast<int>(QDir(folder_).entryList({"*.unsaved"}).size()); }
    std::vector<std::unique_ptr<KeptLesson>> left() const { return KeptLesson::left(folder_); }

    const QString sample_ = QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/first-lesson.json");
    QTemporaryDir dir_;
    const QString folder_ = dir_.path() + QStringLiteral("/rangeline/unsaved");
    LessonDocument document_;
    std::unique_ptr<Recovery> recovery_;
};

TEST_F(RecoveryTest, AChangeIsKeptAMomentLater) {
    EXPECT_EQ(files(), 0);
    takeOneOff();
    ASSERT_TRUE(QTest::qWaitFor([&] { return files() == 1; }));
    EXPECT_TRUE(left().empty()) << "it is in use";

    recovery_.reset();  // as after the program's end
    const auto kept = left();
    ASSERT_EQ(kept.size(), 1U);
    const auto unsaved = kept.front()->read();
    ASSERT_TRUE(unsaved.has_value());
    EXPECT_EQ(unsaved->lesson, document_.lesson());
    EXPECT_EQ(unsaved->path, sample_);
}

TEST_F(RecoveryTest, NothingIsKeptOfWhatIsTakenBackOrSaved) {
    takeOneOff();
    recovery_->flush();
    EXPECT_EQ(files(), 1);
    document_.undoStack().undo();
    EXPECT_EQ(files(), 0);

    document_.undoStack().redo();
    recovery_->flush();
    EXPECT_EQ(files(), 1);
    ASSERT_FALSE(document_.save(dir_.filePath("saved.json")));
    EXPECT_EQ(files(), 0);
}

TEST_F(RecoveryTest, GivenUpChangesAreNotKept) {
    takeOneOff();
    recovery_->flush();
    recovery_->discard();
    EXPECT_EQ(files(), 0);
    QTest::qWait(300);
    EXPECT_EQ(files(), 0);
}

TEST_F(RecoveryTest, WhatIsGoneOnWithStaysKeptUntilItIsSaved) {
    takeOneOff();
    const Lesson changed = document_.lesson();
    recovery_->flush();
    recovery_.reset();

    LessonDocument later;
    Recovery recovery(later, folder_);
    auto kept = left();
    ASSERT_EQ(kept.size(), 1U);
    auto unsaved = kept.front()->read();
    later.goOnWith(std::move(unsaved->lesson), unsaved->path);
    recovery.goOnWith(std::move(kept.front()));
    EXPECT_EQ(later.lesson(), changed);
    EXPECT_TRUE(later.isModified());
    EXPECT_EQ(files(), 1);
    EXPECT_TRUE(left().empty());
    ASSERT_FALSE(later.save(dir_.filePath("saved.json")));
    EXPECT_EQ(files(), 0);
    EXPECT_FALSE(later.isModified());
}

TEST_F(RecoveryTest, SaysOnceThatNothingCanBeKept) {
    QFile inTheWay(dir_.filePath("rangeline"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    QSignalSpy failed(recovery_.get(), &Recovery::failed);
    takeOneOff();
    recovery_->flush();
    takeOneOff();
    recovery_->flush();
    EXPECT_EQ(failed.count(), 1);
}

TEST_F(RecoveryTest, WhatCannotBeReadIsLeftAlone) {
    takeOneOff();
    recovery_->flush();
    recovery_.reset();
    const QString path = QDir(folder_).entryInfoList({"*.unsaved"}).front().filePath();
    QFile broken(path);
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("{\"lesson\": \"");
    broken.close();
    const auto kept = left();
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_FALSE(kept.front()->read().has_value());
    EXPECT_TRUE(QFile::exists(path));
}

TEST(UnsavedFolder, IsInTheStateHomeIfThatIsAbsolute) {
    const QByteArray before = qgetenv("XDG_STATE_HOME");
    qputenv("XDG_STATE_HOME", "/somewhere");
    EXPECT_EQ(unsavedFolder(), QStringLiteral("/somewhere/rangeline/unsaved"));
    qputenv("XDG_STATE_HOME", "not/absolute");
    EXPECT_EQ(unsavedFolder(), QDir::homePath() + "/.local/state/rangeline/unsaved");
    before.isEmpty() ? qunsetenv("XDG_STATE_HOME") : qputenv("XDG_STATE_HOME", before);
}

}  // namespace
}  // namespace rangeline::test
