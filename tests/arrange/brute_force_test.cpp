// Tiny random kitchens: the planner's answer against every possible placement.

#include <gtest/gtest.h>

#include "arrange/brute_force.h"
#include "arrange/verified.h"
#include "base/random.h"
#include "model/validate.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

constexpr std::int64_t grainMinutes = 5;

Duration grains(std::int64_t n) {
    return Duration::minutes(n * grainMinutes);
}

void addHeat(LessonBuilder& builder, Step& step, Random& random, const std::string& before) {
    if (random.chance(0.4)) {
        step.heat = onBurner();
        step.wares = {!before.empty() && random.chance(0.5) ? carryOn("saute-pan", before)
                                                            : fresh("saute-pan")};
        step.wares.front().turnedOut = random.chance(0.3);
    } else if (!builder.lesson.kitchen.ovens.empty() && random.chance(0.5)) {
        const Temperature setting = random.chance(0.5) ? 350_F : 400_F;
        step.heat = inOven(setting, setting);
    }
}

std::vector<Segment> someSegments(Random& random) {
    switch (random.between(0, 3)) {
        case 0:
            return {hands(grains(1))};
        case 1:
            return {hands(grains(1)), away(grains(1))};
        case 2:
            return {away(grains(random.between(1, 2)))};
        default:
            return {hands(grains(2))};
    }
}

/// Three steps, the last of which plates; one pan or two, perhaps an oven.
Lesson tinyLesson(Random& random) {
    LessonBuilder builder;
    builder.lesson.head.grain = grains(1);
    builder.lesson.servings.front().dish.platesHold = grains(random.between(0, 2));
    if (random.chance(0.3)) {
        builder.lesson.head.kitchenOpens = Instant() - grains(random.between(2, 6));
    }
    builder.burner("left");
    if (random.chance(0.5)) {
        Oven& oven = builder.oven("oven");
        oven.slots = static_cast<int>(random.between(1, 2));
        oven.warmUp = {{350_F, grains(1)}, {400_F, grains(2)}};
        oven.heatsPerMinute = TemperatureDelta::fahrenheit(10);
        oven.coolsPerMinute = TemperatureDelta::fahrenheit(5);
    }
    Ware& pan = builder.ware("pan", "saute-pan", 1);
    pan.cleaning.takes = random.chance(0.7) ? grains(1) : Duration();
    std::string before;
    const int count = builder.lesson.kitchen.ovens.empty() ? 3 : 2;
    for (int i = 0; i < count; ++i) {
        const std::string id = "step" + std::to_string(i);
        Step& step = builder.step(id, someSegments(random));
        const bool last = i + 1 == count;
        step.plates = last;
        if (!last) {
            addHeat(builder, step, random, before);
        }
        if (!before.empty() && (last || random.chance(0.6))) {
            builder.uses(id, before);
            if (random.chance(0.4)) {
                builder.get(before).after.atRoom = grains(random.between(0, 2));
            }
        }
        before = id;
    }
    return builder.lesson;
}

TEST(Arrange, TinyLessonsMatchBruteForce) {
    const std::uint64_t seed = seedOr(20262);
    int possible = 0;
    int impossible = 0;
    for (int i = 0; i < 120; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        const Lesson lesson = tinyLesson(random);
        if (!validate(lesson).empty()) {
            continue;  // a pan carried on from a step without one
        }
        const ArrangeResult result = arrangeVerified(lesson);
        const Instant earliest = Instant() - grains(12);
        const auto best = latestStartByBruteForce(lesson, earliest, Instant() - grains(1));
        if (result.status == ArrangeStatus::NotPossible) {
            ASSERT_FALSE(best.has_value());
            ++impossible;
        } else {
            ASSERT_EQ(result.status, ArrangeStatus::Proved);
            ASSERT_EQ(best.value_or(*result.last.best), *result.last.best);
            ASSERT_TRUE(best || *result.last.best < earliest);
            possible += best ? 1 : 0;
        }
    }
    EXPECT_GT(possible, 20);
    EXPECT_GT(impossible, 2);
}

}  // namespace
}  // namespace rangeline::test
