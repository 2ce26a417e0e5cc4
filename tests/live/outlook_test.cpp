// When plating will be done, by hand-worked kitchens; and what a service tells of its steps.

#include <gmock/gmock.h>

#include "live/gains.h"
#include "live/moves.h"
#include "live/outlook.h"
#include "live/taken.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

/// Simmer for 20 min in the one pot, then plate in 5: at -30 and -5, with 5 min to spare between.
Lesson twoSteps() {
    LessonBuilder builder;
    builder.step("simmer", {away(20_min)});
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    builder.uses("plate", "simmer");
    builder.place("simmer", -30);
    assign(builder.place("plate", -5), "ann");
    return builder.lesson;
}

TEST(LiveOutlook, IsOnTimeAsPlanned) {
    live::Service service(twoSteps());
    service.apply(live::Started{key("simmer")}, minute(-30));
    const live::Outlook it = live::outlook(service, minute(-20));
    EXPECT_EQ(it.behind, 0_min);
    EXPECT_EQ(it.plating, minute(0));
    EXPECT_FALSE(it.plated);
}

TEST(LiveOutlook, EachMinuteThatAStepDoesNotBeginCostsOneOnceTheSpareTimeIsGone) {
    const live::Service service(twoSteps());
    EXPECT_EQ(live::outlook(service, minute(-26)).behind, 0_min);
    EXPECT_EQ(live::outlook(service, minute(-25)).behind, 0_min);
    EXPECT_EQ(live::outlook(service, minute(-21)).behind, 4_min);
    EXPECT_EQ(live::outlook(service, minute(-21)).plating, minute(4));
}

TEST(LiveOutlook, AStepThatRunsOverPushesWhatFollows) {
    live::Service service(twoSteps());
    service.apply(live::Started{key("simmer")}, minute(-30));
    EXPECT_EQ(live::outlook(service, minute(-2)).behind, 3_min);
    service.apply(live::MoreTime{key("simmer"), 5_min}, minute(-2));
    EXPECT_EQ(live::outlook(service, minute(-2)).behind, 8_min);
}

TEST(LiveOutlook, ALaterServingIsWhatPlatingIsThenHeldAgainst) {
    live::Service service(twoSteps());
    EXPECT_FALSE(service.apply(live::ServedLater{0_min}, minute(-21)));
    ASSERT_TRUE(service.apply(live::ServedLater{3_min}, minute(-21)));
    EXPECT_EQ(live::outlook(service, minute(-21)).behind, 1_min);
    EXPECT_EQ(live::outlook(service, minute(-21)).plating, minute(4));
    ASSERT_TRUE(service.apply(live::ServedLater{1_min}, minute(-21)));
    EXPECT_EQ(live::outlook(service, minute(-21)).behind, 0_min);
    EXPECT_EQ(live::outlook(service.copy(), minute(-21)).plating, minute(4));
}

TEST(LiveOutlook, IsOverOnceThePlatesAreDone) {
    live::Service service(twoSteps());
    service.apply(live::Done{key("simmer")}, minute(-10));
    service.apply(live::Started{key("plate")}, minute(-3));
    EXPECT_EQ(live::outlook(service, minute(-2)).behind, 2_min);
    service.apply(live::Done{key("plate")}, minute(1));
    EXPECT_TRUE(live::outlook(service, minute(9)).plated);
    EXPECT_EQ(live::outlook(service, minute(9)).behind, 1_min);
}

std::map<PlacementKey, Instant> duesAt(const live::Service& service, Instant now) {
    return live::courseOf(service, now).dues();
}

TEST(LiveCourse, WhatWaitsIsDueAsPlannedUntilSomethingHoldsIt) {
    live::Service service(twoSteps());
    EXPECT_EQ(duesAt(service, minute(-31)).at(key("simmer")), minute(-30));
    EXPECT_EQ(duesAt(service, minute(-27)).at(key("simmer")), minute(-30)) << "three minutes late";
    EXPECT_EQ(duesAt(service, minute(-27)).at(key("plate")), minute(-5)) << "there is time";
    EXPECT_EQ(duesAt(service, minute(-23)).at(key("plate")), minute(-3));
    service.apply(live::Started{key("simmer")}, minute(-23));
    service.apply(live::Done{key("simmer")}, minute(-6));
    EXPECT_EQ(duesAt(service, minute(-6)).at(key("plate")), minute(-5)) << "time was made up";
    service.apply(live::MoreTime{key("plate"), 5_min}, minute(-5));
    EXPECT_EQ(duesAt(service, minute(-5)).at(key("plate")), minute(0));
}

