#include "timeline/hit_test.h"

#include <gtest/gtest.h>

#include "timeline/sample_timeline.h"

namespace rangeline {
namespace {

constexpr double leastTarget = 24;  // WCAG 2.2 SC 2.5.8

class HitTest : public ::testing::Test {
  protected:
    TimelineLayout layoutAt(double perMinute) const {
        return layOut(model_, TimelineStyle::screen(),
                      {{0, 0},
                       perMinute,
                       1.0,
                       {Instant::atMinutes(-60), Instant::atMinutes(10)},
                       allLanes(model_)});
    }
    static QRectF rectOf(const TimelineLayout& layout, int block) {
        for (const BlockBox& box : layout.blocks) {
            if (box.block == block) {
                return box.rect;
            }
        }
        return {};
    }

    TimelineModel model_ = test::sampleTimeline();
};

TEST_F(HitTest, MiddleOfEveryBlock) {
    const TimelineLayout layout = layoutAt(10);
    for (const BlockBox& box : layout.blocks) {
        const TimelineBlock& block = model_.blocks[static_cast<std::size_t>(box.block)];
        if (!block.interval.empty()) {
            const Hit hit = hitTest(layout, box.rect.center() + QPointF(2, 0), leastTarget);
            EXPECT_EQ(hit.block, box.block);
            EXPECT_EQ(hit.lane, block.lane);
        }
    }
}

TEST_F(HitTest, EdgesAreHalfOpen) {
    const TimelineLayout layout = layoutAt(10);
    const QRectF roast = rectOf(layout, 0);
    EXPECT_EQ(hitTest(layout, roast.topLeft(), leastTarget).block, 0);
    EXPECT_EQ(hitTest(layout, QPointF(roast.right(), roast.center().y()), leastTarget).block, -1);
}

TEST_F(HitTest, EmptyPlaceGivesLaneAndTime) {
    const TimelineLayout layout = layoutAt(10);
    const double y = layout.lanes[test::rackLane].top + 5;
    const Hit hit = hitTest(layout, {layout.scale.xOf(Instant::atMinutes(-10)), y}, leastTarget);
    EXPECT_EQ(hit.block, -1);
    EXPECT_EQ(hit.lane, test::rackLane);
    EXPECT_EQ(hit.at, Instant::atMinutes(-10));
}

TEST_F(HitTest, AboveTheLanesNothing) {
    const Hit hit = hitTest(layoutAt(10), {200, 1}, leastTarget);
    EXPECT_EQ(hit.lane, -1);
    EXPECT_EQ(hit.block, -1);
}

TEST_F(HitTest, NarrowBlocksAreMetAsWideAsATarget) {
    const TimelineLayout layout = layoutAt(0.5);
    const QRectF glaze = rectOf(layout, 3);
    ASSERT_LT(glaze.width(), leastTarget);
    EXPECT_EQ(hitTest(layout, glaze.center() + QPointF(11, 0), leastTarget).block, 3);
    EXPECT_EQ(hitTest(layout, glaze.center() + QPointF(13, 0), leastTarget).block, -1);
}

TEST_F(HitTest, TheBlockItselfBeatsANarrowNeighbour) {
    model_.blocks[3].interval = {Instant::atMinutes(-20), Instant::atMinutes(-19)};
    const TimelineLayout layout = layoutAt(4);
    const QRectF sear = rectOf(layout, 2);
    const Hit hit = hitTest(layout, {sear.right() - 1, sear.center().y()}, leastTarget);
    EXPECT_EQ(hit.block, 2);
}

}  // namespace
}  // namespace rangeline
