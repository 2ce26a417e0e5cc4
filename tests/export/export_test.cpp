#include <gmock/gmock.h>

#include <QImage>
#include <set>

#include "export/exports.h"
#include "print/print_lessons.h"

namespace rangeline {
namespace {

using testing::HasSubstr;
using testing::Not;

class Exporting : public testing::Test {
  protected:
    std::string made(std::string_view key, ExportSetup setup = {}) const {
        const auto result = findExport(key)->make(lesson_->input(), setup);
        EXPECT_TRUE(result.ok());
        return result.ok() ? result.value() : std::string();
    }

    std::unique_ptr<test::Prepared> lesson_ = test::placedLesson(12);
};

TEST_F(Exporting, AllFormatsWriteSomethingAndTheSameTwice) {
    for (const Export& each : exports()) {
        SCOPED_TRACE(std::string(each.key));
        const std::string once = made(each.key);
        EXPECT_FALSE(once.empty());
        EXPECT_EQ(once, made(each.key));
        EXPECT_FALSE(each.title().isEmpty());
    }
}

TEST_F(Exporting, TheEndingChoosesTheMostParticularFormat) {
    EXPECT_EQ(exportFor("a/supper.ICS")->key, "calendar");
    EXPECT_EQ(exportFor("supper.csv")->key, "plan");
    EXPECT_EQ(exportFor("supper.cooks.csv")->key, "cooks");
    EXPECT_EQ(exportFor("supper.equipment.csv")->key, "equipment");
    EXPECT_EQ(exportFor("supper.jsonld")->key, "recipe");
    EXPECT_EQ(exportFor("supper.txt"), nullptr);
}

TEST_F(Exporting, KeysAndEndingsAreTheirOwn) {
    std::set<std::string_view> seen;
    for (const Export& each : exports()) {
        EXPECT_TRUE(seen.insert(each.key).second) << each.key;
        EXPECT_TRUE(seen.insert(each.ending).second) << each.ending;
    }
}

TEST_F(Exporting, OneCooksCalendarAndTablesLeaveTheOthersOut) {
    const Kitchen& kitchen = lesson_->lesson().kitchen;
    ASSERT_EQ(kitchen.cooks.size(), 2U);
    const ExportSetup only{0, kitchen.cooks.front().id};
    const std::string other = kitchen.cooks.back().name + ",";
    EXPECT_THAT(made("cooks"), HasSubstr("\n" + other));
    EXPECT_THAT(made("cooks", only), Not(HasSubstr("\n" + other)));
    EXPECT_LT(made("calendar", only).size(), made("calendar").size());
    EXPECT_LT(made("plan", only).size(), made("plan").size());
}

TEST_F(Exporting, ThePictureHasTheSizeOfTheDrawing) {
    const std::string bytes = made("picture");
    const QImage image = QImage::fromData(
        QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())), "PNG");
    ASSERT_FALSE(image.isNull());
    EXPECT_GT(image.width(), 1000);
    EXPECT_THAT(made("drawing"), HasSubstr("viewBox=\"0 0 " + std::to_string(image.width() / 2)));
}

TEST(ExportingLessons, TooLongForAPictureSayWhatToDoInstead) {
    const auto base = test::placedLesson(12);
    Lesson lesson = base->lesson();
    lesson.placements.begin()->second.start = Instant::atMinutes(-60L * 24 * 30);
    const test::Prepared longLesson(lesson);
    const auto result = findExport("picture")->make(longLesson.input(), {});
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().code, FaultCode::CannotWrite);
    EXPECT_THAT(result.error().figures.front(), HasSubstr(".svg"));
}

}  // namespace
}  // namespace rangeline
