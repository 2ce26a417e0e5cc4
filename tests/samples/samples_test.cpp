// The lessons that come with the program: each must load, come back unchanged, and do what the
// README says of it.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>

#include "arrange/verified.h"
#include "exchange/lesson_file.h"

namespace rangeline::test {
namespace {

std::string pathOf(const std::string& name) {
    return std::string(RANGELINE_SOURCE_DIR) + "/sample-data/" + name + ".json";
}

Lesson sample(const std::string& name) {
    auto read = loadLesson(pathOf(name));
    EXPECT_TRUE(read.ok()) << name;
    return read.ok() ? read.value() : Lesson{};
}

std::vector<FindingCode> collisionsOf(const Lesson& lesson) {
    std::vector<FindingCode> codes;
    for (const Finding& finding : checkLesson(lesson, expand(lesson))) {
        if (finding.severity != Severity::Caution) {
            codes.push_back(finding.code);
        }
    }
    return codes;
}

/// Enough for the first plan and more, the same on every machine.
ArrangeResult arranged(const std::string& name) {
    ArrangeOptions options;
    options.conflictLimit = 2000;
    return arrangeVerified(sample(name), options);
}

class Samples : public testing::TestWithParam<const char*> {};

TEST_P(Samples, ComeBackUnchanged) {
    std::ifstream file(pathOf(GetParam()), std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    EXPECT_EQ(writeLesson(sample(GetParam())), bytes);
}

INSTANTIATE_TEST_SUITE_P(All, Samples,
                         testing::Values("first-lesson", "harvest-plate", "spring-supper",
                                         "cannot-work", "four-groups"));

TEST(Samples, TheFirstLessonIsArrangedAlready) {
    EXPECT_THAT(collisionsOf(sample("first-lesson")), testing::IsEmpty());
}

TEST(Samples, TheHarvestPlateCollidesAsPencilledIn) {
    const auto codes = collisionsOf(sample("harvest-plate"));
    for (const FindingCode code : {FindingCode::OvenTwoTemperatures, FindingCode::HandsTwice,
                                   FindingCode::WareTwice, FindingCode::NotYetWashed}) {
        EXPECT_THAT(codes, testing::Contains(code));
    }
}

TEST(Samples, ArrangingResolvesTheHarvestPlate) {
    EXPECT_FALSE(arranged("harvest-plate").placements.empty());
}

TEST(Samples, TheSpringSupperHasSixtyStepsAndAPlan) {
    EXPECT_GE(expand(sample("spring-supper")).tasks.size(), 60U);
    EXPECT_FALSE(arranged("spring-supper").placements.empty());
}

TEST(Samples, TheOneThatCannotWorkIsProvedNotPossible) {
    EXPECT_EQ(arranged("cannot-work").status, ArrangeStatus::NotPossible);
}

TEST(Samples, FourGroupsShareOneOven) {
    const ArrangeResult result = arranged("four-groups");
    const auto turnOns = std::ranges::count_if(result.placements, [](const auto& entry) {
        return std::holds_alternative<TurnOnKey>(entry.first);
    });
    EXPECT_EQ(turnOns, 1);
}

}  // namespace
}  // namespace rangeline::test