TEST(LiveCourse, PressesThatComeSecondsLateDoNotAddUpToMinutes) {
    LessonBuilder builder;
    constexpr int many = 8;
    for (int i = 0; i < many; ++i) {
        builder.step("step" + std::to_string(i), {hands(5_min)}).plates = i + 1 == many;
        if (i > 0) {
            builder.link("step" + std::to_string(i - 1), "step" + std::to_string(i));
        }
        assign(builder.place("step" + std::to_string(i), 5 * (i - many)), "ann");
    }
    live::Service service(builder.lesson);
    Instant now = minute(-5 * many);
    for (int i = 0; i < many; ++i) {
        const PlacementKey step = key("step" + std::to_string(i));
        now = std::max(now, duesAt(service, now).at(step)) + 3_s;
        service.apply(live::Started{step}, now);
        now = now + 5_min;
        service.apply(live::Done{step}, now);
    }
    EXPECT_EQ(live::outlook(service, now).behind, Duration::seconds(3 * many));
}

TEST(LiveMoves, TellWhatMovedByAMinuteOrMoreAndWhatToHold) {
    live::Service service(twoSteps());
    service.apply(live::Started{key("simmer")}, minute(-30));
    const auto movesBy = [&](Duration by, Instant now) {
        const auto before = duesAt(service, now);
        service.apply(live::MoreTime{key("simmer"), by}, now);
        return live::moves(service, before, duesAt(service, now));
    };
    EXPECT_TRUE(movesBy(5_min, minute(-12)).moved.empty()) << "until its user";
    EXPECT_TRUE(movesBy(50_s, minute(-9)).moved.empty());
    const live::Moves it = movesBy(80_s, minute(-8));
    ASSERT_EQ(it.moved.size(), 1U);
    EXPECT_EQ(it.moved.front().key, PlacementKey(key("plate")));
    EXPECT_EQ(it.moved.front().to, minute(-5) + 130_s);
    ASSERT_EQ(it.held.size(), 1U);
    EXPECT_EQ(it.held.front().made, key("simmer"));
    EXPECT_EQ(it.held.front().at, minute(-5) + 130_s);
}

TEST(LiveGains, OfferWhatGainsMostFirstAndNeverWhatCooks) {
    LessonBuilder builder;
    builder.burner("front");
    builder.ware("pot", "pot");
    Step& simmer = builder.step("simmer", {hands(6_min)});
    simmer.heat = onBurner();
    simmer.wares = {fresh("pot")};
    builder.step("carve", {hands(4_min)});
    builder.step("garnish", {hands(2_min)});
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    Placement& onFront = builder.place("simmer", -17);
    assign(onFront, "ann");
    onFront.burners = {BurnerId{"front"}};
    onFront.wares = {{WareId{"pot"}, 0}};
    assign(builder.place("garnish", -11), "ann");
    assign(builder.place("carve", -9), "ann");
    assign(builder.place("plate", -5), "ann");
    const live::Service service(builder.lesson);
    EXPECT_EQ(live::outlook(service, minute(-7)).behind, 10_min);
    using enum live::GainBy;
    EXPECT_THAT(live::gains(service, minute(-7)),
                testing::ElementsAre(live::Gain{LeavingOutStep, {key("carve")}, 4_min},
                                     live::Gain{LeavingOutStep, {key("garnish")}, 2_min},
                                     live::Gain{ServingLater, {}, 10_min}));
}

/// A dough that is mixed and baked, with a sauce beside it that is a component of its own.
Lesson doughAndSauce() {
    LessonBuilder builder;
    builder.step("mix", {hands(10_min)});
    Step& bake = builder.step("bake", {away(20_min)});
    bake.after.mayBeSwappedIn = true;
    bake.hazards.target = 200_F;
    builder.step("chop", {hands(3_min)});
    builder.step("stir", {hands(4_min)});
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    builder.uses("bake", "mix");
    builder.uses("stir", "chop");
    builder.uses("plate", "bake");
    builder.uses("plate", "stir");
    assign(builder.place("mix", -35), "ann");
    builder.place("bake", -25);
    assign(builder.place("chop", -12), "ann");
    assign(builder.place("stir", -9), "ann");
    assign(builder.place("plate", -5), "ann");
    auto& components = builder.lesson.servings.front().dish.components;
    Component sauce{ComponentId{"sauce"}, "Sauce", {}, {}};
    auto& steps = components.front().steps;
    sauce.steps.assign(steps.begin() + 2, steps.begin() + 4);
    steps.erase(steps.begin() + 2, steps.begin() + 4);
    components.push_back(std::move(sauce));
    return builder.lesson;
}

