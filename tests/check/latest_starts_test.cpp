// Minutes to spare against the checks: a plan in which everything is as late as its minutes to
// spare allow is still a plan.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "analysis/critical_path.h"
#include "arrange/arrange.h"
#include "check/check.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

/// Not cautions, and not starts between the marks of the grain: spare is exact to the second.
std::vector<Finding> wrong(const Lesson& lesson, const Expanded& expanded) {
    auto findings = checkLesson(lesson, expanded);
    std::erase_if(findings, [](const Finding& finding) {
        return finding.severity == Severity::Caution || finding.code == FindingCode::OffGrain;
    });
    return findings;
}

/// Moves every placement to its latest start.
void postpone(Lesson& lesson, const Expanded& expanded) {
    const UseIndex index(lesson, expanded);
    const PlatingAnalysis analysis = analysePlating(index);
    for (const Spare& spare : analysis.spares) {
        Placement& placement = lesson.placements.at(spare.key);
        placement.start = placement.start + spare.spare;
    }
}

/// One thing watched at a time, talks, and loads that want the oven's door shut.
void makeHarder(Random& random, Lesson& lesson) {
    lesson.kitchen.watchLimit = static_cast<int>(random.between(1, 2));
    for (Component& component : lesson.servings.front().dish.components) {
        for (Step& step : component.steps) {
            if (auto* oven = std::get_if<OvenHeat>(&step.heat)) {
                oven->doorShut = random.chance(0.7);
                step.segments = {{Attention::Away, Duration(), true}};
            } else {
                step.classWatches = random.chance(0.3);
            }
        }
    }
}

/// Says whether the lesson could be arranged.
bool expectPostponable(std::uint64_t seed, const RandomLessonSize& size) {
    Random random(seed);
    Lesson lesson = randomLesson(random, size);
    makeHarder(random, lesson);
    ArrangeOptions options;
    options.conflictLimit = 200;
    const ArrangeResult result = arrange(lesson, options);
    if (result.placements.empty()) {
        return false;
    }
    lesson.placements = result.placements;
    const Expanded expanded = expand(lesson);
    EXPECT_THAT(wrong(lesson, expanded), testing::IsEmpty()) << "as arranged";
    postpone(lesson, expanded);
    EXPECT_THAT(wrong(lesson, expanded), testing::IsEmpty()) << "as late as can be";
    return true;
}

TEST(LatestStarts, AreStillAPlan) {
    const std::uint64_t first = seedOr(1);
    int arranged = 0;
    for (std::uint64_t seed = first; seed < first + 120; ++seed) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed);
        RandomLessonSize size;
        size.ovenSteps = 0.3;
        size.groups = 1 + static_cast<int>(seed % 2);
        size.choices = 0.1;
        arranged += expectPostponable(seed, size) ? 1 : 0;
    }
    EXPECT_GT(arranged, 60);
}

}  // namespace
}  // namespace rangeline::test
