#include "print/text_flow.h"

#include <gmock/gmock.h>

#include "timeline/fixed_measure.h"

namespace rangeline {
namespace {

/// Ten units high, so a letter is five wide and a line twelve high.
const TimelineStyle& tenHigh() {
    static const TimelineStyle style = [] {
        TimelineStyle made;
        made.fontSizes.fill(10);
        return made;
    }();
    return style;
}

class Flow : public ::testing::Test {
  protected:
    std::vector<QString> wordsOn(const Picture& page) const {
        std::vector<QString> words;
        for (const Primitive& primitive : page) {
            if (const auto* text = std::get_if<TextShape>(&primitive.shape)) {
                words.push_back(text->text);
            }
        }
        return words;
    }

    const test::FixedMeasure measure_{tenHigh()};
    const QRectF body_{20, 30, 200, 100};
    TextFlow flow_{measure_, body_, [] { return Picture(); }};
};

TEST_F(Flow, NothingGivesNoPage) {
    EXPECT_TRUE(flow_.takePages().empty());
}

TEST_F(Flow, LongTablesGoOnWithTheirHead) {
    std::vector<std::vector<QString>> rows;
    for (int row = 0; row < 10; ++row) {
        rows.push_back({QString::number(row), "Stir"});
    }
    flow_.table({{"No.", 1}, {"What", 3}}, rows);
    const std::vector<Picture> pages = flow_.takePages();
    // A head is 14.5 high and a row 17: five of them on a page of 100.
    ASSERT_EQ(pages.size(), 2U);
    for (const Picture& page : pages) {
        EXPECT_EQ(wordsOn(page).front(), "No.");
        EXPECT_EQ(wordsOn(page).size(), 12U);
    }
}

TEST_F(Flow, RowsStayWholeAndInside) {
    flow_.table({{"What", 1}}, {{"stir until the sauce coats a spoon and stays there, then wait a "
                                 "little and taste it"},
                                {"then serve the sauce with the roots and the greens, and taste "
                                 "all of it again"}});
    for (const Picture& page : flow_.takePages()) {
        for (const Primitive& primitive : page) {
            EXPECT_TRUE(body_.adjusted(-1, -1, 1, 1).contains(inkBounds(primitive)));
        }
    }
}

TEST_F(Flow, AHeadingIsNotLeftAlone) {
    for (int line = 0; line < 6; ++line) {
        flow_.paragraph("line");
    }
    flow_.heading("Cautions");
    flow_.paragraph("Mind the steam.");
    const std::vector<Picture> pages = flow_.takePages();
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_THAT(wordsOn(pages[1]), ::testing::ElementsAre("Cautions", "Mind the steam."));
}

}  // namespace
}  // namespace rangeline
