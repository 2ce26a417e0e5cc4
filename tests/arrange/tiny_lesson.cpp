#include "arrange/tiny_lesson.h"

#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

Duration grains(std::int64_t n) {
    return tinyGrains(n);
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

}  // namespace

Duration tinyGrains(std::int64_t n) {
    constexpr std::int64_t grainMinutes = 5;
    return Duration::minutes(n * grainMinutes);
}

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

}  // namespace rangeline::test
