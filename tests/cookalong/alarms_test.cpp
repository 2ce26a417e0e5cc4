// Alarms on the page: several at once, each with a key and a button of its own.

#include "cookalong/page_fixture.h"

namespace rangeline::test {
namespace {

using live::Bell;
using testing::Each;
using testing::ElementsAre;
using testing::Ge;
using testing::HasSubstr;
using testing::IsEmpty;

class CookAlongAlarms : public CookAlongPage {
  protected:
    void SetUp() override { open(); }

    std::vector<std::string> texts() const {
        std::vector<std::string> found;
        for (const AlarmBar* bar : view_->alarms()) {
            found.push_back(bar->accessibleName().toStdString());
        }
        return found;
    }
    /// Beans and stock, both ringing.
    void twoAlarms() {
        startAll();
        passTo(-27);
        passTo(-19);
        ASSERT_EQ(view_->alarms().size(), 2U);
    }
    Qt::Key keyOfAlarm(const std::string& step) const {
        return static_cast<Qt::Key>(Qt::Key_0 + work(step).bellNumber);
    }
};

TEST_F(CookAlongAlarms, NameTheirStepPanBurnerAndCue) {
    startAll();
    passTo(-27);
    EXPECT_THAT(texts(),
                ElementsAre(testing::AllOf(HasSubstr("Simmer the beans"), HasSubstr("beans-pot"),
                                           HasSubstr("back"), HasSubstr("tender"))));
}

TEST_F(CookAlongAlarms, AreWrittenDownBeforeTheyAreHeard) {
    startAll();
    EXPECT_THAT(firedWhenHeard_, IsEmpty());
    passTo(-27);
    EXPECT_THAT(firedWhenHeard_, ElementsAre(1U));
}

TEST_F(CookAlongAlarms, AreHeardAgainEveryOtherSecondUntilTheyAreStopped) {
    startAll();
    passTo(-27);
    for (int i = 0; i < 10; ++i) {
        pass(std::chrono::seconds(1));
    }
    EXPECT_EQ(firedWhenHeard_.size(), 6U);
    EXPECT_THAT(firedWhenHeard_, Each(1U)) << "it is one alarm all the time";
    press(keyOfAlarm("beans"));
    const std::size_t heard = firedWhenHeard_.size();
    for (int i = 0; i < 10; ++i) {
        pass(std::chrono::seconds(1));
    }
    EXPECT_EQ(firedWhenHeard_.size(), heard);
}

TEST_F(CookAlongAlarms, StopByTheirOwnNumberOnly) {
    twoAlarms();
    ASSERT_NE(work("beans").bellNumber, work("stock").bellNumber);
    for (int number = Qt::Key_0; number <= Qt::Key_9; ++number) {
        if (number != keyOfAlarm("beans") && number != keyOfAlarm("stock")) {
            press(static_cast<Qt::Key>(number));
        }
    }
    EXPECT_EQ(view_->alarms().size(), 2U);
    press(keyOfAlarm("stock"));
    EXPECT_EQ(work("stock").bell, Bell::Stopped);
    EXPECT_EQ(work("beans").bell, Bell::Ringing);
    EXPECT_EQ(view_->alarms().size(), 1U);
    EXPECT_THAT(written<live::AlarmStopped>(), ElementsAre("stock"));
}

TEST_F(CookAlongAlarms, StopByTheirOwnButtonOnlyAndOnePressStopsOne) {
    twoAlarms();
    AlarmBar* first = view_->alarms().front();
    const PlacementKey stopped = first->timer().key;
    pass(std::chrono::seconds(1));
    QTest::mouseDClick(first->button(), Qt::LeftButton);
    QTest::mouseClick(view_->alarms().front()->button(), Qt::LeftButton);
    EXPECT_EQ(written<live::AlarmStopped>().size(), 1U) << "the other has moved under the finger";
    EXPECT_NE(view_->alarms().front()->timer().key, stopped);
    click(view_->alarms().front()->button());
    EXPECT_THAT(view_->alarms(), IsEmpty());
}

TEST_F(CookAlongAlarms, AreNotStoppedByWhatActsOnACardThatDoesNotRing) {
    twoAlarms();
    QTest::mouseClick(card(key("rice")), Qt::LeftButton);  // chooses it
    click(card(key("rice"))->button(CardPress::MoreTime));
    press(Qt::Key_Space);
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    EXPECT_EQ(view_->alarms().size(), 2U);
}

TEST_F(CookAlongAlarms, OfAStepThatIsDoneEndWithItAndTheOtherGoesOn) {
    twoAlarms();
    click(card(key("beans"))->button(CardPress::Done));
    ASSERT_EQ(view_->alarms().size(), 1U);
    EXPECT_EQ(view_->alarms().front()->timer().key, PlacementKey(key("stock")));
}

TEST_F(CookAlongAlarms, OverdueAfterSleepRingOnceInTheirOrderAndSayHowLate) {
    startAll();
    machine_.pass(std::chrono::minutes(25));  // asleep: nobody looks
    service_->look();
    EXPECT_THAT(written<live::AlarmFired>(), ElementsAre("beans", "stock", "rice"));
    ASSERT_EQ(view_->alarms().size(), 3U);
    EXPECT_THAT(texts(), ElementsAre(testing::AllOf(HasSubstr("beans"), HasSubstr("late")),
                                     testing::AllOf(HasSubstr("stock"), HasSubstr("late")),
                                     testing::AllOf(HasSubstr("rice"), HasSubstr("late"))));
    for (int i = 0; i < 30; ++i) {
        pass(std::chrono::seconds(1));
    }
    EXPECT_EQ(written<live::AlarmFired>().size(), 3U);
}

TEST_F(CookAlongAlarms, RingOnAfterAKillUntilTheyAreStopped) {
    startAll();
    passTo(-27);
    openAgain();
    ASSERT_EQ(view_->alarms().size(), 1U) << "it has not been stopped";
    service_->look();
    EXPECT_EQ(written<live::AlarmFired>().size(), 1U);
    press(keyOfAlarm("beans"));
    openAgain();
    EXPECT_THAT(view_->alarms(), IsEmpty());
}

TEST_F(CookAlongAlarms, MissedWhileTheProgramWasDeadRingAfterItMarkedLate) {
    startAll();
    close();
    machine_.pass(std::chrono::minutes(12));
    openAgain();
    service_->look();
    EXPECT_THAT(texts(), ElementsAre(testing::AllOf(HasSubstr("beans"), HasSubstr("late"))));
    EXPECT_EQ(card(key("stock"))->card().figure.toStdString().substr(0, 2), "6:");
}

TEST_F(CookAlongAlarms, MoreThanNineAtOnceKeepTheirButtons) {
    LessonBuilder builder;
    constexpr int many = 11;
    for (int i = 0; i < many; ++i) {
        const std::string id = "step" + std::to_string(i);
        builder.step(id, {away(10_min)}).cue = "ready";
        builder.place(id, -40);
    }
    open(builder.lesson);
    passTo(-40);
    for (int i = 0; i < many; ++i) {
        press(Qt::Key_S);
        press(Qt::Key_Down);
        press(Qt::Key_Up);
        while (view_->chosen() && card(*view_->chosen())->card().state != CardState::Due &&
               i + 1 < many) {
            press(Qt::Key_Up);
        }
    }
    ASSERT_EQ(written<live::Started>().size(), static_cast<std::size_t>(many));
    passTo(-20);
    ASSERT_EQ(view_->alarms().size(), static_cast<std::size_t>(many));
    click(view_->alarms().back()->button());
    EXPECT_EQ(view_->alarms().size(), static_cast<std::size_t>(many - 1));
}

}  // namespace
}  // namespace rangeline::test
