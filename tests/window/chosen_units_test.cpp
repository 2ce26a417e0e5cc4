// The units that the user reads and writes in, wherever the window shows any.

#include "window/chosen_units.h"

#include <gtest/gtest.h>

#include <QSettings>
#include <QSignalSpy>

#include "text/plan_text.h"
#include "window/main_window.h"

namespace rangeline::test {
namespace {

const QLocale american(QLocale::English, QLocale::UnitedStates);
const QLocale german(QLocale::German, QLocale::Germany);

class UnitsChosen : public ::testing::Test {
  protected:
    void SetUp() override { QSettings().clear(); }
    void TearDown() override { QSettings().clear(); }
};

TEST_F(UnitsChosen, AreThoseOfTheLocaleUntilTheUserChooses) {
    EXPECT_EQ(ChosenUnits(american).units(), Units::UsCustomary);
    EXPECT_EQ(ChosenUnits(german).units(), Units::Metric);
}

TEST_F(UnitsChosen, AreRememberedAndSaidOnce) {
    ChosenUnits units(american);
    QSignalSpy changed(&units, &ChosenUnits::changed);
    units.choose(Units::Metric);
    units.choose(Units::Metric);
    EXPECT_EQ(changed.size(), 1);
    EXPECT_EQ(ChosenUnits(american).units(), Units::Metric);
}

TEST_F(UnitsChosen, AChoiceThatIsNoneCountsAsNone) {
    QSettings().setValue("units", "furlongs");
    EXPECT_EQ(ChosenUnits(german).units(), Units::Metric);
}

TEST_F(UnitsChosen, RuleTheOpenLessonOnScreenAndLeaveItAsItIs) {
    MainWindow window(american);
    ASSERT_TRUE(window.openFile(RANGELINE_SOURCE_DIR "/sample-data/first-lesson.json"));
    LessonDocument& document = window.document();
    const Lesson before = document.lesson();
    const auto plan = [&] {
        QString all;
        for (const PlanRow& row : planRows(document.index(), document.text(american))) {
            all += row.clock + u' ' + row.where + u'\n';
        }
        return all;
    };
    ASSERT_EQ(before.head.units, Units::UsCustomary);
    EXPECT_TRUE(window.actions().usUnits->isChecked());
    EXPECT_TRUE(plan().contains("°F") && plan().contains("PM")) << plan().toStdString();

    window.actions().metricUnits->trigger();
    EXPECT_TRUE(plan().contains("°C") && !plan().contains("°F") && !plan().contains("PM"))
        << plan().toStdString();
    EXPECT_EQ(document.lesson(), before);
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(document.shownHead().units, Units::Metric);
}

TEST_F(UnitsChosen, HoldForTheLessonOpenedNext) {
    ChosenUnits(american).choose(Units::Metric);
    MainWindow window(american);
    ASSERT_TRUE(window.openFile(RANGELINE_SOURCE_DIR "/sample-data/harvest-plate.json"));
    EXPECT_EQ(window.document().units(), Units::Metric);
    EXPECT_TRUE(window.actions().metricUnits->isChecked());
}

}  // namespace
}  // namespace rangeline::test
