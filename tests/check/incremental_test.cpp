// After every edit the findings are those of a check from scratch.

#include <gtest/gtest.h>

#include "check/check.h"
#include "model/edit.h"
#include "support/random_lesson.h"
#include "support/random_placements.h"

namespace rangeline::test {
namespace {

/// Food that needs control, allergens, raw food and what is not cooked any more, here and there.
void giveHazards(Random& random, Lesson& lesson) {
    const std::vector<std::string> foods{"", "", "poultry", "cooked-plant", "cut-tomatoes"};
    const std::vector<std::string> allergens{"milk", "eggs", "wheat"};
    const auto oneOf = [&random](const std::vector<std::string>& words) {
        return words[static_cast<std::size_t>(random.between(0, std::ssize(words) - 1))];
    };
    for (Serving& serving : lesson.servings) {
        for (Component& component : serving.dish.components) {
            for (Step& step : component.steps) {
                step.hazards.food = oneOf(foods);
                step.hazards.raw = random.chance(0.3);
                step.hazards.readyToEat = !step.hazards.raw && random.chance(0.4);
                if (random.chance(0.4)) {
                    step.hazards.allergens = {oneOf(allergens)};
                }
            }
        }
    }
}

/// Moves, reassigns, pins, removes or adds one to three placements.
SetPlacements randomEdit(Random& random, const Lesson& lesson, const Expanded& expanded) {
    const auto keys = possibleKeys(lesson, expanded);
    SetPlacements edit;
    for (std::int64_t n = random.between(1, 3); n > 0; --n) {
        const PlacementKey& key =
            keys[static_cast<std::size_t>(random.between(0, std::ssize(keys) - 1))];
        const auto old = lesson.placements.find(key);
        PlacementChange change{key, std::nullopt};
        if (old == lesson.placements.end() || random.chance(0.3)) {
            change.placement = randomPlacement(random, lesson);
        } else if (random.chance(0.8)) {
            change.placement = old->second;
            const std::int64_t earliest = random.chance(0.3) ? -1200 : -240;
            change.placement->start = Instant::atSeconds(random.between(earliest, 20) * 30);
            change.placement->pinned = random.chance(0.2);
        }
        edit.changes.push_back(change);
    }
    return edit;
}

void expectSameAfterEdits(std::uint64_t seed, const RandomLessonSize& size) {
    Random random(seed);
    Lesson lesson = randomLesson(random, size);
    if (random.chance(0.5)) {
        giveHazards(random, lesson);
    }
    if (random.chance(0.5)) {
        Step& talk = lesson.servings.front().dish.components.front().steps.front();
        talk.classWatches = true;
        talk.segments = {{Attention::Hands, Duration(), true}};
    }
    if (size.groups > 1 && random.chance(0.5)) {
        lesson.head.groups.shared = {"cook-1", "oven-1", "sink"};
    }
    const Expanded expanded = expand(lesson);
    placeAtRandom(random, lesson, expanded, 0.8);
    UseIndex index(lesson, expanded);
    Findings findings(index);
    ASSERT_EQ(findings.all(), checkLesson(lesson, expanded));
    for (int n = 0; n < 40; ++n) {
        const SetPlacements edit = randomEdit(random, lesson, expanded);
        std::vector<PlacementKey> keys;
        for (const PlacementChange& change : edit.changes) {
            keys.push_back(change.key);
        }
        apply(lesson, edit);
        findings.update(index.update(keys));
        ASSERT_EQ(findings.all(), checkLesson(lesson, expanded)) << "after edit " << n;
    }
}

TEST(Findings, AreThoseFromScratchAfterEveryEdit) {
    const std::uint64_t seed = seedOr(1);
    for (std::uint64_t s = seed; s < seed + 60; ++s) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << s);
        RandomLessonSize size;
        size.ovens = 1 + static_cast<int>(s % 2);
        size.groups = 1 + static_cast<int>(s % 3);
        size.ovenSteps = 0.4;
        size.choices = 0.2;
        expectSameAfterEdits(s, size);
        if (testing::Test::HasFatalFailure()) {
            return;
        }
    }
}

}  // namespace
}  // namespace rangeline::test
