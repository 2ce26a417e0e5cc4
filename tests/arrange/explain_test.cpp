// Why a lesson is not possible: what is named must be a conflict, and none of it too much.

#include "arrange/explain.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "analysis/unit_table_of.h"
#include "arrange/brute_force.h"
#include "arrange/explain/explainer.h"
#include "arrange/tiny_lesson.h"
#include "arrange/verified.h"
#include "base/random.h"
#include "model/validate.h"
#include "support/lesson_builder.h"
#include "support/random_lesson.h"

namespace rangeline::test {
namespace {

using explain::Verdict;

/// Which requirement each finding of the checker goes against; only what tiny lessons have.
class FindingsOf {
  public:
    explicit FindingsOf(const Lesson& lesson) : lesson_(lesson), expanded_(expand(lesson)) {}

    /// What counts while only these are asked for.
    Overlook onlyAgainst(const std::vector<Requirement>& asked) const {
        const std::set<Requirement> kept(asked.begin(), asked.end());
        return [this, kept](const Finding& finding) {
            const std::vector<Requirement> all = against(finding);
            return !std::ranges::all_of(all, [&](Requirement r) { return kept.contains(r); });
        };
    }

  private:
    int item(const Finding& finding) const {
        return unitTableOf(expanded_.stations, finding.equipment.sort)[finding.equipment.unit].item;
    }
    int task(const PlacementKey& key) const { return expanded_.taskOf(std::get<StepKey>(key)); }

    std::vector<Requirement> ofWait(RequirementKind kind, const Finding& finding,
                                    bool keeping) const {
        if (!std::holds_alternative<StepKey>(finding.keys[1])) {
            return {};  // a wash before what it cleans: never asked for one by one
        }
        for (std::size_t i = 0; i < expanded_.waits.size(); ++i) {
            const Wait& wait = expanded_.waits[i];
            if (wait.from.tasks == std::vector{task(finding.keys[0])} &&
                wait.to.tasks == std::vector{task(finding.keys[1])} &&
                (wait.origin == WaitOrigin::Keeping) == keeping) {
                return {{kind, static_cast<int>(i)}};
            }
        }
        return {};
    }

    std::vector<Requirement> ofWindow(RequirementKind kind, WindowOrigin origin) const {
        const auto found = std::ranges::find(expanded_.windows, origin, &Window::origin);
        return {{kind, static_cast<int>(found - expanded_.windows.begin())}};
    }

    std::vector<Requirement> ofWash(const Finding& finding) const {
        const WashKey& wash = std::get<WashKey>(finding.keys[2]);
        const auto chain = std::ranges::find(expanded_.chains, wash, &Chain::key);
        return {{RequirementKind::Wares, item(finding)},
                {RequirementKind::Wash, static_cast<int>(chain - expanded_.chains.begin())}};
    }

    std::vector<Requirement> against(const Finding& finding) const {
        switch (finding.code) {
            case FindingCode::BurnerTwice:
                return {{RequirementKind::Burners, 0}};
            case FindingCode::WareTwice:
                return {{RequirementKind::Wares, item(finding)}};
            case FindingCode::NotYetWashed:
                return ofWash(finding);
            case FindingCode::OvenSlotTwice:
                return {{RequirementKind::OvenSlots, 0}};
            case FindingCode::OvenTwoTemperatures:
            case FindingCode::OvenChangedTooFast:
                return {{RequirementKind::OvenSettings, 0}};
            case FindingCode::OvenNotWarm:
            case FindingCode::OvenNotTurnedOn:
                return {{RequirementKind::OvenWarmUp, 0}};
            case FindingCode::HandsTwice:
                return {{RequirementKind::Hands, item(finding)}};
            case FindingCode::TooEarlyAfter:
                return ofWait(RequirementKind::Follows, finding, false);
            case FindingCode::KeptTooLong:
                return ofWait(RequirementKind::KeepsFor, finding, true);
            case FindingCode::BeforeOpening:
                return {{RequirementKind::KitchenOpens, 0}};
            case FindingCode::PlatedTooEarly:
                return ofWindow(RequirementKind::PlateKeeps, WindowOrigin::PlateKeeps);
            case FindingCode::PlatingLate:
                return ofWindow(RequirementKind::Serving, WindowOrigin::Serving);
            default:
                return {};
        }
    }

