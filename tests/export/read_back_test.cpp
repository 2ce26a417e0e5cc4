// What other programs read of exported files: Debian's python3-icalendar and python3-jsonschema,
// Python's readers of CSV and XML, librsvg. The zones' rules of the expected times are Python's
// zoneinfo.

#include <gmock/gmock.h>

#include <QFile>
#include <QImage>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cstdlib>

#include "export/exports.h"
#include "print/print_lessons.h"

namespace rangeline {
namespace {

using testing::AllOf;
using testing::Contains;
using testing::HasSubstr;

class ReadBack : public testing::Test {
  protected:
    void SetUp() override {
        if (run({"-c", "import icalendar, jsonschema"}) != 0) {
            GTEST_SKIP() << "missing programs: python3-icalendar, python3-jsonschema";
        }
    }

    int run(const QStringList& words) {
        QProcess python;
        python.start(QStringLiteral("/usr/bin/python3"), words);
        python.waitForFinished();
        said_ = python.readAllStandardError().toStdString();
        lines_.clear();
        for (const QByteArray& line : python.readAllStandardOutput().split('\n')) {
            lines_.push_back(line.toStdString());
        }
        return python.exitStatus() == QProcess::NormalExit ? python.exitCode() : -1;
    }

    /// The lines that the other program reads.
    const std::vector<std::string>& read(const char* how, std::string_view key,
                                         const test::Prepared& lesson) {
        const auto made = findExport(key)->make(lesson.input(), {1'700'000'000});
        EXPECT_TRUE(made.ok());
        const QString path = folder_.filePath(QStringLiteral("made"));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(made.value()));
        file.close();
        EXPECT_EQ(run({QStringLiteral(RANGELINE_SOURCE_DIR "/tests/export/read_back.py"),
                       QString::fromUtf8(how), path}),
                  0)
            << said_;
        return lines_;
    }

    /// The serving time as Python's zoneinfo has it in UTC, plus so many seconds.
    std::string utc(const Head& head, std::int64_t seconds) {
        const auto script =
            QStringLiteral(
                "from datetime import *;from zoneinfo import ZoneInfo;"
                "t=datetime.fromisoformat('%1').replace(tzinfo=ZoneInfo('%2'));"
                "t=t.astimezone(timezone.utc)+timedelta(seconds=%3);"
                "print(t.strftime('%Y-%m-%dT%H:%M:%SZ'))")
                .arg(QString::fromStdString(head.servingTime), QString::fromStdString(head.zone))
                .arg(seconds);
        EXPECT_EQ(run({"-c", script}), 0) << said_;
        return lines_.front();
    }

    /// The same lesson served at another time.
    static Lesson servedAt(const char* time, const char* zone) {
        Lesson lesson = test::placedLesson(12)->lesson();
        lesson.head.servingTime = time;
        lesson.head.zone = zone;
        return lesson;
    }

    QTemporaryDir folder_;
    std::string said_;
    std::vector<std::string> lines_;
};

struct Night {
    const char* what;
    const char* time;
    const char* zone;
};

/// An hour is skipped or comes twice between the first step and serving, or the zone is far off.
constexpr Night nights[] = {{"spring in New York", "2027-03-14T03:10", "America/New_York"},
                            {"autumn in New York", "2027-11-07T03:10", "America/New_York"},
                            {"spring in Berlin", "2027-03-28T04:00", "Europe/Berlin"},
                            {"autumn in Berlin", "2027-10-31T03:30", "Europe/Berlin"},
                            {"autumn on Lord Howe", "2027-04-04T02:15", "Australia/Lord_Howe"},
                            {"any day in Kathmandu", "2027-06-01T19:00", "Asia/Kathmandu"}};

TEST_F(ReadBack, CalendarHasTheTimesOfTheLessonOnNightsWhenClocksChange) {
    for (const Night& night : nights) {
        SCOPED_TRACE(night.what);
        const test::Prepared lesson(servedAt(night.time, night.zone));
        const std::vector<std::string> events = read("ics", "calendar", lesson);
        for (const auto& [key, placement] : lesson.lesson().placements) {
            const std::string begin = utc(lesson.lesson().head, placement.start.inSeconds());
            EXPECT_THAT(events, Contains(HasSubstr("|" + begin + "|")));
        }
        EXPECT_THAT(events,
                    Contains(AllOf(HasSubstr("serve."), HasSubstr(utc(lesson.lesson().head, 0)))));
    }
}

TEST_F(ReadBack, TablesHaveARowForEachUseAndEveryRowAllCells) {
    const auto lesson = test::placedLesson(12);
    for (const char* key : {"plan", "cooks", "equipment"}) {
        SCOPED_TRACE(key);
        const std::vector<std::string> rows = read("csv", key, *lesson);
        ASSERT_GT(rows.size(), 6U);
        const auto cells = std::ranges::count(rows.front(), '|');
        for (std::size_t i = 0; i + 1 < rows.size(); ++i) {  // the last line is empty
            EXPECT_EQ(std::ranges::count(rows[i], '|'), cells) << rows[i];
        }
    }
}

TEST_F(ReadBack, TablesKeepNamesThatWouldBeFormulas) {
    Lesson lesson = test::placedLesson(12)->lesson();
    lesson.servings.front().dish.components.front().steps.front().name = "=cmd|x, \"y\"";
    EXPECT_THAT(read("csv", "plan", test::Prepared(lesson)), Contains(HasSubstr("'=Cmd|x, \"y\"")));
}

TEST_F(ReadBack, DrawingIsAnSvgWhoseTextsAreTexts) {
    const std::vector<std::string> texts = read("svg", "drawing", *test::placedLesson(12));
    EXPECT_EQ(texts.front(), "{http://www.w3.org/2000/svg}svg");
    EXPECT_THAT(texts, Contains("serve"));
}

/// The mean difference of their greys, 0 to 255.
double difference(const QImage& a, const QImage& b) {
    EXPECT_EQ(a.size(), b.size());
    const QImage left = a.convertToFormat(QImage::Format_Grayscale8);
    const QImage right = b.convertToFormat(QImage::Format_Grayscale8);
    double sum = 0;
    for (int y = 0; y < left.height(); ++y) {
        for (int x = 0; x < left.width(); ++x) {
            sum += std::abs(qGray(left.pixel(x, y)) - qGray(right.pixel(x, y)));
        }
    }
    return sum / (left.width() * left.height());
}

TEST(Drawing, LooksAsThePictureDoesWhenLibrsvgRendersIt) {
    if (QStandardPaths::findExecutable(QStringLiteral("rsvg-convert")).isEmpty()) {
        GTEST_SKIP() << "missing program: librsvg2-bin";
    }
    const auto lesson = test::placedLesson(12);
    const auto picture = findExport("picture")->make(lesson->input(), {});
    const auto drawing = findExport("drawing")->make(lesson->input(), {});
    ASSERT_TRUE(picture.ok() && drawing.ok());
    const QImage expected = QImage::fromData(QByteArray::fromStdString(picture.value()));
    QProcess renderer;
    renderer.start(QStringLiteral("rsvg-convert"), {"-w", QString::number(expected.width()), "-h",
                                                    QString::number(expected.height())});
    renderer.write(QByteArray::fromStdString(drawing.value()));
    renderer.closeWriteChannel();
    renderer.waitForFinished();
    const QImage rendered = QImage::fromData(renderer.readAllStandardOutput());
    ASSERT_FALSE(rendered.isNull()) << renderer.readAllStandardError().toStdString();
    QImage blank = expected;
    blank.fill(expected.pixelColor(0, 0));
    EXPECT_LT(difference(rendered, expected), difference(blank, expected) / 2);
}

TEST_F(ReadBack, RecipeHasTheTypesOfTheVocabulary) {
    const auto lesson = test::placedLesson(12);
    const Serving& serving = lesson->lesson().servings.front();
    EXPECT_THAT(read("recipe", "recipe", *lesson).front(),
                HasSubstr(serving.dish.name + "|" + std::to_string(serving.covers) + " servings|"));
}

}  // namespace
}  // namespace rangeline
