#include "text/cut_text.h"

#include <gtest/gtest.h>

namespace rangeline::test {
namespace {

const QLocale english(QLocale::English, QLocale::UnitedStates);

// Open textbooks of the trade: small dice 1/4 in, julienne 1/8 x 1/8 x 1 to 2 1/2 in.
TEST(CutText, TellsTheDimensionWithTheName) {
    EXPECT_EQ(cutText("small dice", Units::UsCustomary, english), "small dice (¼ in)");
    EXPECT_EQ(cutText("Small dice", Units::Metric, english), "Small dice (6.4 mm)");
    EXPECT_EQ(cutText("julienne", Units::UsCustomary, english),
              "julienne (⅛ in × ⅛ in × 1 in to 2½ in)");
}

TEST(CutText, LeavesTheCooksOwnWordsAlone) {
    EXPECT_EQ(cutText("torn by hand", Units::UsCustomary, english), "torn by hand");
    EXPECT_EQ(cutText("", Units::UsCustomary, english), "");
}

TEST(CutText, TakesTheDimensionOffAgainInEitherUnits) {
    for (const Units units : {Units::UsCustomary, Units::Metric}) {
        EXPECT_EQ(cutWithoutDimension(cutText("paysanne", units, english), english), "paysanne");
    }
    EXPECT_EQ(cutWithoutDimension("diced (finely)", english), "diced (finely)");
}

}  // namespace
}  // namespace rangeline::test
