// The keys: each does one thing, to the chosen card only.

#include "cookalong/page_fixture.h"

namespace rangeline::test {
namespace {

using live::Stage;
using testing::ElementsAre;
using testing::IsEmpty;

class CookAlongKeys : public CookAlongPage {
  protected:
    void SetUp() override { open(); }
};

TEST_F(CookAlongKeys, StartTheStepThatIsDueWithoutChoosingFirst) {
    passTo(-40);
    press(Qt::Key_S);
    EXPECT_THAT(written<live::Started>(), ElementsAre("rice"));
    EXPECT_EQ(work("stock").stage, Stage::Waiting);
}

TEST_F(CookAlongKeys, StartWhatComesNextEarlyWhereNothingIsToBeBegun) {
    press(Qt::Key_S);
    EXPECT_THAT(written<live::Started>(), ElementsAre("rice"));
    EXPECT_LT(*work("rice").started, minute(-40));
    passTo(-40);
    EXPECT_THAT(cardNames(), ElementsAre("Simmer the stock", "Simmer the rice"));
}

TEST_F(CookAlongKeys, ChooseWithUpAndDownAndActOnThatCardOnly) {
    startAll();
    EXPECT_THAT(cardNames(), ElementsAre("Simmer the beans", "Simmer the stock", "Simmer the rice",
                                         "Plate everything"));
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_Down);
    ASSERT_EQ(view_->chosen(), PlacementKey(key("stock")));
    press(Qt::Key_D);
    EXPECT_EQ(work("stock").stage, Stage::Done);
    EXPECT_EQ(work("rice").stage, Stage::Running);
    EXPECT_EQ(work("beans").stage, Stage::Running);
}

TEST_F(CookAlongKeys, GiveFiveMoreMinutes) {
    startAll();
    const Instant before = work("beans").cueAt;
    view_->cards().front()->setFocus();
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_M);
    EXPECT_EQ(work("beans").cueAt, before + 5_min);
    EXPECT_THAT(written<live::MoreTime>(), ElementsAre("beans"));
}

TEST_F(CookAlongKeys, LookAgainInTwoMinutesWhatIsNotReadyYet) {
    startAll();
    passTo(-27);
    press(Qt::Key_Up);
    press(Qt::Key_Up);
    press(Qt::Key_N);
    EXPECT_EQ(work("beans").timesNotReady, 1);
    EXPECT_EQ(work("beans").cueAt, service_->session().instant() + 2_min);
    EXPECT_THAT(view_->alarms(), IsEmpty()) << "it is answered";
}

TEST_F(CookAlongKeys, SkipAStep) {
    passTo(-40);
    press(Qt::Key_K);
    EXPECT_EQ(work("rice").stage, Stage::Skipped);
    EXPECT_EQ(card(key("rice")), nullptr);
}

TEST_F(CookAlongKeys, HeldDownOrStickingAreOnePress) {
    passTo(-40);
    pass(std::chrono::seconds(1));
    for (int i = 0; i < 5; ++i) {
        QKeyEvent again(QEvent::KeyPress, Qt::Key_S, Qt::NoModifier, QStringLiteral("s"), i > 0);
        QApplication::sendEvent(view_.get(), &again);
    }
    EXPECT_EQ(written<live::Started>().size(), 1U);
}

TEST_F(CookAlongKeys, ASecondPressAtOnceDoesNothingToTheCardThatMovedUp) {
    passTo(-40);
    press(Qt::Key_K);
    QTest::keyClick(view_.get(), Qt::Key_K);
    EXPECT_THAT(written<live::Skipped>(), ElementsAre("rice"));
    press(Qt::Key_K);
    EXPECT_THAT(written<live::Skipped>(), ElementsAre("rice", "stock"));
}

TEST_F(CookAlongKeys, WithControlOrAltDoNothing) {
    passTo(-40);
    pass(std::chrono::seconds(1));
    QTest::keyClick(view_.get(), Qt::Key_S, Qt::ControlModifier);
    EXPECT_THAT(written<live::Started>(), IsEmpty());
}

TEST_F(CookAlongKeys, EachButtonOfACardDoesWhatItSaysToItsOwnStep) {
    startAll();
    click(card(key("rice"))->button(CardPress::Done));
    EXPECT_EQ(work("rice").stage, Stage::Done);
    const Instant before = work("stock").cueAt;
    click(card(key("stock"))->button(CardPress::MoreTime));
    EXPECT_EQ(work("stock").cueAt, before + 5_min);
    click(card(key("stock"))->button(CardPress::NotReady));
    EXPECT_EQ(work("stock").timesNotReady, 1);
    click(card(key("stock"))->button(CardPress::Skip));
    EXPECT_EQ(work("stock").stage, Stage::Skipped);
    EXPECT_EQ(work("beans").stage, Stage::Running);
}

TEST_F(CookAlongKeys, ATouchThatLandsWhereACardJustMovedAwayIsDropped) {
    startAll();
    passTo(-27);  // the beans ring: their bar pushes the cards down
    QTest::mouseClick(card(key("stock"))->button(CardPress::Done), Qt::LeftButton);
    EXPECT_EQ(work("stock").stage, Stage::Running);
    click(card(key("stock"))->button(CardPress::Done));
    EXPECT_EQ(work("stock").stage, Stage::Done);
}

}  // namespace
}  // namespace rangeline::test
