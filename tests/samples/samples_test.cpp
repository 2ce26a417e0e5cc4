// The lessons of sample-data: each is what it says it shows, in the form the program writes, and
// comes to the answer it was made for.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "arrange/verified.h"
#include "exchange/lesson_file.h"
#include "model/expand.h"
#include "model/validate.h"

namespace rangeline::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

const std::filesystem::path folder = std::filesystem::path(RANGELINE_SOURCE_DIR) / "sample-data";

struct Sample {
    const char* file;
    ArrangeStatus status;
};

/// Proved best within a limit that leaves several times the room that was needed.
constexpr std::int64_t conflictLimit = 60'000;

const Sample samples[] = {
    {"cannot-work.json", ArrangeStatus::NotPossible}, {"first-lesson.json", ArrangeStatus::Proved},
    {"four-groups.json", ArrangeStatus::Proved},      {"harvest-plate.json", ArrangeStatus::Proved},
    {"spring-supper.json", ArrangeStatus::Proved},
};

std::string bytesOf(const char* file) {
    std::ostringstream bytes;
    bytes << std::ifstream(folder / file, std::ios::binary).rdbuf();
    return bytes.str();
}

Lesson sample(const char* file) {
    auto lesson = readLesson(bytesOf(file));
    if (!lesson.ok()) {
        ADD_FAILURE() << file << ": " << lesson.error().place;
        return {};
    }
    return std::move(lesson.value());
}

std::vector<Finding> findingsOf(const Lesson& lesson) {
    return checkLesson(lesson, expand(lesson));
}

std::set<FindingCode> codesOf(const std::vector<Finding>& findings, bool cautions) {
    std::set<FindingCode> codes;
    for (const Finding& finding : findings) {
        if ((finding.severity == Severity::Caution) == cautions) {
            codes.insert(finding.code);
        }
    }
    return codes;
}

std::vector<Step> stepsOf(const Lesson& lesson) {
    std::vector<Step> steps;
    for (const Serving& serving : lesson.servings) {
        for (const Component& component : serving.dish.components) {
            steps.insert(steps.end(), component.steps.begin(), component.steps.end());
        }
    }
    return steps;
}

/// The settings that oven steps of the lesson ask for.
std::set<Temperature> settingsOf(const Lesson& lesson) {
    std::set<Temperature> settings;
    for (const Step& step : stepsOf(lesson)) {
        if (const auto* oven = std::get_if<OvenHeat>(&step.heat)) {
            settings.insert(oven->lowest);
        }
    }
    return settings;
}

/// How many wares of that kind the kitchen has.
int wares(const Lesson& lesson, const char* kind) {
    int count = 0;
    for (const Ware& ware : lesson.kitchen.wares) {
        count += ware.kind == kind ? ware.count : 0;
    }
    return count;
}

ArrangeResult arranged(const Lesson& lesson) {
    ArrangeOptions options;
    options.conflictLimit = conflictLimit;
    return arrangeVerified(lesson, options);
}

class EverySample : public testing::TestWithParam<Sample> {};

std::string nameOf(const testing::TestParamInfo<Sample>& sample) {
    std::string name = sample.param.file;
    std::erase_if(name, [](char c) { return c == '-' || c == '.'; });
    return name;
}

INSTANTIATE_TEST_SUITE_P(Samples, EverySample, testing::ValuesIn(samples), nameOf);

TEST_P(EverySample, IsInTheFormTheProgramWrites) {
    const Lesson lesson = sample(GetParam().file);
    EXPECT_TRUE(validate(lesson).empty());
    const std::string written = writeLesson(lesson);
    EXPECT_EQ(written, bytesOf(GetParam().file));
    const auto again = readLesson(written);
    ASSERT_TRUE(again.ok()) << again.error().place;
    EXPECT_TRUE(again.value() == lesson);
}

TEST_P(EverySample, ComesToTheAnswerItWasMadeFor) {
    const ArrangeResult result = arranged(sample(GetParam().file));
    EXPECT_EQ(result.status, GetParam().status) << result.statistics.conflicts << " conflicts";
    EXPECT_EQ(result.placements.empty(), GetParam().status == ArrangeStatus::NotPossible);
}

