#include "text/plan_text.h"

#include <gtest/gtest.h>

#include "text/columns.h"
#include "text/supper.h"

namespace rangeline::test {
namespace {

std::vector<PlanRow> rowsOf(const Supper& supper) {
    return planRows(UseIndex(supper.lesson, supper.expanded), supper.context);
}

TEST(PlanText, OneRowForEachPlacementInOrderOfStart) {
    auto builder = supperBuilder();
    builder.placeTurnOn("oven", minute(-120), 425_F, "ann");
    const Supper supper(builder);
    const auto rows = rowsOf(supper);
    ASSERT_EQ(rows.size(), 4u);
    EXPECT_EQ(rows[0].step, "Turning on the oven");
    EXPECT_EQ(rows[0].where, "425 °F");
    EXPECT_EQ(rows[0].length, "30 s");
    EXPECT_EQ(rows[1].step, "Roast the thighs");
    EXPECT_EQ(rows[1].where, "oven slot 1, 425 °F, half sheet 1");
    EXPECT_EQ(rows[1].who, "");
    EXPECT_EQ(rows[2].step, "Bake the gratin");
    EXPECT_EQ(rows[3].clock, "5:40 PM");
    EXPECT_EQ(rows[3].toPlating, "50 min");
    EXPECT_EQ(rows[3].where, "front left burner, sauté pan 2");
    EXPECT_EQ(rows[3].who, "Robin");
    EXPECT_EQ(rows[3].length, "10 min");
    EXPECT_EQ(rows[3].cue, "until the edges are black");
}

TEST(PlanText, InColumns) {
    EXPECT_EQ(planText(rowsOf(Supper()), 120),
              "Clock    To plating  Step              Where                              Who    "
              "How long  Until\n"
              "4:50 PM  1 h 40 min  Roast the thighs  oven slot 1, 425 °F, half sheet 1         "
              "1 h\n"
              "5:10 PM  1 h 20 min  Bake the gratin   oven slot 2, 375 °F, half sheet 2         "
              "45 min\n"
              "5:40 PM  50 min      Char the leeks    front left burner, sauté pan 2     Robin  "
              "10 min    until the edges are black\n");
}

TEST(PlanText, WrapsAtTheWidth) {
    for (const int width : {80, 100}) {
        for (const QString& line : planText(rowsOf(Supper()), width).split('\n')) {
            EXPECT_LE(displayWidth(line), width) << line.toStdString();
        }
    }
}

TEST(PlanText, NothingPlacedIsOnlyTheHeading) {
    auto builder = supperBuilder();
    builder.lesson.placements.clear();
    EXPECT_EQ(planText(rowsOf(Supper(builder)), 80).count('\n'), 1);
}

}  // namespace
}  // namespace rangeline::test
