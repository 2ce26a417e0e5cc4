#include "print/station_timeline_sheet.h"

#include <gmock/gmock.h>

#include <set>

#include "print/print_lessons.h"

namespace rangeline {
namespace {

struct Case {
    int steps;
    bool disturbed;
    Paper paper;
};

std::ostream& operator<<(std::ostream& out, const Case& it) {
    return out << it.steps << " steps" << (it.disturbed ? ", disturbed" : "")
               << (it.paper == Paper::A4 ? ", A4" : ", Letter");
}

class StationTimeline : public ::testing::TestWithParam<Case> {
  protected:
    void SetUp() override {
        const Case& it = GetParam();
        prepared_ = it.disturbed ? test::disturbedLesson(it.steps) : test::placedLesson(it.steps);
        layout_.paper = it.paper;
        sheet_ = makeStationTimeline(prepared_->input(), {layout_});
    }

    std::unique_ptr<test::Prepared> prepared_;
    PageLayout layout_;
    SheetPages sheet_;
};

TEST_P(StationTimeline, NothingIsOutsideTheMargins) {
    const QRectF frame = layout_.frame().adjusted(-1, -1, 1, 1);
    for (const Picture& page : sheet_.pages) {
        for (const Primitive& primitive : page) {
            const QRectF ink = inkBounds(primitive);
            EXPECT_TRUE(frame.contains(ink))
                << "part " << static_cast<int>(primitive.part) << " item " << primitive.item
                << " at " << ink.left() << "," << ink.top() << " to " << ink.right() << ","
                << ink.bottom();
        }
    }
}

TEST_P(StationTimeline, TextsDoNotCoverEachOther) {
    constexpr double tolerance = 0.5;
    for (const Picture& page : sheet_.pages) {
        std::vector<const TextShape*> texts;
        for (const Primitive& primitive : page) {
            if (const auto* text = std::get_if<TextShape>(&primitive.shape)) {
                texts.push_back(text);
            }
        }
        for (std::size_t a = 0; a < texts.size(); ++a) {
            for (std::size_t b = 0; b < a; ++b) {
                const QRectF both = texts[a]->box.intersected(texts[b]->box);
                EXPECT_FALSE(both.width() > tolerance && both.height() > tolerance)
                    << texts[a]->text.toStdString() << " covers " << texts[b]->text.toStdString();
            }
        }
    }
}

TEST_P(StationTimeline, EveryPlacementIsNumberedInItsMainBlock) {
    std::set<QString> numbers;
    for (const Picture& page : sheet_.pages) {
        for (const Primitive& primitive : page) {
            const auto* text = std::get_if<TextShape>(&primitive.shape);
            if (text != nullptr && primitive.part == Part::MainBlock) {
                numbers.insert(text->text);
            }
        }
    }
    int placed = 0;
    for (int node = 0; node < prepared_->index().nodes(); ++node) {
        placed += prepared_->index().placed(node) ? 1 : 0;
    }
    for (int number = 1; number <= placed; ++number) {
        EXPECT_TRUE(numbers.contains(QString::number(number))) << number;
    }
}

TEST_P(StationTimeline, EveryPageHasAFoot) {
    int number = 0;
    for (const Picture& page : sheet_.pages) {
        const auto foot = QStringLiteral("Page %1 of %2").arg(++number).arg(sheet_.pages.size());
        const bool found = std::ranges::any_of(page, [&](const Primitive& primitive) {
            const auto* text = std::get_if<TextShape>(&primitive.shape);
            return text != nullptr && text->text == foot;
        });
        EXPECT_TRUE(found) << foot.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Lessons, StationTimeline,
                         ::testing::Values(Case{6, false, Paper::A4}, Case{20, false, Paper::A4},
                                           Case{20, true, Paper::Letter},
                                           Case{60, false, Paper::A4},
                                           Case{60, true, Paper::Letter}));

}  // namespace
}  // namespace rangeline
