// What is no lesson file at all, or not one that can be read.

#include <gtest/gtest.h>

#include "exchange/json_scan.h"
#include "exchange/lesson_file.h"
#include "support/rich_lesson.h"

namespace rangeline {
namespace {

Fault faultOf(std::string_view bytes) {
    const auto read = readLesson(bytes);
    return read.ok() ? Fault{FaultCode::EmptyFile, "no fault", {}} : read.error();
}

TEST(BadFile, NothingIsAnEmptyFile) {
    EXPECT_EQ(faultOf(""), (Fault{FaultCode::EmptyFile, "", {}}));
    EXPECT_EQ(faultOf(" \n\t\r\n"), (Fault{FaultCode::EmptyFile, "", {}}));
}

TEST(BadFile, TextThatIsNotJsonIsPlaced) {
    const Fault fault = faultOf("{\n  \"name\": nonsense\n}");
    EXPECT_EQ(fault.code, FaultCode::NotJson);
    ASSERT_EQ(fault.figures.size(), 3U);
    EXPECT_EQ(fault.figures[0], "2");
    EXPECT_FALSE(fault.figures[2].empty());
}

TEST(BadFile, ColumnsCountCharactersNotBytes) {
    const std::string_view text = "{\n  \"crème\": 1\n}";
    EXPECT_EQ(lineAndColumn(text, 0), (std::vector<std::string>{"1", "1"}));
    EXPECT_EQ(lineAndColumn(text, text.find("crème")), (std::vector<std::string>{"2", "4"}));
    EXPECT_EQ(lineAndColumn(text, text.find(':')), (std::vector<std::string>{"2", "10"}));
    EXPECT_EQ(lineAndColumn(text, text.size()), (std::vector<std::string>{"3", "2"}));
}

TEST(BadFile, ABrokenTextIsNeverRead) {
    const char* broken[] = {"{",
                            "nonsense",
                            "{\"a\": NaN}",
                            "{\"a\": Infinity}",
                            "{\"a\": 1e999}",
                            "{\"a\": 01}",
                            "{'a': 1}",
                            "{\"a\": 1,}",
                            "{\"a\": 1} more",
                            "{\"a\": 1} // more",
                            "\xEF\xBB\xBF{\"rangeline\": \"lesson\"}",
                            "{\"a\": \"\xFF\"}",
                            "\xFF\xFE{\0}\0"};
    for (const char* text : broken) {
        EXPECT_EQ(faultOf(text).code, FaultCode::NotJson) << text;
    }
    EXPECT_EQ(faultOf(std::string(1000, '\0')).code, FaultCode::NotJson);
}

TEST(BadFile, OtherJsonIsNotALesson) {
    for (const char* text : {"[]", "{}", "{\"rangeline\": \"menu\"}", "{\"rangeline\": 1}"}) {
        EXPECT_EQ(faultOf(text), (Fault{FaultCode::NotALesson, "", {}})) << text;
    }
}

TEST(BadFile, OtherVersionsAreRefused) {
    EXPECT_EQ(faultOf(R"({"rangeline": "lesson", "version": 2})"),
              (Fault{FaultCode::WrongVersion, "version", {"2", "1"}}));
    EXPECT_EQ(faultOf(R"({"rangeline": "lesson", "version": 0})").code, FaultCode::WrongVersion);
    EXPECT_EQ(faultOf(R"({"rangeline": "lesson", "version": "1"})").code, FaultCode::WrongType);
    EXPECT_EQ(faultOf(R"({"rangeline": "lesson", "version": 1.5})").code, FaultCode::BadNumber);
    EXPECT_EQ(faultOf(R"({"rangeline": "lesson"})"),
              (Fault{FaultCode::MissingKey, "", {"version"}}));
}

TEST(BadFile, ALargeFileIsRefusedUnread) {
    const std::string large(largestLessonFile + 1, ' ');
    EXPECT_EQ(faultOf(large), (Fault{FaultCode::TooLarge, "", {"10000001", "10000000"}}));
}

TEST(BadFile, DeepNestingIsRefused) {
    EXPECT_EQ(faultOf(std::string(65, '[') + std::string(65, ']')),
              (Fault{FaultCode::TooDeep, "", {"64"}}));
    EXPECT_EQ(faultOf(std::string(64, '[') + std::string(64, ']')).code, FaultCode::NotALesson);
    EXPECT_EQ(faultOf(std::string(5'000'000, '[')).code, FaultCode::TooDeep);
    std::string objects;
    for (int i = 0; i < 100; ++i) {
        objects += "{\"a\":";
    }
    EXPECT_EQ(faultOf(objects + "1" + std::string(100, '}')).code, FaultCode::TooDeep);
}

TEST(BadFile, AnEndAnywhereIsNoticed) {
    const std::string whole = writeLesson(test::richLesson());
    for (std::size_t length = 0; length + 2 < whole.size(); ++length) {
        EXPECT_FALSE(readLesson(std::string_view(whole).substr(0, length)).ok()) << length;
    }
}

TEST(BadFile, AnyOtherByteIsReadOrRefusedButNeverHarmful) {
    const std::string whole = writeLesson(test::richLesson());
    for (std::size_t i = 0; i < whole.size(); ++i) {
        for (const char other : {'\0', '"', '{', ']', '9', '-', '\xC3', '\\'}) {
            std::string changed = whole;
            changed[i] = other;
            const auto read = readLesson(changed);
            if (read.ok()) {
                EXPECT_TRUE(readLesson(writeLesson(read.value())).ok()) << i;
            }
        }
    }
}

TEST(BadFile, AMissingFileSaysWhy) {
    const auto missing = loadLesson(testing::TempDir() + "there-is-no-such-lesson.json");
    ASSERT_FALSE(missing.ok());
    EXPECT_EQ(missing.error().code, FaultCode::CannotOpen);
    EXPECT_FALSE(missing.error().figures.at(0).empty());
    const auto folder = loadLesson(testing::TempDir());
    ASSERT_FALSE(folder.ok());
    EXPECT_EQ(folder.error().code, FaultCode::CannotOpen);
}

TEST(BadFile, AFileWithoutEndIsNotReadForEver) {
    const auto endless = loadLesson("/dev/zero");
    ASSERT_FALSE(endless.ok());
    EXPECT_EQ(endless.error().code, FaultCode::TooLarge);
}

}  // namespace
}  // namespace rangeline
