// The program as a user calls it: exits, streams, files.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <map>

#include "check/check.h"
#include "cli/run_program.h"
#include "exchange/lesson_file.h"
#include "exchange/safe_write.h"
#include "support/full_disk.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

/// Two steps in one pan and a plate; nothing is placed yet.
LessonBuilder supper() {
    LessonBuilder builder;
    builder.burner("left");
    builder.ware("pan", "saute-pan").cleaning.takes = 2_min;
    for (const char* id : {"leeks", "glaze"}) {
        Step& step = builder.step(id, {hands(3_min), away(5_min)});
        step.heat = onBurner();
        step.wares = {fresh("saute-pan")};
        step.wares.front().turnedOut = true;
    }
    builder.step("plate", {hands(2_min)}).plates = true;
    builder.uses("plate", "leeks");
    builder.uses("plate", "glaze");
    return builder;
}

class CommandLine : public testing::Test {
  protected:
    QString path(const char* name) const { return folder_.filePath(QString::fromUtf8(name)); }

    QString stored(const Lesson& lesson, const char* name = "lesson.json") const {
        EXPECT_FALSE(saveLesson(path(name).toStdString(), lesson));
        return path(name);
    }

    QString storedText(const QByteArray& text) const {
        QFile file(path("text.json"));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }

    static QJsonObject json(const QByteArray& bytes) {
        return QJsonDocument::fromJson(bytes).object();
    }

    static QByteArray contentOf(const QString& name) {
        QFile file(name);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }

    QTemporaryDir folder_;
};

TEST_F(CommandLine, HelpAndVersionGoToStandardOutput) {
    for (const QStringList& words : {QStringList{"--help"}, {"--version"}, {"check", "--help"}}) {
        const Ended ended = runProgram(words);
        EXPECT_EQ(ended.exit, 0);
        EXPECT_THAT(ended.out.toStdString(), Not(IsEmpty()));
        EXPECT_THAT(ended.err.toStdString(), IsEmpty());
    }
}

TEST_F(CommandLine, WrongUsageEndsInTwoAndSaysWhat) {
    const QString file = stored(supper().lesson);
    for (const QStringList& words : {QStringList{},
                                     {"cook", file},
                                     {"check"},
                                     {"check", file, file},
                                     {"check", file, "--no"},
                                     {"arrange", file, "--limit"},
                                     {"arrange", file, "--limit", "soon"},
                                     {"arrange", file, "--threads", "3"},
                                     {"check", file, "--units", "cubits"},
                                     {"print", file},
                                     {"print", file, "-o", path("a.pdf"), "--paper", "a0"},
                                     {"print", file, "-o", path("a.pdf"), "--sheet", "poem"}}) {
        const Ended ended = runProgram(words);
        EXPECT_EQ(ended.exit, 2) << words.join(' ').toStdString();
        EXPECT_THAT(ended.out.toStdString(), IsEmpty());
        EXPECT_THAT(ended.err.toStdString(), HasSubstr("rangeline: "));
    }
    EXPECT_FALSE(QFile::exists(path("a.pdf")));
}

TEST_F(CommandLine, UnusableInputEndsInTwoWithOneSentence) {
    for (const QString& file :
         {path("missing.json"), folder_.path(), storedText(""), storedText("{"), storedText("[1]"),
          storedText("{\"rangeline\":\"lesson\",\"version\":99}")}) {
        for (const char* command : {"check", "arrange", "explain"}) {
            const Ended ended = runProgram({command, file});
            EXPECT_EQ(ended.exit, 2) << command << ' ' << file.toStdString();
            EXPECT_THAT(ended.out.toStdString(), IsEmpty());
            EXPECT_EQ(ended.err.count('\n'), 1) << ended.err.toStdString();
        }
    }
}

TEST_F(CommandLine, CheckEndsInOneWhileStepsAreNotPlaced) {
    const Ended ended = runProgram({"check", stored(supper().lesson)});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("No collisions."));
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("Still to do"));
}

