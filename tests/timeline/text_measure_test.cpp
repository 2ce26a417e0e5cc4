#include "timeline/text_measure.h"

#include <gmock/gmock.h>

#include "timeline/fixed_measure.h"

namespace rangeline {
namespace {

using ::testing::ElementsAre;

// Ten units high, so five for each letter.
const TimelineStyle& tenHigh() {
    static const TimelineStyle style = [] {
        TimelineStyle made;
        made.fontSizes.fill(10);
        return made;
    }();
    return style;
}

const FontRole role = FontRole::Body;

TEST(Fitted, WholeWhereItFits) {
    const test::FixedMeasure measure(tenHigh());
    EXPECT_EQ(measure.fitted(role, "Leeks", 25), "Leeks");
}

TEST(Fitted, CutWithAnEllipsis) {
    const test::FixedMeasure measure(tenHigh());
    EXPECT_EQ(measure.fitted(role, "Char the leeks", 40), QStringLiteral(u"Char th\u2026"));
    EXPECT_EQ(measure.fitted(role, "Char the leeks", 30), QStringLiteral(u"Char\u2026"));
}

TEST(Fitted, NothingRatherThanTwoLetters) {
    const test::FixedMeasure measure(tenHigh());
    EXPECT_EQ(measure.fitted(role, "Leeks", 15), "");
    EXPECT_EQ(measure.fitted(role, "Leeks", -3), "");
}

TEST(Wrapped, BreaksAtSpaces) {
    const test::FixedMeasure measure(tenHigh());
    EXPECT_THAT(measure.wrapped(role, "rest the thighs five minutes", 60),
                ElementsAre("rest the", "thighs five", "minutes"));
    EXPECT_THAT(measure.wrapped(role, "", 60), ElementsAre(""));
}

TEST(Wrapped, BreaksAWordThatIsTooLong) {
    const test::FixedMeasure measure(tenHigh());
    EXPECT_THAT(measure.wrapped(role, "a hazelnutcrumb", 40),
                ElementsAre("a", "hazelnut", "crumb"));
}

TEST(Wrapped, NeverHangsOnNoRoom) {
    const test::FixedMeasure measure(tenHigh());
    EXPECT_THAT(measure.wrapped(role, "abc", 1), ElementsAre("a", "b", "c"));
}

}  // namespace
}  // namespace rangeline