TEST(LiveGains, ATwinSwappedInSavesWhatWouldBeDoneForItAlone) {
    const live::Service service(doughAndSauce());
    const auto found = live::gains(service, minute(-30));  // five minutes behind
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front(),
              (live::Gain{live::GainBy::SwappingIn, {key("bake"), key("mix")}, 5_min}));
    EXPECT_EQ(found.back(), (live::Gain{live::GainBy::ServingLater, {}, 5_min}));
}

TEST(LiveGains, TheSimplerFormThatAComponentNamesIsOfferedWhileNoneOfItHasBegun) {
    Lesson lesson = doughAndSauce();
    Component& sauce = lesson.servings.front().dish.components.back();
    sauce.steps.back().heat = BurnerHeat{};  // by itself it would never be left out
    sauce.simpler = SimplerForm{"butter instead", {StepId{"chop"}, StepId{"stir"}}};
    live::Service service(lesson);
    service.apply(live::Started{key("mix")}, minute(-35));
    service.apply(live::Started{key("bake")}, minute(-25));
    const auto forms = [&] {
        std::vector<live::Gain> found = live::gains(service, minute(-6));
        std::erase_if(found,
                      [](const live::Gain& gain) { return gain.how != live::GainBy::SimplerForm; });
        return found;
    };
    ASSERT_EQ(forms().size(), 1U);
    EXPECT_THAT(forms().front().keys, testing::ElementsAre(key("chop"), key("stir")));
    EXPECT_EQ(live::gains(service, minute(-6)).front(), forms().front());
    service.apply(live::Started{key("chop")}, minute(-6));
    EXPECT_THAT(forms(), testing::IsEmpty());
}

TEST(LiveGains, AWholeComponentIsLeftOutWhereThatGainsMore) {
    live::Service service(doughAndSauce());
    service.apply(live::Started{key("mix")}, minute(-35));
    service.apply(live::Started{key("bake")}, minute(-25));
    const auto found = live::gains(service, minute(-6));  // six minutes behind
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(found.front(), (live::Gain{live::GainBy::LeavingOutComponent,
                                         {key("chop"), key("stir")},
                                         found.front().by}));
    EXPECT_GT(found.front().by, 4_min);
}

TEST(LiveGains, NeverOfferToLeaveOutWhatWorksOnTheFoodOfAnother) {
    LessonBuilder builder;
    builder.step("rest", {away(10_min)});
    builder.step("carve", {hands(4_min)});
    builder.uses("carve", "rest");
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    builder.uses("plate", "carve");
    builder.place("rest", -19);
    assign(builder.place("carve", -9), "ann");
    assign(builder.place("plate", -5), "ann");
    live::Service service(builder.lesson);
    service.apply(live::Started{key("rest")}, minute(-19));
    EXPECT_EQ(live::outlook(service, minute(-5)).behind, 4_min);
    for (const live::Gain& gain : live::gains(service, minute(-5))) {
        EXPECT_TRUE(gain.keys.empty()) << "only the guests may wait";
    }
}

TEST(LiveTaken, TellsOfWhatWasStartedAndDone) {
    live::Service service(twoSteps());
    service.apply(live::Done{key("simmer")}, minute(-10));
    service.apply(live::Started{key("plate")}, minute(-3));
    service.apply(live::Done{key("plate")}, minute(1));
    const auto taken = live::takenBy(twoSteps(), service);
    ASSERT_EQ(taken.size(), 1U) << "how long the other took nobody knows";
    EXPECT_EQ(taken.front().key, key("plate"));
    EXPECT_EQ(taken.front().ended - taken.front().started, 4_min);
    EXPECT_EQ(taken.front().planned, 5_min);
}

}  // namespace
}  // namespace rangeline::test