TEST_F(CommandLine, ArrangeWritesALessonThatChecks) {
    const QString out = path("arranged.json");
    const Ended arranged = runProgram({"arrange", stored(supper().lesson), "-o", out});
    ASSERT_EQ(arranged.exit, 0) << arranged.err.toStdString();
    EXPECT_THAT(arranged.out.toStdString(), HasSubstr("Proved"));

    const Ended checked = runProgram({"check", out});
    EXPECT_EQ(checked.exit, 0) << checked.out.toStdString();
    const auto lesson = loadLesson(out.toStdString());
    ASSERT_TRUE(lesson.ok());
    for (const Finding& finding : checkLesson(lesson.value(), expand(lesson.value()))) {
        EXPECT_EQ(finding.severity, Severity::Caution);
    }
}

TEST_F(CommandLine, ArrangeAnswersProgramsInJson) {
    const Ended ended = runProgram({"arrange", stored(supper().lesson), "--json"});
    ASSERT_EQ(ended.exit, 0);
    const QJsonObject answer = json(ended.out);
    EXPECT_EQ(answer["status"].toString(), "proved");
    EXPECT_EQ(answer["plan"].toArray().size(), 4);  // three steps and a wash
}

TEST_F(CommandLine, ArrangeGivesTheSamePlanTwice) {
    const QString file = stored(supper().lesson);
    const Ended first = runProgram({"arrange", file, "-o", "-"});
    EXPECT_EQ(first.exit, 0);
    EXPECT_EQ(runProgram({"arrange", file, "-o", "-"}).out, first.out);
}

TEST_F(CommandLine, ArrangeOnTwoThreadsWritesALessonThatChecks) {
    const QString out = path("two.json");
    const QString file = stored(supper().lesson);
    ASSERT_EQ(runProgram({"arrange", file, "--threads", "2", "-o", out}).exit, 0);
    EXPECT_EQ(runProgram({"check", out}).exit, 0);
}

TEST_F(CommandLine, NotPossibleEndsInOneAndLeavesTheOldFile) {
    LessonBuilder builder = supper();
    builder.lesson.head.kitchenOpens = minute(-5);
    const QString out = stored(supper().lesson, "old.json");
    const auto before = loadLesson(out.toStdString()).value();
    const Ended ended = runProgram({"arrange", stored(builder.lesson), "-o", out});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("Not possible"));
    EXPECT_EQ(loadLesson(out.toStdString()).value(), before);
}

TEST_F(CommandLine, ExplainNamesWhatDecidesPlating) {
    const QString file = path("arranged.json");
    ASSERT_EQ(runProgram({"arrange", stored(supper().lesson), "-o", file}).exit, 0);
    const Ended ended = runProgram({"explain", file});
    EXPECT_EQ(ended.exit, 0);
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("What decides plating"));
    EXPECT_THAT(json(runProgram({"explain", file, "--json"}).out).keys().size(), testing::Ge(1));
}

TEST_F(CommandLine, ExplainSaysWhyAPlanDoesNotStartLater) {
    const QString file = path("arranged.json");
    ASSERT_EQ(runProgram({"arrange", stored(supper().lesson), "-o", file}).exit, 0);
    EXPECT_THAT(runProgram({"explain", file}).out.toStdString(),
                HasSubstr("These together keep it from starting later"));
    const QJsonObject why =
        json(runProgram({"explain", file, "--json"}).out)["why_not_later"].toObject();
    EXPECT_EQ(why["status"].toString(), "smallest");
    EXPECT_FALSE(why["requirements"].toArray().isEmpty());
}

TEST_F(CommandLine, ExplainNamesWhatIsNotPossibleAndWhatWouldHelp) {
    LessonBuilder builder = supper();
    builder.lesson.head.kitchenOpens = minute(-5);
    const QString file = stored(builder.lesson);
    const Ended ended = runProgram({"explain", file});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("cannot hold together"));
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("Open the kitchen"));
    const Ended machine = runProgram({"explain", file, "--json"});
    EXPECT_EQ(machine.exit, 1);
    const QJsonObject why = json(machine.out)["why_no_plan"].toObject();
    EXPECT_EQ(why["status"].toString(), "smallest");
    EXPECT_FALSE(why["remedies"].toArray().isEmpty());
}

TEST_F(CommandLine, ExplainOfAPlanThatCollidesSaysThatItDoes) {
    const QString file = path("arranged.json");
    ASSERT_EQ(runProgram({"arrange", stored(supper().lesson), "-o", file}).exit, 0);
    Lesson lesson = loadLesson(file.toStdString()).value();
    lesson.placements.at(key("glaze")).start = lesson.placements.at(key("leeks")).start;
    const Ended ended = runProgram({"explain", stored(lesson, "collides.json")});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_THAT(ended.err.toStdString(), HasSubstr("collides"));
}

