#include "print/station_timeline_sheet.h"

#include <gtest/gtest.h>

#include <set>

#include "print/page_rules.h"
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

TEST_P(StationTimeline, KeepsThePageInOrder) {
    test::expectGoodPages(sheet_, layout_);
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

INSTANTIATE_TEST_SUITE_P(Lessons, StationTimeline,
                         ::testing::Values(Case{6, false, Paper::A4}, Case{20, false, Paper::A4},
                                           Case{20, true, Paper::Letter},
                                           Case{60, false, Paper::A4},
                                           Case{60, true, Paper::Letter}));

}  // namespace
}  // namespace rangeline
