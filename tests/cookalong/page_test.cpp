// What the page tells: now, next, the outlook, what moved, what to do about it; and that it can be
// read at the sizes and in the colours it is made for.

#include <QLabel>
#include <QPushButton>
#include <QTimeEdit>
#include <algorithm>

#include "cookalong/live_colours.h"
#include "cookalong/page_fixture.h"
#include "support/contrast.h"
#include "support/find_widget.h"

namespace rangeline::test {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

class CookAlongPageText : public CookAlongPage {
  protected:
    std::vector<std::string> labels() const {
        std::vector<std::string> found;
        for (const QLabel* each : view_->findChildren<QLabel*>()) {
            if (each->isVisibleTo(view_.get())) {
                found.push_back(each->text().toStdString());
            }
        }
        return found;
    }
};

TEST_F(CookAlongPageText, SaysWhatIsDueNowAndWhatComesNext) {
    open();
    EXPECT_THAT(cardNames(), ElementsAre("Simmer the rice")) << "to be begun early";
    EXPECT_EQ(view_->cards().front()->card().state, CardState::Later);
    EXPECT_THAT(labels(), Not(Contains("in 1 min: Simmer the rice"))) << "not said twice";
    EXPECT_THAT(labels(), Contains("in 1 min: Simmer the stock"));
    passTo(-40);
    EXPECT_THAT(cardNames(), ElementsAre("Simmer the rice", "Simmer the stock"));
    EXPECT_THAT(labels(), Not(Contains(HasSubstr("min: Simmer the rice"))));
    EXPECT_THAT(labels(), Contains("in 2 min: Simmer the beans"));
}

TEST_F(CookAlongPageText, CountsDownToTheCueAndOnPastIt) {
    open();
    startAll();
    passTo(-36);
    EXPECT_EQ(card(key("beans"))->card().figure, QStringLiteral("8:01"))
        << "begun a second after it was due";
    passTo(-27);
    EXPECT_EQ(card(key("beans"))->card().figure, QStringLiteral("+0:59"));
}

TEST_F(CookAlongPageText, SaysHowFarPlatingIsBehindWhatMovedAndWhatToHold) {
    open();
    EXPECT_THAT(labels(), Contains(HasSubstr("on time")));
    startAll();
    passTo(-15);
    for (int i = 0; i < 3; ++i) {
        click(card(key("rice"))->button(CardPress::MoreTime));
    }
    EXPECT_THAT(labels(), Contains(HasSubstr("behind")));
    EXPECT_THAT(labels(), Contains(testing::AllOf(HasSubstr("“Plate everything” moves to"),
                                                  HasSubstr("Hold what “Simmer the"))));
}

TEST_F(CookAlongPageText, OffersToLeaveOutWhatGainsMostAndDoesItAtTheKey) {
    LessonBuilder builder;
    Step& seeds = builder.step("seeds", {hands(8_min)});
    seeds.name = "Pick the herbs";
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    builder.uses("plate", "seeds");
    assign(builder.place("seeds", -13), "ann");
    assign(builder.place("plate", -5), "ann");
    open(builder.lesson, 14);
    passTo(-8);  // five minutes too late
    QTRY_VERIFY(!service_->gains().empty());
    EXPECT_THAT(labels(), Contains("Leaving out “Pick the herbs” gains 5 minutes"));
    press(Qt::Key_L);
    EXPECT_THAT(written<live::Skipped>(), ElementsAre("seeds"));
    EXPECT_THAT(labels(), Contains(HasSubstr("on time")));
}

TEST_F(CookAlongPageText, OffersTheSimplerFormInTheWordsOfTheCook) {
    LessonBuilder builder;
    builder.step("pick", {hands(4_min)});
    builder.step("chop", {hands(4_min)});
    Step& plate = builder.step("plate", {hands(5_min)});
    plate.plates = true;
    builder.uses("chop", "pick");
    builder.uses("plate", "chop");
    assign(builder.place("pick", -13), "ann");
    assign(builder.place("chop", -9), "ann");
    assign(builder.place("plate", -5), "ann");
    Component& herbs = builder.lesson.servings.front().dish.components.front();
    herbs.name = "Herbs";
    herbs.simpler = SimplerForm{"whole sprigs", {StepId{"chop"}}};
    open(builder.lesson, 14);
    passTo(-8);  // five minutes too late
    QTRY_VERIFY(!service_->gains().empty());
    EXPECT_THAT(labels(), Contains("“Herbs” made simpler (whole sprigs) gains 4 minutes"));
    const auto buttons = view_->findChildren<QPushButton*>();
    EXPECT_TRUE(std::ranges::any_of(
        buttons, [](const QPushButton* one) { return one->text() == "L  Make it simpler"; }));
    press(Qt::Key_L);
    EXPECT_THAT(written<live::Skipped>(), ElementsAre("chop"));
}

TEST_F(CookAlongPageText, ArrangesTheRestAnewWhereThatSavesThePlatingAndSaysWhatMoved) {
    open(roastDinner().lesson, 71);
    passTo(-58);
    service_->record(live::Started{key("roast")});  // done at -18 instead of -30
    ASSERT_GT(service_->outlook().behind, 6_min);
    QTRY_VERIFY(service_->outlook().behind <= Duration());
    EXPECT_THAT(labels(), Contains(HasSubstr("on time")));
    EXPECT_THAT(labels(), Contains(HasSubstr("“Dress the salad” moves to")));
}

TEST_F(CookAlongPageText, SaysInHoursHowFarPlatingIsBehindWhereThatIsFar) {
    open();
    passTo(40);  // nothing has begun: the rice alone takes 25 minutes, then 5 to plate
    EXPECT_THAT(labels(), Contains(HasSubstr("1 h 10 min behind")));
}

TEST_F(CookAlongPageText, OffersToPlateLaterAndHoldsTheRestAgainstThat) {
    open();
    passTo(-21);  // nothing has begun: the rice alone takes 25 minutes, then 5 to plate
    EXPECT_THAT(labels(), Contains(HasSubstr("9 minutes behind")));
    EXPECT_THAT(labels(), Contains(HasSubstr("instead, and nothing is rushed")));
    press(Qt::Key_P);
    EXPECT_THAT(labels(), Contains(HasSubstr("on time")));
    EXPECT_THAT(labels(), Not(Contains(HasSubstr("instead"))));
    openAgain();
    EXPECT_THAT(labels(), Contains(HasSubstr("on time")));
    press(Qt::Key_P);
    EXPECT_EQ(service_->service().servedLater(), 10_min) << "there is nothing to put off";
}

TEST_F(CookAlongPageText, AsksForTheTimeWhereTheClockCannotBeBelievedAndRingsNothingUntilThen) {
    open();
    startAll();
    close();
    machine_.startAnew(std::chrono::hours(-5));
    openAgain();
    service_->look();
    auto* question = findNamed<QTimeEdit>(*view_, QStringLiteral("What time it is"));
    ASSERT_TRUE(question->isVisibleTo(view_.get()));
    question->setTime(question->time().addSecs(12 * 60));
    findNamed<QPushButton>(*view_, QStringLiteral("This time it is"))->click();
    EXPECT_FALSE(question->isVisibleTo(view_.get()));
    EXPECT_THAT(written<live::AlarmFired>(), ElementsAre("beans"));
}

TEST_F(CookAlongPageText, GoesOnAfterAKillWithTheTrueRemainingTime) {
    open();
    startAll();
    close();
    machine_.pass(std::chrono::minutes(3));
    openAgain();
    EXPECT_EQ(card(key("beans"))->card().figure, QStringLiteral("7:00"));
    EXPECT_EQ(card(key("rice"))->card().state, CardState::Runs);
}

// ---- how it can be read -----------------------------------------------------------------------

struct Size {
    int width;
    int height;
};

class CookAlongPageSizes : public CookAlongPageText, public testing::WithParamInterface<Size> {
  protected:
    /// What a label or button needs is what it has.
    void expectWordsWhole() {
        view_->resize(GetParam().width, GetParam().height);
        pass(std::chrono::seconds(1));
        QCoreApplication::processEvents();
        EXPECT_EQ(view_->size(), QSize(GetParam().width, GetParam().height))
            << "it needs more room";
        for (const QLabel* each : view_->findChildren<QLabel*>()) {
            if (each->isVisibleTo(view_.get()) && !each->text().isEmpty()) {
                const int needed = each->wordWrap() ? each->heightForWidth(each->width())
                                                    : each->sizeHint().height();
                EXPECT_GE(each->height(), needed) << each->text().toStdString();
                EXPECT_TRUE(each->wordWrap() || each->width() >= each->sizeHint().width())
                    << each->text().toStdString();
            }
        }
        for (const QPushButton* each : view_->findChildren<QPushButton*>()) {
            if (each->isVisibleTo(view_.get())) {
                const int words = each->fontMetrics().horizontalAdvance(each->text());
                EXPECT_GT(each->width(), words + 4) << each->text().toStdString();
                EXPECT_GE(each->height(), 36) << each->text().toStdString();
            }
        }
        for (const StepCardView* each : view_->cards()) {
            const QWidget* column = each->parentWidget();
            EXPECT_LE(column->width(), column->parentWidget()->width()) << "beyond the view";
        }
    }
};

TEST_P(CookAlongPageSizes, ShowWordsWholeWhereStepsRunAndRing) {
    open();
    startAll();
    passTo(-27);
    expectWordsWhole();
}

TEST_P(CookAlongPageSizes, ShowWordsWholeWhereStepsAreDueAndPlatingIsBehind) {
    open();
    passTo(-20);
    expectWordsWhole();
}

INSTANTIATE_TEST_SUITE_P(, CookAlongPageSizes,
                         testing::Values(Size{1280, 860}, Size{1024, 640}, Size{1920, 1080}),
                         [](const auto& size) {
                             return "Width" + std::to_string(size.param.width);
                         });

TEST(CookAlongColours, HaveTheContrastOfTextAndOfParts) {
    for (const bool dark : {false, true}) {
        const LiveColours& it = LiveColours::of(dark);
        for (const QColor& ground : {it.ground, it.panel}) {
            for (const QColor& text : {it.text, it.quiet, it.look}) {
                EXPECT_GE(contrast(text.rgb(), ground.rgb()), 4.5) << dark;
            }
            for (const QColor& part : {it.line, it.chosen, it.due, it.runs, it.alarm}) {
                EXPECT_GE(contrast(part.rgb(), ground.rgb()), 3.0) << dark;
            }
        }
        EXPECT_GE(contrast(it.onAlarm.rgb(), it.alarm.rgb()), 4.5) << dark;
        EXPECT_GE(contrast(it.ground.rgb(), it.chosen.rgb()), 4.5) << dark << " on a usual button";
    }
}

TEST_F(CookAlongPageText, EveryButtonSaysForWhichStepItIs) {
    open();
    startAll();
    for (const StepCardView* each : view_->cards()) {
        for (const CardPress it : cardPresses) {
            EXPECT_THAT(each->button(it)->accessibleName().toStdString(),
                        HasSubstr(each->card().name.toStdString()));
        }
    }
}

}  // namespace
}  // namespace rangeline::test
