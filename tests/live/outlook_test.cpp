// When plating will be done, by hand-worked kitchens; and what a service tells of its steps.

#include <gmock/gmock.h>

#include "live/gains.h"
#include "live/outlook.h"
#include "live/push.h"
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

TEST(LiveOutlook, IsOverOnceThePlatesAreDone) {
    live::Service service(twoSteps());
    service.apply(live::Done{key("simmer")}, minute(-10));
    service.apply(live::Started{key("plate")}, minute(-3));
    EXPECT_EQ(live::outlook(service, minute(-2)).behind, 2_min);
    service.apply(live::Done{key("plate")}, minute(1));
    EXPECT_TRUE(live::outlook(service, minute(9)).plated);
    EXPECT_EQ(live::outlook(service, minute(9)).behind, 1_min);
}

TEST(LivePush, MovesWhatFollowsOntoTheGrainAndSaysWhatToHold) {
    LessonBuilder builder;
    builder.lesson = twoSteps();
    live::Service service(builder.lesson);
    service.apply(live::Started{key("simmer")}, minute(-30));
    EXPECT_TRUE(live::push(service, live::courseOf(service, minute(-12))).moved.empty());
    service.apply(live::MoreTime{key("simmer"), Duration::seconds(200)}, minute(-10));
    const live::Push it = live::push(service, live::courseOf(service, minute(-10)));
    EXPECT_TRUE(it.moved.empty()) << "until 1 min 40 s before its user";
    service.apply(live::MoreTime{key("simmer"), Duration::seconds(230)}, minute(-9));
    const live::Push later = live::push(service, live::courseOf(service, minute(-9)));
    ASSERT_EQ(later.moved.size(), 1U);
    EXPECT_EQ(later.moved.front().from, minute(-5));
    EXPECT_EQ(later.moved.front().to, minute(-2)) << "2 min 50 s before serving, on the minute";
    ASSERT_EQ(later.held.size(), 1U);
    EXPECT_EQ(later.held.front().made, key("simmer"));
    ASSERT_TRUE(service.apply(live::PlanReplaced{later.change}, minute(-9)));
    EXPECT_EQ(live::outlook(service, minute(-9)).behind, 3_min);
    EXPECT_TRUE(live::push(service, live::courseOf(service, minute(-9))).moved.empty());
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
