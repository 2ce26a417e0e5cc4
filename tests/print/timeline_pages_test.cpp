#include "print/timeline_pages.h"

#include <gmock/gmock.h>

#include "timeline/sample_timeline.h"

namespace rangeline {
namespace {

using ::testing::ElementsAre;

constexpr QSizeF body(770, 420);

TimelineModel lasting(std::int64_t minutes) {
    TimelineModel model = test::sampleTimeline();
    model.span.begin = Instant::atMinutes(-minutes);
    model.blocks.front().interval.begin = model.span.begin;
    return model;
}

std::vector<TimelinePage> split(const TimelineModel& model, const TimelineStyle& style,
                                const QSizeF& room) {
    return splitTimeline(model, style, room, usedLanes(model));
}

TEST(TimelinePages, AShortLessonIsOnePage) {
    const auto pages = split(lasting(120), TimelineStyle::paper(), body);
    ASSERT_EQ(pages.size(), 1U);
    EXPECT_LE(pages[0].window.begin, Instant::atMinutes(-120));
    EXPECT_GT(pages[0].window.end, Instant::serving());
    EXPECT_EQ(pages[0].lanes.size(), 5U);
}

TEST(TimelinePages, ALongLessonGoesOnOnQuarterHours) {
    TimelineModel model = lasting(437);
    model.servingClock = Duration::hours(18) + Duration::minutes(37);
    const auto pages = split(model, TimelineStyle::paper(), body);
    ASSERT_GT(pages.size(), 1U);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const Duration clock = pages[i].window.begin - Instant::serving() + model.servingClock;
        EXPECT_EQ(clock.inSeconds() % 900, 0);
        EXPECT_EQ(pages[i].window.length(), pages[0].window.length());
        EXPECT_EQ(pages[i].lanes, pages[0].lanes);
        if (i > 0) {
            EXPECT_EQ(pages[i].window.begin, pages[i - 1].window.end);
        }
    }
    EXPECT_LE(pages.front().window.begin, model.span.begin);
    EXPECT_GT(pages.back().window.end, model.span.end);
}

TEST(TimelinePages, FiveMinutesHaveRoomForANumber) {
    const TimelineStyle& style = TimelineStyle::paper();
    for (const std::int64_t minutes : {30, 200, 437, 900}) {
        for (const TimelinePage& page : split(lasting(minutes), style, body)) {
            EXPECT_GE(page.unitsPerMinute * 5, style.numberRoom);
        }
    }
}

TEST(TimelinePages, TooManyLanesAreSplit) {
    const auto pages = split(lasting(60), TimelineStyle::paper(), {770, 120});
    std::vector<int> lanes;
    for (const TimelinePage& page : pages) {
        EXPECT_EQ(page.window, pages.front().window);
        lanes.insert(lanes.end(), page.lanes.begin(), page.lanes.end());
    }
    EXPECT_GT(pages.size(), 1U);
    EXPECT_THAT(lanes, ElementsAre(test::heatLane, test::rackLane, test::burnerLane, test::panLane,
                                   test::cookLane));
}

TEST(TimelinePages, AGroupThatWouldBeCutBeginsAPage) {
    TimelineModel model = lasting(60);
    model.sections[2].group = model.sections[3].group = 1;  // pans and cooks
    // Room for all but the cooks.
    const auto pages = split(model, TimelineStyle::paper(), {770, 170});
    ASSERT_EQ(pages.size(), 2U);
    EXPECT_THAT(pages[0].lanes, ElementsAre(test::heatLane, test::rackLane, test::burnerLane));
    EXPECT_THAT(pages[1].lanes, ElementsAre(test::panLane, test::cookLane));
}

TEST(TimelinePages, OnTheWallStandWhatIsHeatedAndTheCooks) {
    TimelineModel model = test::sampleTimeline();
    EXPECT_THAT(lanesOfHeatAndCooks(model),
                ElementsAre(test::heatLane, test::rackLane, test::burnerLane, test::panLane,
                            test::cookLane));
    // A bowl that goes into no oven and onto no burner.
    const int bowl = static_cast<int>(model.lanes.size());
    model.lanes.push_back(model.lanes[test::panLane]);
    model.items.push_back(model.items.front());
    model.blocks.push_back(model.blocks.front());
    model.blocks.back().item = static_cast<int>(model.items.size()) - 1;
    model.blocks.back().lane = bowl;
    EXPECT_THAT(lanesOfHeatAndCooks(model), testing::Not(testing::Contains(bowl)));
}

}  // namespace
}  // namespace rangeline
