#include "window/progress_trace.h"

#include <gtest/gtest.h>

#include <QImage>

#include "window/progress_graph.h"

namespace rangeline {
namespace {

const QRectF area(0, 0, 100, 50);

ArrangeProgress known(double seconds, std::optional<std::int64_t> best, std::int64_t bound) {
    ArrangeProgress progress;
    progress.seconds = seconds;
    progress.aimBest = best;
    progress.aimBound = bound;
    return progress;
}

TEST(ProgressTrace, NothingIsDrawnBeforeTheAimHasAPlan) {
    ProgressTrace trace;
    trace.add(known(0.1, std::nullopt, -5));
    EXPECT_TRUE(trace.empty());
}

TEST(ProgressTrace, LinesRunFromTheFirstPlanToNowAndMeetWhenProved) {
    ProgressTrace trace;
    trace.add(known(1, 100, 0));
    trace.add(known(2, 60, 0));
    trace.add(known(3, 60, 60));
    const QPolygonF best = trace.bestIn(area, 5);
    const QPolygonF bound = trace.boundIn(area, 5);
    EXPECT_EQ(best.first(), QPointF(0, 50));
    EXPECT_EQ(best.last(), QPointF(100, 0));
    EXPECT_EQ(bound.last(), best.last());
}

TEST(ProgressTrace, ABoundFarBeyondStaysWithinThePicture) {
    ProgressTrace trace;
    trace.add(known(0, 100, -1'000'000'000));
    trace.add(known(1, 90, 50));
    for (const QPointF& point : trace.boundIn(area, 2)) {
        EXPECT_TRUE(area.adjusted(-0.001, -0.001, 0.001, 0.001).contains(point))
            << point.x() << ' ' << point.y();
    }
}

TEST(ProgressTrace, EachPlanIsHeldUntilTheNext) {
    ProgressTrace trace;
    trace.add(known(0, 100, 0));
    trace.add(known(1, 50, 0));
    const QPolygonF best = trace.bestIn(area, 2);
    ASSERT_EQ(best.size(), 4);
    EXPECT_EQ(best[1], QPointF(50, 50));
    EXPECT_EQ(best[2], QPointF(50, 25));
}

TEST(ProgressTrace, TheSameAgainAddsNothing) {
    ProgressTrace trace;
    trace.add(known(0, 100, 0));
    trace.add(known(1, 100, 0));
    EXPECT_EQ(trace.bestIn(area, 2).size(), 2);
}

TEST(ProgressGraph, SaysItsSentenceAndDrawsOnlyWithAPlan) {
    LessonDocument document;
    ProgressGraph graph(document, QLocale::c(), nullptr);
    graph.resize(graph.sizeHint());
    const QImage nothing = graph.grab().toImage();
    graph.add(known(1, 7200, 3600), QStringLiteral("The best plan so far"));
    EXPECT_EQ(graph.accessibleDescription(), QStringLiteral("The best plan so far"));
    EXPECT_NE(graph.grab().toImage(), nothing);
    graph.clear();
    EXPECT_TRUE(graph.accessibleDescription().isEmpty());
    EXPECT_EQ(graph.grab().toImage(), nothing);
}

}  // namespace
}  // namespace rangeline