TEST_F(CommandLine, WithoutAPlanNothingIsWrittenToStandardOutputButTheReasonIsSaid) {
    LessonBuilder builder = supper();
    builder.lesson.head.kitchenOpens = minute(-5);
    const Ended ended = runProgram({"arrange", stored(builder.lesson), "-o", "-"});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_THAT(ended.out.toStdString(), IsEmpty());
    EXPECT_THAT(ended.err.toStdString(), HasSubstr("Not possible"));
}

TEST_F(CommandLine, AnAnswerThatCannotBeWrittenIsNoSuccess) {
    QProcess process;
    process.setStandardOutputFile(QStringLiteral("/dev/full"));
    process.start(QStringLiteral(RANGELINE_PROGRAM), {"arrange", stored(supper().lesson)});
    ASSERT_TRUE(process.waitForFinished());
    EXPECT_EQ(process.exitCode(), 2);
    EXPECT_THAT(process.readAllStandardError().toStdString(), HasSubstr("could not be written"));
}

TEST_F(CommandLine, RehearseOfALessonWithoutStepsSaysThatThereIsNothing) {
    const Ended ended = runProgram({"rehearse", stored(LessonBuilder().lesson)});
    EXPECT_EQ(ended.exit, 1);
    EXPECT_THAT(ended.err.toStdString(), HasSubstr("nothing is to be ready"));
}

TEST_F(CommandLine, ALessonComesFromStandardInput) {
    const QByteArray lesson = QByteArray::fromStdString(writeLesson(supper().lesson));
    EXPECT_EQ(runProgram({"check", "-"}, lesson).exit, 1);
    EXPECT_EQ(runProgram({"check", "-"}, lesson.left(40)).exit, 2);
}

TEST_F(CommandLine, RehearseSaysTheChanceAndHowMuchEarlier) {
    LessonBuilder builder = supper();
    for (Serving& serving : builder.lesson.servings) {
        for (Component& component : serving.dish.components) {
            for (Step& step : component.steps) {
                step.time.longest = step.time.likely * 2;
            }
        }
    }
    const QString file = stored(builder.lesson);
    EXPECT_EQ(runProgram({"rehearse", file}).exit, 1) << "not placed yet";
    ASSERT_EQ(runProgram({"arrange", file, "-o", file}).exit, 0);
    const QStringList words{"rehearse", file, "--runs", "500", "--seed", "3", "--json"};
    const Ended ended = runProgram(words);
    EXPECT_EQ(ended.exit, 0) << ended.err.toStdString();
    const QJsonObject it = json(ended.out);
    EXPECT_EQ(it["runs"], 500);
    EXPECT_LT(it["onTime"].toDouble(), 0.5);
    EXPECT_GT(it["earlierSeconds"].toObject()["90"].toInt(),
              it["earlierSeconds"].toObject()["80"].toInt());
    EXPECT_FALSE(it["decides"].toArray().isEmpty());
    EXPECT_EQ(runProgram(words).out, ended.out) << "the same seed";
}

TEST_F(CommandLine, ImportMakesALessonThatCanBeArranged) {
    const QString page = storedText(R"(<html><script type="application/ld+json">
        {"@type": "Recipe", "name": "Leek pot", "recipeYield": 6, "recipeIngredient": ["3 leeks"],
         "recipeInstructions": ["Slice the leeks, 5 minutes.", "Bake them at 375°F for 30 minutes."]}
        </script></html>)");
    const QString out = path("made.json");
    const Ended ended = runProgram({"import", page, "-o", out, "--json"});
    EXPECT_EQ(ended.exit, 0) << ended.err.toStdString();
    const QJsonObject recipe = json(ended.out)["recipes"].toArray().at(0).toObject();
    EXPECT_EQ(recipe["covers"], 6);
    EXPECT_EQ(recipe["steps"], 2);
    EXPECT_THAT(recipe["remarks"].toArray(), IsEmpty());
    EXPECT_EQ(runProgram({"arrange", out, "-o", out}).exit, 0);
    EXPECT_EQ(runProgram({"check", out}).exit, 0);
}

