// When plating will be done, by hand-worked kitchens; and what a service tells of its steps.

#include <gmock/gmock.h>

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

TEST(LiveOutlook, IsOverOnceThePlatesAreDone) {
    live::Service service(twoSteps());
    service.apply(live::Done{key("simmer")}, minute(-10));
    service.apply(live::Started{key("plate")}, minute(-3));
    EXPECT_EQ(live::outlook(service, minute(-2)).behind, 2_min);
    service.apply(live::Done{key("plate")}, minute(1));
    EXPECT_TRUE(live::outlook(service, minute(9)).plated);
    EXPECT_EQ(live::outlook(service, minute(9)).behind, 1_min);
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
