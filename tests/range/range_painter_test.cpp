#include "range/range_painter.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "inspect/seen.h"
#include "timeline/fixed_measure.h"

namespace rangeline::test {
namespace {

class RangePainting : public ::testing::Test {
  protected:
    RangePicture paint(const QRectF& frame) const {
        return paintRange(seen_.at(minute(-22)), frame, FixedMeasure(TimelineStyle::screen()));
    }
    static std::vector<RoundShape> rounds(const RangePicture& painted) {
        std::vector<RoundShape> found;
        for (const Primitive& primitive : painted.picture) {
            if (const auto* round = std::get_if<RoundShape>(&primitive.shape)) {
                found.push_back(*round);
            }
        }
        return found;
    }

    Seen seen_{smallKitchen().lesson};
};

TEST_F(RangePainting, BurnersLieAsTheKitchenSays) {
    const RangePicture painted = paint({0, 0, 400, 500});
    ASSERT_EQ(painted.targets.size(), 2U);
    const QPointF front = painted.targets[0].first.center();
    const QPointF back = painted.targets[1].first.center();
    EXPECT_LT(front.x(), back.x());
    EXPECT_GT(front.y(), back.y());  // y grows downwards: the front is below
    EXPECT_EQ(painted.targets[0].second, PlacementKey(key("sear")));
}

TEST_F(RangePainting, VesselsAreToScale) {
    // Ring and pan of 280 mm, ring of 280 mm and pot of 140 mm.
    const auto all = rounds(paint({0, 0, 900, 1400}));
    ASSERT_EQ(all.size(), 4U);
    EXPECT_NEAR(all[1].rect.width() / all[0].rect.width(), 1.0, 0.01);
    EXPECT_NEAR(all[3].rect.width() / all[2].rect.width(), 0.5, 0.01);
}

TEST_F(RangePainting, NothingIsPaintedOutsideTheFrame) {
    for (const QSizeF size : {QSizeF(200, 180), QSizeF(300, 330), QSizeF(900, 300)}) {
        const QRectF frame(QPointF(10, 20), size);
        for (const Primitive& primitive : paint(frame).picture) {
            const QRectF ink = inkBounds(primitive);
            EXPECT_TRUE(frame.adjusted(-1, -1, 1, 1).contains(ink))
                << size.width() << "x" << size.height() << ": " << ink.left() << ' ' << ink.top()
                << ' ' << ink.width() << ' ' << ink.height();
        }
    }
}

TEST_F(RangePainting, AFreeBurnerIsDrawnOtherwise) {
    const RangePicture painted =
        paintRange(seen_.at(minute(-100)), {0, 0, 400, 500}, FixedMeasure(TimelineStyle::screen()));
    EXPECT_TRUE(painted.targets.empty());
    EXPECT_EQ(std::ranges::count(rounds(painted), Stroke::Dashed, &RoundShape::stroke), 2);
}

}  // namespace
}  // namespace rangeline::test
