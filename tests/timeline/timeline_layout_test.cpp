#include "timeline/timeline_layout.h"

#include <gmock/gmock.h>

#include "timeline/sample_timeline.h"

namespace rangeline {
namespace {

using ::testing::ElementsAre;

LayoutRequest request(const TimelineModel& model, double perMinute = 10) {
    return {
        {0, 0}, perMinute, 1.0, {Instant::atMinutes(-60), Instant::atMinutes(10)}, allLanes(model)};
}

const BlockBox* boxOf(const TimelineLayout& layout, int block) {
    for (const BlockBox& box : layout.blocks) {
        if (box.block == block) {
            return &box;
        }
    }
    return nullptr;
}

TEST(Layout, OverlappingBlocksStackInTheirLane) {
    const TimelineModel model = test::sampleTimeline();
    const TimelineLayout layout = layOut(model, TimelineStyle::screen(), request(model));
    EXPECT_EQ(layout.lanes[test::burnerLane].rows, 2);
    EXPECT_EQ(layout.lanes[test::rackLane].rows, 1);
    const BlockBox* sear = boxOf(layout, 2);
    const BlockBox* glaze = boxOf(layout, 3);
    ASSERT_TRUE(sear && glaze);
    EXPECT_FALSE(sear->rect.intersects(glaze->rect));
    EXPECT_DOUBLE_EQ(glaze->rect.top(), sear->rect.bottom());
}

TEST(Layout, BlocksThatTouchShareARow) {
    TimelineModel model = test::sampleTimeline();
    model.blocks[3].interval.begin = model.blocks[2].interval.end;
    const TimelineLayout layout = layOut(model, TimelineStyle::screen(), request(model));
    EXPECT_EQ(layout.lanes[test::burnerLane].rows, 1);
}

TEST(Layout, BlocksLieAtTheirTimes) {
    const TimelineModel model = test::sampleTimeline();
    const TimelineStyle& style = TimelineStyle::screen();
    const TimelineLayout layout = layOut(model, style, request(model));
    const BlockBox* roast = boxOf(layout, 0);
    ASSERT_TRUE(roast);
    EXPECT_DOUBLE_EQ(roast->rect.left(), style.headWidth);
    EXPECT_DOUBLE_EQ(roast->rect.width(), 400);
    EXPECT_FALSE(roast->cutLeft || roast->cutRight);
}

TEST(Layout, WindowCutsBlocksAndSaysSo) {
    const TimelineModel model = test::sampleTimeline();
    LayoutRequest cut = request(model);
    cut.window = {Instant::atMinutes(-50), Instant::atMinutes(-30)};
    const TimelineLayout layout = layOut(model, TimelineStyle::screen(), cut);
    const BlockBox* roast = boxOf(layout, 0);
    ASSERT_TRUE(roast);
    EXPECT_TRUE(roast->cutLeft && roast->cutRight);
    EXPECT_DOUBLE_EQ(roast->rect.width(), 200);
    EXPECT_EQ(boxOf(layout, 2), nullptr) << "begins when the window ends";
}

TEST(Layout, EveryBlockIsInsideItsLane) {
    const TimelineModel model = test::sampleTimeline();
    for (const auto* style : {&TimelineStyle::screen(), &TimelineStyle::paper()}) {
        const TimelineLayout layout = layOut(model, *style, request(model, 3));
        for (const BlockBox& box : layout.blocks) {
            const int lane = model.blocks[static_cast<std::size_t>(box.block)].lane;
            EXPECT_GE(box.rect.top(), layout.lanes[static_cast<std::size_t>(lane)].top);
            EXPECT_LE(box.rect.bottom(), layout.lanes[static_cast<std::size_t>(lane)].bottom());
            EXPECT_LE(box.rect.right(), layout.plot.right());
        }
        EXPECT_DOUBLE_EQ(layout.plot.bottom(), layout.lanes.back().bottom());
    }
}

TEST(Layout, NarrowBlocksOnPaperKeepRoomForTheirNumber) {
    TimelineModel model = test::sampleTimeline();
    model.blocks = {model.blocks[2], model.blocks[3]};
    model.blocks[0].interval = {Instant::atMinutes(-30), Instant::atMinutes(-29)};
    model.blocks[1].interval = {Instant::atMinutes(-29), Instant::atMinutes(-10)};
    EXPECT_EQ(
        layOut(model, TimelineStyle::screen(), request(model, 3)).lanes[test::burnerLane].rows, 1);
    EXPECT_EQ(layOut(model, TimelineStyle::paper(), request(model, 3)).lanes[test::burnerLane].rows,
              2);
}

TEST(Layout, FreeRoomEndsAtTheNextBlockOfTheRowOrAtServing) {
    const TimelineModel model = test::sampleTimeline();
    const TimelineLayout layout = layOut(model, TimelineStyle::screen(), request(model));
    const BlockBox* work = boxOf(layout, 1);
    const BlockBox* waiting = boxOf(layout, 7);
    ASSERT_TRUE(work && waiting);
    EXPECT_DOUBLE_EQ(work->freeRight, waiting->rect.left());
    EXPECT_DOUBLE_EQ(waiting->freeRight, layout.scale.xOf(Instant::serving()));
}

TEST(UsedLanes, EmptyOnesAreLeftOut) {
    TimelineModel model = test::sampleTimeline();
    std::erase_if(model.blocks, [](const TimelineBlock& b) { return b.lane == test::panLane; });
    EXPECT_THAT(usedLanes(model),
                ElementsAre(test::heatLane, test::rackLane, test::burnerLane, test::cookLane));
}

}  // namespace
}  // namespace rangeline
