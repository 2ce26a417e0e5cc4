// The schema under resources/ against the program, judged by an independent program: Debian's
// python3-jsonschema.

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "exchange/lesson_file.h"
#include "support/random_lesson.h"
#include "support/rich_lesson.h"
#include "support/run_program.h"

namespace rangeline {
namespace {

namespace fs = std::filesystem;

class Schema : public testing::Test {
  protected:
    void SetUp() override {
        if (std::system("/usr/bin/python3 -c 'import jsonschema' >/dev/null 2>&1") != 0) {
            GTEST_SKIP() << "missing program: python3-jsonschema";
        }
        folder_ = fs::path(testing::TempDir()) /
                  testing::UnitTest::GetInstance()->current_test_info()->name();
        fs::remove_all(folder_);
        fs::create_directories(folder_);
    }
    void TearDown() override {
        if (!folder_.empty()) {
            fs::remove_all(folder_);
        }
    }

    void add(const std::string& text) {
        const fs::path path = folder_ / (std::to_string(files_.size()) + ".json");
        std::ofstream(path, std::ios::binary) << text;
        files_.push_back(path);
    }

    /// One verdict for each file, in order.
    std::vector<std::string> verdicts() const {
        const std::string tests = RANGELINE_SOURCE_DIR "/tests/exchange/judge_schema.py";
        std::string command = "/usr/bin/python3 '" + tests +
                              "' '" RANGELINE_SOURCE_DIR "/resources/lesson.schema.json'";
        for (const fs::path& file : files_) {
            command += " '" + file.string() + "'";
        }
        return test::linesOf(command);
    }

    fs::path folder_;
    std::vector<fs::path> files_;
};

TEST_F(Schema, AcceptsWhatIsWritten) {
    Lesson rich = test::richLesson();
    add(writeLesson(rich));
    rich.head.units = Units::UsCustomary;
    add(writeLesson(rich));
    const std::uint64_t seed = test::seedOr(1);
    for (std::uint64_t i = 0; i < 40; ++i) {
        Random random(seed + i);
        test::RandomLessonSize size;
        size.groups = static_cast<int>(random.between(1, 3));
        size.choices = 0.5;
        add(writeLesson(test::randomLesson(random, size)));
    }
    EXPECT_EQ(verdicts(), std::vector<std::string>(files_.size(), "good"))
        << "RANGELINE_SEED=" << seed;
}

TEST_F(Schema, AcceptsTheSampleLessonsAsTheProgramDoes) {
    const fs::path samples = RANGELINE_SOURCE_DIR "/sample-data";
    if (fs::exists(samples)) {
        for (const auto& entry : fs::directory_iterator(samples)) {
            if (entry.path().extension() == ".json") {
                files_.push_back(entry.path());
            }
        }
    }
    const std::vector<std::string> found = verdicts();
    ASSERT_EQ(found.size(), files_.size());
    for (std::size_t i = 0; i < files_.size(); ++i) {
        const auto read = loadLesson(files_[i].string());
        EXPECT_TRUE(read.ok()) << files_[i] << " " << read.error().place;
        EXPECT_EQ(found[i], "good") << files_[i];
    }
}

/// A part of the rich lesson's text, and what makes it wrong.
struct Spoiled {
    const char* part;
    const char* other;
};

constexpr Spoiled spoiled[] = {
    {"\"rangeline\": \"lesson\"", "\"rangeline\": \"menu\""},
    {"\"version\": 1", "\"version\": 2"},
    {"\"version\": 1", "\"version\": \"1\""},
    {"\"version\": 1,", "\"version\": 1, \"colour\": \"blue\","},
    {"\"zone\": \"America/Chicago\",", ""},
    {"T18:30", " 18:30"},
    {"\"grain\": \"30 s\"", "\"grain\": \"30\""},
    {"\"grain\": \"30 s\"", "\"grain\": \"-30 s\""},
    {"\"grain\": \"30 s\"", "\"grain\": 30"},
    {"\"crew\": [\"teacher\", \"helper\"]", "\"crew\": []"},
    {"\"units\": \"metric\"", "\"units\": \"imperial\""},
    {"\"aim\": \"calm\"", "\"aim\": \"cheap\""},
    {"\"power\": \"1800 W\"", "\"power\": \"1.8 kW\""},
    {"\"power\": \"1800 W\"", "\"power\": \"1800.5 W\""},
    {"\"lowest\": \"170 °F\"", "\"lowest\": \"170\""},
    {"\"lowest\": \"170 °F\"", "\"lowest\": \"170.25 °F\""},
    {"\"slots\": 4", "\"slots\": 0"},
    {"\"slots\": 4", "\"slots\": 2.5"},
    {"[\"convection\", \"bake\", \"broil\"]", "[\"bake\", \"bake\"]"},
    {"\"kind\": \"saute-pan\",\n", "\"kind\": \"cauldron\",\n"},
    {"\"pace\": 0.9", "\"pace\": 0"},
    {"\"covers\": 8", "\"covers\": 0"},
    {"\"covers\": 8", "\"covers\": \"8\""},
    {"\"amount\": \"12-14\"", "\"amount\": \"a few\""},
    {"\"amount\": \"12-14\"", "\"amount\": \"-2\""},
    {"\"likely\": \"8 min\",", ""},
    {"\"likely\": \"8 min\"", "\"likely\": \"8 minutes\""},
    {"\"likely\": \"8 min\"", "\"likely\": \"1.5 min\""},
    {"{\"watch\": \"rest\"}", "{\"watch\": \"rest\", \"away\": \"1 s\"}"},
    {"{\"watch\": \"rest\"}", "{\"wait\": \"rest\"}"},
    {"\"piecesPerCover\": \"1 1/2\",", ""},
    {"\"cooks\": 2", "\"cooks\": 0"},
    {"\"cooks\": 2", "\"cooks\": 2, \"oven\": \"425 °F\""},
    {"{\"at\": \"425 °F\"", "{\"at\": \"425 °F\", \"to\": \"450 °F\""},
    {"{\"at\": \"425 °F\", ", "{"},
    {"\"uses\": [\"roast\"]", "\"uses\": [{\"each\": true}]"},
    {"\"from\": {\"start\": \"sear\"}", "\"from\": {\"middle\": \"sear\"}"},
    {"\"storage\": \"hot-in-oven\",", "\"storage\": \"cold\","},
    {"\"wide-pan 2\"", "\"wide-pan two\""},
    {"\"batches\": 3", "\"batches\": 0"},
    {"\"washAfter\": \"gone-since\",", ""},
    {"\"washAfter\": \"gone-since\",", "\"washAfter\": \"gone-since\", \"step\": \"sear\","},
    {"\"batch\": 2", "\"batch\": 0"},
    {"\"start\": \"-1 h 35 min\"", "\"start\": \"5:10\""},
    {"\"setTo\": \"175 °F\"", "\"setTo\": 175"},
};

TEST_F(Schema, RefusesWhatTheProgramRefuses) {
    const std::string whole = writeLesson(test::richLesson());
    for (const Spoiled& row : spoiled) {
        std::string text = whole;
        const std::size_t at = text.find(row.part);
        ASSERT_NE(at, std::string::npos) << row.part;
        text.replace(at, std::string_view(row.part).size(), row.other);
        EXPECT_FALSE(readLesson(text).ok()) << row.part << " as " << row.other;
        add(text);
    }
    const std::vector<std::string> found = verdicts();
    ASSERT_EQ(found.size(), std::size(spoiled));
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_TRUE(found[i].starts_with("bad")) << spoiled[i].part << " as " << spoiled[i].other;
    }
}

}  // namespace
}  // namespace rangeline