TEST_F(CommandLine, TheUnitsAskedForGoBeforeThoseOfTheLesson) {
    const QString sample = QStringLiteral(RANGELINE_SOURCE_DIR "/sample-data/harvest-plate.json");
    const Ended own = runProgram({"check", sample});
    EXPECT_THAT(own.out.toStdString(), HasSubstr("°F"));
    const Ended metric = runProgram({"check", sample, "--units", "metric"});
    EXPECT_THAT(metric.out.toStdString(), HasSubstr("°C"));
    EXPECT_THAT(metric.out.toStdString(), Not(HasSubstr("°F")));
    EXPECT_EQ(metric.exit, own.exit);
}

TEST_F(CommandLine, ImportSaysWhyThereIsNothingToImport) {
    for (const char* text : {"<html></html>", "{}", "{ no json", "", "\xFF\xFE"}) {
        const Ended ended = runProgram({"import", storedText(text), "-o", path("made.json")});
        EXPECT_EQ(ended.exit, 2) << text;
        EXPECT_THAT(ended.err.toStdString(), HasSubstr("text.json: "));
        EXPECT_FALSE(QFile::exists(path("made.json")));
    }
}

TEST_F(CommandLine, AFullDiskLeavesTheOldExportAndTheOldSheet) {
    const QString file = stored(supper().lesson);
    ASSERT_EQ(runProgram({"arrange", file, "-o", file}).exit, 0);
    const std::map<QString, QString> commandOf = {
        {"a.ics", "export"},           {"a.csv", "export"},  {"a.cooks.csv", "export"},
        {"a.equipment.csv", "export"}, {"a.svg", "export"},  {"a.png", "export"},
        {"a.jsonld", "export"},        {"a.json", "export"}, {"a.pdf", "print"}};
    for (const auto& [name, command] : commandOf) {
        SCOPED_TRACE(name.toStdString());
        const QString out = folder_.filePath(name);
        ASSERT_FALSE(writeFile(out.toStdString(), "old"));
        Ended ended;
        {
            const FullDisk full(20);
            ended = runProgram({command, file, "-o", out});
        }
        EXPECT_EQ(ended.exit, 2);
        EXPECT_THAT(ended.err.toStdString(), HasSubstr(name.toStdString()));
        EXPECT_EQ(contentOf(out), "old");
        ASSERT_TRUE(QFile::remove(out));
    }
    EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files).size(), 1) << "left-overs";
}

TEST_F(CommandLine, CoversTellsWhatOtherCoversChange) {
    LessonBuilder builder = supper();
    Serving& serving = builder.lesson.servings.front();
    serving.covers = serving.dish.writtenFor = 4;
    serving.dish.components.front().ingredients = {{"leeks", Amount{2, 2, "cup"}, {}, {}, {}}};
    const QString file = stored(builder.lesson);
    const Ended ended = runProgram({"covers", file, "8"});
    EXPECT_EQ(ended.exit, 0) << ended.err.toStdString();
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("8 covers instead of 4"));
    EXPECT_THAT(ended.out.toStdString(), HasSubstr("leeks: 4 cups instead of 2 cups"));
    const QJsonObject object = json(runProgram({"covers", file, "8", "--json"}).out);
    EXPECT_EQ(object["amounts"].toArray().at(0).toObject()["after"].toString(), "4 cups");
    EXPECT_THAT(runProgram({"covers", file, "4"}).out.toStdString(), HasSubstr("nothing changes"));
}

TEST_F(CommandLine, CoversThatCannotBeServedAreRefusedWithASentence) {
    const QString file = stored(supper().lesson);
    for (const char* covers : {"0", "-3", "many", "99999999", "4.5"}) {
        const Ended ended = runProgram({"covers", file, covers});
        EXPECT_EQ(ended.exit, 2) << covers;
        EXPECT_THAT(ended.err.toStdString(), Not(IsEmpty())) << covers;
        EXPECT_THAT(ended.out.toStdString(), IsEmpty()) << covers;
    }
}

TEST_F(CommandLine, PrintWritesAPdfWithoutADisplay) {
    const QString file = path("arranged.json");
    ASSERT_EQ(runProgram({"arrange", stored(supper().lesson), "-o", file}).exit, 0);
    const Ended ended = runProgram({"print", file, "-o", path("sheet.pdf"), "--paper", "letter"});
    ASSERT_EQ(ended.exit, 0) << ended.err.toStdString();
    QFile pdf(path("sheet.pdf"));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
}

}  // namespace
}  // namespace rangeline::test