/// Knives, fat and steam are part of cooking; nothing in a sample is past a limit, unusually long
/// or left without a core temperature once it is arranged.
TEST_P(EverySample, CautionsOfDangersOnlyOnceArranged) {
    Lesson lesson = sample(GetParam().file);
    lesson.placements = arranged(lesson).placements;
    std::set<FindingCode> cautions = codesOf(findingsOf(lesson), true);
    cautions.erase(FindingCode::Danger);
    EXPECT_THAT(cautions, IsEmpty());
}

TEST(Samples, AreAllTested) {
    std::set<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        found.insert(entry.path().filename().string());
    }
    std::set<std::string> tested;
    for (const Sample& entry : samples) {
        tested.insert(entry.file);
    }
    EXPECT_EQ(found, tested);
}

TEST(FirstLesson, IsStoredArranged) {
    const Lesson lesson = sample("first-lesson.json");
    EXPECT_THAT(lesson.head.crew, SizeIs(1));
    EXPECT_THAT(codesOf(findingsOf(lesson), false), IsEmpty());
}

TEST(HarvestPlate, IsEightPlatesFromOneRange) {
    const Lesson lesson = sample("harvest-plate.json");
    ASSERT_THAT(lesson.servings, SizeIs(1));
    EXPECT_EQ(lesson.servings.front().covers, 8);
    EXPECT_EQ(lesson.kitchen.rangeWidth, Length::inches(30));
    EXPECT_THAT(lesson.kitchen.burners, SizeIs(4));
    EXPECT_THAT(lesson.kitchen.ovens, SizeIs(1));
    EXPECT_EQ(wares(lesson, "saute-pan"), 2);
    EXPECT_THAT(settingsOf(lesson),
                ElementsAre(Temperature::fahrenheit(375), Temperature::fahrenheit(425)));
    ASSERT_THAT(lesson.head.crew, SizeIs(2));
    EXPECT_GT(lesson.kitchen.cooks[1].pacePercent, lesson.kitchen.cooks[0].pacePercent);
}

TEST(HarvestPlate, CollidesAsPencilledIn) {
    const auto codes = codesOf(findingsOf(sample("harvest-plate.json")), false);
    EXPECT_THAT(codes, Contains(FindingCode::OvenTwoTemperatures));
    EXPECT_THAT(codes, Contains(FindingCode::HandsTwice));
    EXPECT_THAT(codes, Contains(FindingCode::WareTwice));
    EXPECT_THAT(codes, Contains(FindingCode::NotYetWashed));
    EXPECT_THAT(codes, testing::Not(Contains(FindingCode::NotPlaced)));
}

TEST(SpringSupper, IsTwoCoursesOfSixtySteps) {
    const Lesson lesson = sample("spring-supper.json");
    ASSERT_THAT(lesson.servings, SizeIs(2));
    EXPECT_EQ(lesson.servings[1].covers, 12);
    EXPECT_LT(lesson.servings[0].offset, lesson.servings[1].offset);
    EXPECT_THAT(lesson.head.crew, SizeIs(2));
    EXPECT_THAT(lesson.choices.doneAhead, SizeIs(1));
    EXPECT_GE(stepsOf(lesson).size(), 60U);
}

TEST(FourGroups, TurnOnTheOneOvenOnceAndListenToTalks) {
    const Lesson lesson = sample("four-groups.json");
    EXPECT_EQ(lesson.head.groups.count, 4);
    EXPECT_THAT(lesson.head.groups.shared, Contains("oven"));
    EXPECT_THAT(stepsOf(lesson), Contains(testing::Field(&Step::classWatches, true)));
    const Placements plan = arranged(lesson).placements;
    EXPECT_EQ(
        std::ranges::count_if(
            plan, [](const auto& entry) { return std::holds_alternative<TurnOnKey>(entry.first); }),
        1);
}

}  // namespace
}  // namespace rangeline::test
