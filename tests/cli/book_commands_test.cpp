// Books on the command line.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include "cli/run_program.h"
#include "exchange/lesson_file.h"
#include "support/rich_lesson.h"

namespace rangeline::test {
namespace {

using testing::HasSubstr;

class BookCommands : public testing::Test {
  protected:
    QString path(const char* name) const { return folder_.filePath(QString::fromUtf8(name)); }

    QByteArray bytesOf(const char* name) const {
        QFile file(path(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }

    /// Copies a lesson of that name into the book.
    void put(const std::string& name) const {
        Lesson lesson = richLesson();
        lesson.head.name = name;
        EXPECT_FALSE(saveLesson(path("lesson.json").toStdString(), lesson));
        const Ended ended = runProgram({"copy", path("lesson.json"), path("my.rangeline")});
        EXPECT_EQ(ended.exit, 0) << ended.err.toStdString();
    }

    QTemporaryDir folder_;
};

TEST_F(BookCommands, CopyInAndOutGivesTheSameBytes) {
    put("Supper");
    const QByteArray before = bytesOf("lesson.json");
    const Ended ended = runProgram({"copy", path("my.rangeline"), "Supper", path("out.json")});
    EXPECT_EQ(ended.exit, 0) << ended.err.toStdString();
    EXPECT_EQ(bytesOf("out.json"), before);
}

TEST_F(BookCommands, ListNamesWhatIsInTheBook) {
    put("Supper");
    put("Brunch");
    EXPECT_THAT(runProgram({"list", path("my.rangeline")}).out.toStdString(), HasSubstr("Brunch"));
    const auto items =
        QJsonDocument::fromJson(runProgram({"list", path("my.rangeline"), "--json"}).out)
            .object()["items"]
            .toArray();
    ASSERT_EQ(items.size(), 2);
    EXPECT_EQ(items.at(1).toObject()["name"].toString(), "Brunch");
    EXPECT_EQ(items.at(1).toObject()["kind"].toString(), "lesson");
}

TEST_F(BookCommands, EveryCommandTakesALessonOfABook) {
    put("Supper");
    const QString book = path("my.rangeline");
    const Ended fromFile = runProgram({"check", path("lesson.json"), "--json"});
    EXPECT_EQ(runProgram({"check", book, "Supper", "--json"}).out, fromFile.out);
    EXPECT_EQ(runProgram({"check", book, "#1", "--json"}).out, fromFile.out);
    EXPECT_EQ(runProgram({"check", book, "--json"}).out, fromFile.out) << "there is only one";
    EXPECT_EQ(runProgram({"explain", book, "Supper", "--json"}).out,
              runProgram({"explain", path("lesson.json"), "--json"}).out);
}

TEST_F(BookCommands, ANameThatIsNotThereOrTwiceIsSaidSo) {
    put("Supper");
    put("Supper");
    const QString book = path("my.rangeline");
    const Ended twice = runProgram({"check", book, "Supper"});
    EXPECT_EQ(twice.exit, 2);
    EXPECT_THAT(twice.err.toStdString(), HasSubstr("#1, #2"));
    const Ended none = runProgram({"check", book, "Lunch"});
    EXPECT_EQ(none.exit, 2);
    EXPECT_THAT(none.err.toStdString(), HasSubstr("Lunch"));
    EXPECT_EQ(runProgram({"check", book}).exit, 2);
}

TEST_F(BookCommands, ADamagedBookIsRefusedAndStaysAsItIs) {
    put("Supper");
    QByteArray bytes = bytesOf("my.rangeline");
    bytes.replace("Supper", "Supped");
    QFile file(path("my.rangeline"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
    file.close();
    for (const QStringList& words : {QStringList{"list", path("my.rangeline")},
                                     {"check", path("my.rangeline"), "Supped"},
                                     {"copy", path("lesson.json"), path("my.rangeline")}}) {
        const Ended ended = runProgram(words);
        EXPECT_EQ(ended.exit, 2);
        EXPECT_THAT(ended.err.toStdString(), HasSubstr("damaged"));
    }
    EXPECT_EQ(bytesOf("my.rangeline"), bytes);
}

TEST_F(BookCommands, CopyNeverReplacesABookOrWritesIntoAnotherFile) {
    put("Supper");
    const QByteArray book = bytesOf("my.rangeline");
    const QByteArray lesson = bytesOf("lesson.json");
    EXPECT_EQ(runProgram({"copy", path("my.rangeline"), "Supper", path("my.rangeline")}).exit, 2);
    EXPECT_EQ(runProgram({"copy", path("lesson.json"), path("lesson.json")}).exit, 2);
    EXPECT_EQ(runProgram({"copy", path("lesson.json")}).exit, 2);
    EXPECT_EQ(runProgram({"copy", path("my.rangeline"), "Supper"}).exit, 2) << "to which file?";
    EXPECT_EQ(runProgram({"list", path("lesson.json")}).exit, 2);
    EXPECT_EQ(bytesOf("my.rangeline"), book);
    EXPECT_EQ(bytesOf("lesson.json"), lesson);
}

}  // namespace
}  // namespace rangeline::test
