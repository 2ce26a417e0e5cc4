#include "exchange/safe_write.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "exchange/formats.h"
#include "exchange/lesson_file.h"
#include "support/full_disk.h"
#include "support/rich_lesson.h"

namespace rangeline {
namespace {

namespace fs = std::filesystem;

/// A folder of its own for each test.
class SafeWrite : public testing::Test {
  protected:
    void SetUp() override {
        folder_ = fs::path(testing::TempDir()) /
                  testing::UnitTest::GetInstance()->current_test_info()->name();
        fs::remove_all(folder_);
        fs::create_directories(folder_);
    }
    void TearDown() override { fs::remove_all(folder_); }

    std::string path(const char* name) const { return (folder_ / name).string(); }

    static std::string contentOf(const std::string& path) {
        std::ostringstream content;
        content << std::ifstream(path, std::ios::binary).rdbuf();
        return content.str();
    }

    fs::path folder_;
};

TEST_F(SafeWrite, WritesAndReplaces) {
    const std::string file = path("a.json");
    EXPECT_EQ(writeFile(file, "old"), std::nullopt);
    EXPECT_EQ(contentOf(file), "old");
    EXPECT_EQ(writeFile(file, std::string_view("n\0w", 3)), std::nullopt);
    EXPECT_EQ(contentOf(file), std::string("n\0w", 3));
    EXPECT_EQ(writeFile(file, ""), std::nullopt);
    EXPECT_EQ(contentOf(file), "");
}

TEST_F(SafeWrite, AFullDiskLeavesTheOldFile) {
    const std::string file = path("a.json");
    for (const std::size_t size : {1'000U, 100'000U, 5'000'000U}) {
        ASSERT_EQ(writeFile(file, "old"), std::nullopt);
        std::optional<Fault> fault;
        {
            const test::FullDisk full(500);
            fault = writeFile(file, std::string(size, 'x'));
        }
        ASSERT_TRUE(fault.has_value()) << size;
        EXPECT_EQ(fault->code, FaultCode::CannotWrite);
        EXPECT_FALSE(fault->figures.at(0).empty());
        EXPECT_EQ(contentOf(file), "old") << size;
        EXPECT_EQ(std::distance(fs::directory_iterator(folder_), {}), 1) << "left-overs";
    }
}

TEST_F(SafeWrite, APipeIsWrittenIntoAndStaysAPipe) {
    // In a folder of the test's own: a helper that renamed over the path would destroy what it
    // is given, so this is never tried on a device of the system.
    const std::string pipe = path("pipe");
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    const int reader = open(pipe.c_str(), O_RDWR | O_NONBLOCK);
    ASSERT_GE(reader, 0);
    EXPECT_EQ(writeFile(pipe, "through"), std::nullopt);
    char content[16] = {};
    EXPECT_EQ(read(reader, content, sizeof content), 7);
    EXPECT_STREQ(content, "through");
    EXPECT_TRUE(fs::is_fifo(pipe));
    close(reader);
}

TEST_F(SafeWrite, ALinkKeepsPointingAtTheFile) {
    ASSERT_EQ(writeFile(path("a.json"), "old"), std::nullopt);
    fs::create_symlink(path("a.json"), path("link.json"));
    EXPECT_EQ(writeFile(path("link.json"), "new"), std::nullopt);
    EXPECT_TRUE(fs::is_symlink(path("link.json")));
    EXPECT_EQ(contentOf(path("a.json")), "new");
}

TEST_F(SafeWrite, AFolderIsNotReplaced) {
    fs::create_directory(path("folder"));
    const auto fault = writeFile(path("folder"), "x");
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(fault->code, FaultCode::CannotWrite);
    EXPECT_TRUE(fs::is_directory(path("folder")));
}

TEST_F(SafeWrite, AFolderThatIsMissingIsNotMade) {
    const auto fault = writeFile(path("none/a.json"), "x");
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(fault->code, FaultCode::CannotWrite);
    EXPECT_FALSE(fs::exists(folder_ / "none"));
}

TEST_F(SafeWrite, LessonsAreSavedAndLoaded) {
    const Lesson lesson = test::richLesson();
    const std::string file = path("lesson.json");
    EXPECT_EQ(saveLesson(file, lesson), std::nullopt);
    const auto again = loadLesson(file);
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again.value() == lesson);
}

TEST_F(SafeWrite, AFormatIsFoundByTheEnding) {
    const Format* format = formatFor("a/b/supper.json");
    ASSERT_NE(format, nullptr);
    EXPECT_EQ(format->name, "lesson");
    EXPECT_TRUE(format->read(format->write(test::richLesson())).ok());
    EXPECT_EQ(formatFor("supper.txt"), nullptr);
}

}  // namespace
}  // namespace rangeline
