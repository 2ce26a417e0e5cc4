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
    EXPECT_THAT(
        live::gains(service, minute(-7)),
        testing::ElementsAre(live::Gain{key("carve"), 4_min}, live::Gain{key("garnish"), 2_min}));
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
