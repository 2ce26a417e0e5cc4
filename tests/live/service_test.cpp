// What each event does to a service, and what a session makes of the clock.

#include <gmock/gmock.h>

#include "live/machine.h"
#include "support/lesson_builder.h"

namespace rangeline::test {
namespace {

using live::Bell;
using live::Stage;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// Onions by hand, then stock that simmers for 20 min between 2 and 3 min of hands; at -60 and -50.
Lesson simpleLesson() {
    LessonBuilder builder;
    builder.burner("front");
    builder.ware("pot", "pot");
    builder.step("chop", {hands(10_min)});
    Step& simmer = builder.step("simmer", {hands(2_min), away(20_min), hands(3_min)});
    simmer.heat = onBurner();
    simmer.wares = {fresh("pot")};
    Step& roast = builder.step("roast", {away(30_min)});
    roast.cue = "until brown";
    builder.step("call", {});
    assign(builder.place("chop", -60), "ann");
    Placement& onFront = builder.place("simmer", -50);
    assign(onFront, "ann");
    onFront.burners = {BurnerId{"front"}};
    onFront.wares = {{WareId{"pot"}, 0}};
    builder.place("roast", -45);
    builder.place("call", 0);
    return builder.lesson;
}

class LiveService : public testing::Test {
  protected:
    bool at(std::int64_t minuteNow, const live::Event& event) {
        return service_.apply(event, minute(minuteNow));
    }
    const live::Work& work(const std::string& step) { return service_.work(key(step)); }
    const Placement& placement(const std::string& step) {
        return service_.lesson().placements.at(key(step));
    }
    live::Service service_{simpleLesson()};
};

TEST_F(LiveService, StartedStepsCountToTheCueNotToTheEnd) {
    ASSERT_TRUE(at(-48, live::Started{key("simmer")}));
    EXPECT_EQ(work("simmer").stage, Stage::Running);
    EXPECT_EQ(work("simmer").cueAt, minute(-26)) << "2 min of hands, then 20 until the cue";
    EXPECT_EQ(work("simmer").afterCue, 3_min);
    EXPECT_EQ(work("simmer").bell, Bell::Counting);
    EXPECT_TRUE(placement("simmer").started);
    EXPECT_EQ(placement("simmer").start, minute(-48));
    EXPECT_FALSE(at(-47, live::Started{key("simmer")})) << "only once";
}

TEST_F(LiveService, HandsWorkWithoutACueRingsNoBell) {
    ASSERT_TRUE(at(-60, live::Started{key("chop")}));
    EXPECT_EQ(work("chop").bell, Bell::None);
    EXPECT_EQ(work("chop").cueAt, minute(-50));
    EXPECT_THAT(live::dueTimers(service_, minute(0)), IsEmpty());
}

TEST_F(LiveService, AnEventIsDoneWhenItIsStarted) {
    ASSERT_TRUE(at(1, live::Started{key("call")}));
    EXPECT_EQ(work("call").stage, Stage::Done);
    EXPECT_EQ(work("call").ended, minute(1));
}

TEST_F(LiveService, DoneKeepsHowLongItReallyTook) {
    at(-60, live::Started{key("chop")});
    ASSERT_TRUE(at(-53, live::Done{key("chop")}));
    EXPECT_EQ(placement("chop").lasts, 7_min);
    EXPECT_EQ(service_.index().placed(service_.index().nodeOf(key("chop"))).interval,
              minutes(-60, -53));
    EXPECT_FALSE(at(-52, live::Done{key("chop")}));
    EXPECT_FALSE(at(-52, live::MoreTime{key("chop"), 5_min}));
}

TEST_F(LiveService, DoneWithoutHavingBeenStartedIsDoneButOfUnknownLength) {
    ASSERT_TRUE(at(-52, live::Done{key("chop")}));
    EXPECT_EQ(work("chop").stage, Stage::Done);
    EXPECT_FALSE(work("chop").started);
}

TEST_F(LiveService, MoreTimeCountsFromTheTimerOrFromNowWhereThatIsOver) {
    at(-48, live::Started{key("simmer")});
    ASSERT_TRUE(at(-30, live::MoreTime{key("simmer"), 5_min}));
    EXPECT_EQ(work("simmer").cueAt, minute(-21));
    EXPECT_EQ(placement("simmer").lasts, 30_min);
    ASSERT_TRUE(at(-10, live::MoreTime{key("simmer"), 5_min}));
    EXPECT_EQ(work("simmer").cueAt, minute(-5));
}

TEST_F(LiveService, NotReadyAsksAgainAndIsCounted) {
    at(-48, live::Started{key("simmer")});
    ASSERT_TRUE(at(-26, live::NotReady{key("simmer"), 2_min}));
    EXPECT_EQ(work("simmer").cueAt, minute(-24));
    EXPECT_EQ(work("simmer").timesNotReady, 1);
    ASSERT_TRUE(at(-40, live::NotReady{key("roast"), 2_min})) << "due, but cannot begin";
    EXPECT_EQ(work("roast").stage, Stage::Waiting);
    EXPECT_EQ(work("roast").notBefore, minute(-38));
}

TEST_F(LiveService, SkippedBeforeItBeganHasNoPlacementAndComesBackWithNoPlan) {
    const Placement was = placement("roast");
    ASSERT_TRUE(at(-44, live::Skipped{key("roast")}));
    EXPECT_FALSE(service_.lesson().placements.contains(key("roast")));
    EXPECT_FALSE(at(-43, live::PlanReplaced{{{{key("roast"), was}}}}));
    EXPECT_EQ(work("roast").stage, Stage::Skipped);
}

TEST_F(LiveService, AnAlarmOfAnOlderGenerationNeverRings) {
    at(-48, live::Started{key("simmer")});
    const int before = work("simmer").generation;
    at(-27, live::MoreTime{key("simmer"), 5_min});
    EXPECT_FALSE(at(-26, live::AlarmFired{key("simmer"), before}));
    EXPECT_FALSE(at(-22, live::AlarmFired{key("simmer"), before + 1})) << "not due yet";
    EXPECT_TRUE(at(-21, live::AlarmFired{key("simmer"), before + 1}));
    EXPECT_FALSE(at(-21, live::AlarmFired{key("simmer"), before + 1})) << "once";
}

TEST_F(LiveService, StoppingOneAlarmLeavesTheOthers) {
    at(-45, live::Started{key("simmer")});
    at(-45, live::Started{key("roast")});
    for (const auto& timer : live::dueTimers(service_, minute(0))) {
        ASSERT_TRUE(at(0, live::AlarmFired{timer.key, timer.generation}));
    }
    EXPECT_EQ(work("simmer").bellNumber, 1);
    EXPECT_EQ(work("roast").bellNumber, 2);
    ASSERT_TRUE(at(1, live::AlarmStopped{key("simmer"), work("simmer").generation}));
    EXPECT_EQ(work("simmer").bell, Bell::Stopped);
    EXPECT_EQ(work("simmer").stage, Stage::Running) << "silent, but not done";
    EXPECT_THAT(live::ringingTimers(service_), SizeIs(1));
    EXPECT_EQ(work("roast").bellNumber, 2) << "keeps its key while another is free";
}

TEST_F(LiveService, AReplacedPlanMovesOnlyWhatWaits) {
    at(-48, live::Started{key("simmer")});
    Placement later = placement("roast");
    later.start = minute(-40);
    ASSERT_TRUE(at(-47, live::PlanReplaced{{{{key("roast"), later}, {key("simmer"), later}}}}));
    EXPECT_EQ(placement("roast").start, minute(-40));
    EXPECT_EQ(placement("simmer").start, minute(-48));
}

TEST_F(LiveService, StandsWithWhatRunsOverLastingUntilNow) {
    at(-48, live::Started{key("simmer")});
    const Lesson early = service_.standing(minute(-40));
    EXPECT_EQ(early.placements.at(key("simmer")).lasts, 25_min);
    const Lesson late = service_.standing(minute(-20));
    EXPECT_EQ(late.placements.at(key("simmer")).lasts, 31_min) << "28 so far, 3 after the cue";
}

TEST_F(LiveService, NothingHappensAfterTheEnd) {
    ASSERT_TRUE(at(-48, live::Ended()));
    EXPECT_TRUE(service_.hasEnded());
    EXPECT_FALSE(at(-47, live::Started{key("simmer")}));
}

// ---- sessions ---------------------------------------------------------------------------------

TEST(LiveSession, TimeZonesAndSetClocksDoNotTouchATimer) {
    Machine machine;
    live::Session session(simpleLesson(), live::millisecondsOf(minute(-45)), machine,
                          machine.disk());
    session.record(live::Started{key("roast")});
    machine.setWall(std::chrono::hours(1));  // daylight saving, or a time server
    machine.pass(std::chrono::minutes(29));
    EXPECT_THAT(session.tick(), IsEmpty());
    machine.setWall(-std::chrono::hours(5));
    machine.pass(std::chrono::minutes(1));
    EXPECT_THAT(session.tick(), SizeIs(1));
    EXPECT_THAT(session.tick(), IsEmpty());
}

TEST(LiveSession, AfterSleepOverdueAlarmsRingOnceInOrderAndAreMarkedLate) {
    Machine machine;
    live::Session session(simpleLesson(), live::millisecondsOf(minute(-48)), machine,
                          machine.disk());
    session.record(live::Started{key("roast")});
    session.record(live::Started{key("simmer")});
    machine.pass(std::chrono::minutes(40));
    const auto rung = session.tick();
    ASSERT_THAT(rung, SizeIs(2));
    EXPECT_EQ(rung[0].key, PlacementKey(key("simmer")));
    EXPECT_EQ(session.service().work(key("simmer")).rangLate, 18_min);
    EXPECT_EQ(session.service().work(key("roast")).rangLate, 10_min);
}

TEST(LiveSession, ComesBackWithTheTrueRemainingTime) {
    Machine machine;
    live::ClockAnchor begun;
    {
        live::Session session(simpleLesson(), live::millisecondsOf(minute(-45)), machine,
                              machine.disk());
        begun = session.begun();
        session.record(live::Started{key("roast")});
    }
    machine.pass(std::chrono::minutes(10));
    const live::Session again(simpleLesson(), begun, machine.written, machine, machine.disk());
    EXPECT_EQ(again.instant(), minute(-35));
    EXPECT_EQ(again.service().work(key("roast")).cueAt - again.instant(), 20_min);
    machine.startAnew(std::chrono::minutes(5));
    const live::Session third(simpleLesson(), begun, machine.written, machine, machine.disk());
    EXPECT_EQ(third.instant(), minute(-30));
}

TEST(LiveSession, AWallClockThatWasSetWhileItRanDoesNotMisleadAfterANewStart) {
    Machine machine;
    live::Session first(simpleLesson(), live::millisecondsOf(minute(-45)), machine, machine.disk());
    first.record(live::Started{key("roast")});
    machine.setWall(std::chrono::hours(1));
    first.tick();
    first.tick();
    ASSERT_THAT(machine.written, SizeIs(2));
    machine.startAnew(std::chrono::minutes(3));
    const live::Session again(simpleLesson(), first.begun(), machine.written, machine,
                              machine.disk());
    EXPECT_EQ(again.instant(), minute(-42));
}

TEST(LiveSession, AsksWhereTheWallClockWentBackwardsOverANewStartOfTheMachine) {
    Machine machine;
    live::Session first(simpleLesson(), live::millisecondsOf(minute(-45)), machine, machine.disk());
    first.record(live::Started{key("roast")});
    machine.startAnew(-std::chrono::hours(2));
    live::Session session(simpleLesson(), first.begun(), machine.written, machine, machine.disk());
    ASSERT_EQ(session.doubt(), live::ClockDoubt::Backwards);
    EXPECT_THAT(session.tick(), IsEmpty()) << "no alarm by a clock that cannot be right";
    EXPECT_EQ(session.instant(), minute(-45));
    session.record(live::Started{key("simmer")});
    EXPECT_TRUE(session.doubt()) << "what happens meanwhile does not answer the question";
    session.setClock(minute(-15));
    EXPECT_FALSE(session.doubt());
    EXPECT_THAT(session.tick(), SizeIs(2));
    machine.startAnew(std::chrono::hours(30));
    const live::Session third(simpleLesson(), first.begun(), machine.written, machine,
                              machine.disk());
    EXPECT_EQ(third.doubt(), live::ClockDoubt::LongAway);
}

TEST(LiveSession, GoesOnWhileNothingCanBeWrittenAndWritesItLater) {
    Machine machine;
    bool full = true;
    std::vector<live::Entry> kept;
    live::Session session(simpleLesson(), live::millisecondsOf(minute(-45)), machine,
                          [&](const std::vector<live::Entry>& entries) {
                              if (!full) {
                                  kept.insert(kept.end(), entries.begin(), entries.end());
                              }
                              return !full;
                          });
    session.record(live::Started{key("roast")});
    machine.pass(std::chrono::minutes(30));
    EXPECT_THAT(session.tick(), SizeIs(1)) << "the alarm matters more than the disk";
    EXPECT_THAT(session.unwritten(), SizeIs(2));
    full = false;
    session.record(live::Done{key("roast")});
    EXPECT_THAT(session.unwritten(), IsEmpty());
    EXPECT_THAT(kept, SizeIs(3));
}

TEST(LiveClock, TheSystemsReadingsGoForwardAndNameTheBoot) {
    const live::SystemClock clock;
    const auto first = clock.read();
    const auto second = clock.read();
    EXPECT_FALSE(first.boot.empty());
    EXPECT_EQ(first.boot, second.boot);
    EXPECT_LE(first.sinceBoot, second.sinceBoot);
}

}  // namespace
}  // namespace rangeline::test
