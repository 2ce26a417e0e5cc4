// Every sheet of every sample, arranged for one, eight and twenty-four covers.

#include <gtest/gtest.h>

#include "arrange/verified.h"
#include "exchange/lesson_file.h"
#include "print/page_rules.h"
#include "print/print_lessons.h"

namespace rangeline {
namespace {

struct Case {
    const char* file;
    int covers;
};

std::ostream& operator<<(std::ostream& out, const Case& it) {
    return out << it.file << ", " << it.covers << " covers";
}

/// Where the plan does not work for so many covers, the sheets are those of the lesson as it lies.
Lesson arrangedFor(const Case& it) {
    auto read = loadLesson(std::string(RANGELINE_SOURCE_DIR) + "/sample-data/" + it.file + ".json");
    EXPECT_TRUE(read.ok());
    Lesson lesson = std::move(read.value());
    for (Serving& serving : lesson.servings) {
        serving.covers = it.covers;
    }
    ArrangeOptions options;
    options.conflictLimit = 500;
    const ArrangeResult result = test::arrangeVerified(lesson, options);
    if (!result.placements.empty()) {
        lesson.placements = result.placements;
    }
    return lesson;
}

class SampleSheets : public testing::TestWithParam<Case> {};

TEST_P(SampleSheets, KeepThePageInOrder) {
    const test::Prepared prepared(arrangedFor(GetParam()));
    for (const Sheet& sheet : sheets()) {
        SCOPED_TRACE(std::string(sheet.key));
        const PageLayout layout{usualPaper(prepared.lesson().head.units), sheet.orientation};
        test::expectGoodPages(sheet.make(prepared.input(), {layout}), layout);
    }
}

std::vector<Case> cases() {
    std::vector<Case> all;
    for (const char* file :
         {"first-lesson", "harvest-plate", "spring-supper", "cannot-work", "four-groups"}) {
        for (const int covers : {1, 8, 24}) {
            all.push_back({file, covers});
        }
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Samples, SampleSheets, testing::ValuesIn(cases()));

}  // namespace
}  // namespace rangeline
