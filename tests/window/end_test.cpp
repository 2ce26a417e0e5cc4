// However the program ends, what was not saved is offered when it starts again. There is no book
// here: where it should be made is no folder.

#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>
#include <QtTest>
#include <algorithm>
#include <csignal>
#include <cstdio>

#include "document/lesson_document.h"
#include "document/placing.h"
#include "library/open_book.h"
#include "library/samples_book.h"

namespace rangeline::test {
namespace {

constexpr int patience = 60'000;  // milliseconds

class End : public ::testing::Test {
  protected:
    void SetUp() override {
        LessonDocument document;
        ASSERT_FALSE(document.load(sample_));
        placed_ = static_cast<int>(document.lesson().placements.size());
        const PlacementKey first = document.lesson().placements.begin()->first;
        document.apply(takeAway(document.index(), {&first, 1}), "take off");
        left_ = static_cast<int>(document.lesson().placements.size());
    }

    void start(QProcess& process, const QString& task) const {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("QT_QPA_PLATFORM", "offscreen");
        environment.insert("HOME", home_.path());
        environment.insert("XDG_STATE_HOME", home_.path() + "/state");
        environment.insert("XDG_CONFIG_HOME", home_.path() + "/config");
        environment.insert("XDG_DATA_HOME", sample_ + "/a file is no folder");
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(RANGELINE_WINDOW_DRIVER), {sample_, task});
    }
    static bool waitsFor(QProcess& process, const QByteArray& words) {
        QByteArray said;
        while (!said.contains(words)) {
            if (!process.waitForReadyRead(patience)) {
                return false;
            }
            said += process.readAllStandardOutput();
        }
        return true;
    }
    bool isKept() const {
        return !QDir(home_.path() + "/state/rangeline/unsaved")
                    .entryList({"*.unsaved"}, QDir::Files)
                    .isEmpty();
    }
    QByteArray answer(const QString& button) const {
        QProcess process;
        start(process, QStringLiteral("answer:") + button);
        process.waitForFinished(patience);
        return process.readAllStandardOutput();
    }
    QByteArray changed() const { return QByteArray::number(left_) + " placed, not saved\n"; }

    QString sample_ = QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/first-lesson.json");
    QTemporaryDir home_;
    int placed_ = 0;
    int left_ = 0;  ///< placements after the change
};

TEST_F(End, KilledItOffersWhatWasNotSaved) {
    QProcess process;
    start(process, "edit");
    ASSERT_TRUE(waitsFor(process, "edited"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return isKept(); }));
    process.kill();
    process.waitForFinished(patience);
    EXPECT_EQ(process.exitStatus(), QProcess::CrashExit);
    EXPECT_EQ(answer("Go on with them"), changed());
    EXPECT_TRUE(isKept()) << "it is still not saved";
    EXPECT_EQ(answer("Give them up"), QByteArray::number(placed_) + " placed, saved\n");
    EXPECT_FALSE(isKept());
}

TEST_F(End, ToldToEndItKeepsTheLastChangeAndEndsWell) {
    for (const int signal : {SIGTERM, SIGINT, SIGHUP}) {
        QProcess process;
        start(process, "edit");
        ASSERT_TRUE(waitsFor(process, "edited"));
        ::kill(static_cast<pid_t>(process.processId()), signal);
        ASSERT_TRUE(process.waitForFinished(patience));
        EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
        EXPECT_EQ(process.exitCode(), 0);
        EXPECT_EQ(answer("Go on with them"), changed());
        EXPECT_EQ(answer("Give them up"), QByteArray::number(placed_) + " placed, saved\n");
    }
}

TEST_F(End, ToldToEndWhileItAsksItKeepsTheChange) {
    QProcess process;
    start(process, "ask");
    ASSERT_TRUE(waitsFor(process, "\nasked"));
    ::kill(static_cast<pid_t>(process.processId()), SIGTERM);
    ASSERT_TRUE(process.waitForFinished(patience));
    EXPECT_EQ(process.exitCode(), 0);
    EXPECT_EQ(answer("Ask later"), QByteArray::number(placed_) + " placed, saved\n");
    EXPECT_EQ(answer("Go on with them"), changed());
}

TEST_F(End, KilledWhileABookIsEditedNoKeptEditIsLost) {
    sample_ = home_.filePath("book.rangeline");
    ASSERT_FALSE(makeSamplesBook(sample_));
    const std::string path = nameOnDisk(sample_);
    constexpr int kills = 12;
    int all = 0;
    for (int round = 0; round < kills; ++round) {
        SCOPED_TRACE(round);
        QProcess process;
        start(process, "edits");
        QByteArray said;
        while (!said.contains('\n')) {
            ASSERT_TRUE(process.waitForReadyRead(patience));
            said += process.readAllStandardOutput();
        }
        process.waitForFinished(60 + 37 * round);  // milliseconds
        process.kill();
        process.waitForFinished(patience);
        EXPECT_EQ(process.exitStatus(), QProcess::CrashExit);
        said += process.readAllStandardOutput();
        // What is cut off in the middle was not said.
        const QList<QByteArray> numbers = said.left(said.lastIndexOf('\n')).split('\n');
        auto book = Book::open(path);
        ASSERT_TRUE(book.ok());
        ASSERT_FALSE(book.value()->verify());
        const auto items = book.value()->items();
        const auto lesson = std::ranges::find(items.value(), ItemKind::Lesson, &Item::kind);
        const int found = QByteArray::fromStdString(lesson->name).toInt();
        const int kept = numbers.back().toInt();
        EXPECT_TRUE(found == kept || found == kept + 1) << found << " of " << kept;
        all += found;
    }
    std::printf("%d kills, %d edits\n", kills, all);
}

TEST_F(End, ASecondWindowLeavesWhatTheFirstHoldsAlone) {
    QProcess first;
    start(first, "edit");
    ASSERT_TRUE(waitsFor(first, "edited"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return isKept(); }));
    QProcess second;
    start(second, "edit");  // would be stopped by a question
    EXPECT_TRUE(waitsFor(second, "edited"));
    second.kill();
    first.kill();
    second.waitForFinished(patience);
    first.waitForFinished(patience);
}

}  // namespace
}  // namespace rangeline::test