    const Lesson& lesson_;
    Expanded expanded_;
};

std::vector<Requirement> without(std::vector<Requirement> requirements, Requirement one) {
    std::erase(requirements, one);
    return requirements;
}

/// The solver's own word: the set is a conflict, and is none any more without any one of it.
void expectIrreducible(const Lesson& lesson, const Explanation& explanation) {
    ASSERT_EQ(explanation.status, ExplainStatus::Smallest);
    for (const Requirement& one : explanation.requirements) {
        // A fresh engine each time, so that nothing learned before can hide a mistake.
        explain::Explainer fresh(lesson, {}, {});
        EXPECT_EQ(fresh.ask(without(explanation.requirements, one)).verdict, Verdict::Possible)
            << static_cast<int>(one.kind) << ' ' << one.index;
    }
    explain::Explainer fresh(lesson, {}, {});
    EXPECT_EQ(fresh.ask(explanation.requirements).verdict, Verdict::NotPossible);
}

TEST(ExplainNotPossible, TinyLessonsNameAConflictWithNothingTooMuch) {
    const std::uint64_t seed = seedOr(20263);
    int impossible = 0;
    for (int i = 0; i < 120; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        Lesson lesson = tinyLesson(random);
        lesson.head.kitchenOpens = Instant() - tinyGrains(random.between(1, 5));
        if (!validate(lesson).empty()) {
            continue;
        }
        const Explanation explanation = explainNotPossible(lesson);
        ASSERT_EQ(explanation.status == ExplainStatus::Possible,
                  arrangeVerified(lesson).status == ArrangeStatus::Proved);
        if (explanation.status == ExplainStatus::Possible) {
            continue;
        }
        ++impossible;
        expectIrreducible(lesson, explanation);
        const FindingsOf findings(lesson);
        const Instant earliest = Instant() - tinyGrains(9);
        const Instant latest = Instant() + tinyGrains(5);
        ASSERT_FALSE(possibleByBruteForce(lesson, earliest, latest,
                                          findings.onlyAgainst(explanation.requirements)));
        for (const Requirement& one : explanation.requirements) {
            ASSERT_TRUE(
                possibleByBruteForce(lesson, earliest, latest,
                                     findings.onlyAgainst(without(explanation.requirements, one))))
                << static_cast<int>(one.kind) << ' ' << one.index;
        }
    }
    EXPECT_GT(impossible, 20);
}

TEST(ExplainNotPossible, RandomLessonsNameAConflictWithNothingTooMuch) {
    const std::uint64_t seed = seedOr(20264);
    int impossible = 0;
    for (int i = 0; i < 60; ++i) {
        SCOPED_TRACE(testing::Message() << "RANGELINE_SEED=" << seed << " lesson " << i);
        Random random(seed * 1000 + static_cast<std::uint64_t>(i));
        RandomLessonSize size;
        size.keeps = 0.6;
        Lesson lesson = randomLesson(random, size);
        lesson.head.kitchenOpens = Instant::atMinutes(-random.between(20, 90));
        const Explanation explanation = explainNotPossible(lesson);
        if (explanation.status == ExplainStatus::Smallest) {
            ++impossible;
            if (explanation.requirements.front().kind < RequirementKind::NobodyCan) {
                expectIrreducible(lesson, explanation);
            }
        }
        if (testing::Test::HasFailure()) {
            return;
        }
    }
    EXPECT_GT(impossible, 10);
}

Requirement lackingFor(const LessonBuilder& builder) {
    EXPECT_EQ(arrangeVerified(builder.lesson).status, ArrangeStatus::NotPossible);
    const Explanation explanation = explainNotPossible(builder.lesson);
    EXPECT_EQ(explanation.requirements.size(), 1U);
    return explanation.requirements.empty() ? Requirement() : explanation.requirements.front();
}

TEST(ExplainNotPossible, NamesWhatTheKitchenLacks) {
    LessonBuilder nobody;
    nobody.step("stir", {hands(1_min)}).needsAbility = "teacher";
    EXPECT_EQ(lackingFor(nobody).kind, RequirementKind::NobodyCan);
    LessonBuilder noWare;
    noWare.step("bake", {away(9_min)}).wares = {fresh("baking-dish")};
    EXPECT_EQ(lackingFor(noWare).kind, RequirementKind::NoWare);
    LessonBuilder noOven;
    noOven.oven("oven");
    OvenHeat broiled = inOven(500_F, 500_F);
    broiled.mode = OvenMode::Broil;
    noOven.step("broil", {away(9_min)}).heat = broiled;
    EXPECT_EQ(lackingFor(noOven).kind, RequirementKind::NoOven);
}

TEST(ExplainNotPossible, NamesTheOneOfTwoVesselsInTheOvenThatTheKitchenLacks) {
    LessonBuilder builder;
    builder.oven("oven");
    builder.ware("sheet", "sheet");
    builder.ware("dish", "baking-dish").width = Length::inches(8);
    Step& bake = builder.step("bake", {away(20_min)});
    bake.heat = inOven(350_F, 350_F);
    bake.wares = {fresh("sheet"), fresh("baking-dish")};
    bake.wares.back().leastWidth = Length::inches(24);
    EXPECT_EQ(lackingFor(builder), (Requirement{RequirementKind::NoWare, 1}));
}

/// The pan stays on the heat and is watched until the next step, but nobody can do the first.
TEST(Explain, AWatchedWaitAfterAStepThatNobodyCanDoIsNoPlanAndNoCrash) {
    LessonBuilder builder;
    builder.burner("left");
    builder.ware("pan", "saute-pan");
    Step& first = builder.step("stir", {hands(1_min), watch(5_min)});
    first.needsAbility = "teacher";
    first.heat = onBurner();
    first.wares = {fresh("saute-pan")};
    Step& next = builder.step("glaze", {hands(2_min)});
    BurnerHeat stays;
    stays.staysOnHeat = true;
    next.heat = stays;
    next.wares = {fresh("saute-pan")};
    next.wares.front().carriesOn = StepId{"stir"};
    builder.uses("glaze", "stir");
    EXPECT_EQ(arrangeVerified(builder.lesson).status, ArrangeStatus::NotPossible);
}

}  // namespace
}  // namespace rangeline::test
