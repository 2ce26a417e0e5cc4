#include "text/columns.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rangeline {
namespace {

using testing::ElementsAre;

TEST(Columns, WidthInCells) {
    EXPECT_EQ(displayWidth("sauté"), 5);
    EXPECT_EQ(displayWidth(QString::fromUtf8("saute\u0301")), 5);  // a combining accent
    EXPECT_EQ(displayWidth(QString::fromUtf8("煮物")), 4);
    EXPECT_EQ(displayWidth(QString()), 0);
}

TEST(Columns, WrapsAtSpaces) {
    EXPECT_THAT(wrapped("char the leeks", 8), ElementsAre("char the", "leeks"));
    EXPECT_THAT(wrapped("char the leeks", 14), ElementsAre("char the leeks"));
    EXPECT_THAT(wrapped("", 8), ElementsAre(""));
}

TEST(Columns, CutsAWordThatIsWiderThanTheColumn) {
    EXPECT_THAT(wrapped("unmistakably", 5), ElementsAre("unmis", "takab", "ly"));
    EXPECT_THAT(wrapped(QString::fromUtf8("煮物"), 1),
                ElementsAre(QString::fromUtf8("煮"), QString::fromUtf8("物")));
}

TEST(Columns, AreAligned) {
    EXPECT_EQ(inColumns({{"When"}, {"What", true}}, {{"5:10 PM", "char"}, {"12", "bake it"}}, 40),
              "When     What\n"
              "5:10 PM  char\n"
              "12       bake it\n");
}

TEST(Columns, AWideLetterKeepsTheNextColumnInPlace) {
    EXPECT_EQ(inColumns({{"A"}, {"B"}}, {{QString::fromUtf8("煮"), "x"}, {"ab", "y"}}, 40),
              QString::fromUtf8("A   B\n煮  x\nab  y\n"));
}

TEST(Columns, NoLineIsWiderThanAskedFor) {
    const QString text = "a rather long way of saying what there is to do at this point";
    for (const int width : {40, 60, 80, 120}) {
        const QString table = inColumns({{"When"}, {"What", true}, {"Until", true}},
                                        {{"5:10 PM", text, text}}, width);
        for (const QString& line : table.split('\n')) {
            EXPECT_LE(displayWidth(line), width) << line.toStdString();
        }
    }
}

}  // namespace
}  // namespace rangeline
