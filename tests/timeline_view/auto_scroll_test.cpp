#include "timeline_view/auto_scroll.h"

#include <gtest/gtest.h>

namespace rangeline::test {
namespace {

constexpr QRect area(100, 50, 400, 300);

TEST(AutoScroll, RestsAwayFromTheEdges) {
    EXPECT_EQ(autoScrollStep(area, {300, 200}), QPoint(0, 0));
}

TEST(AutoScroll, GoesTowardsTheEdgeThatThePointerIsNear) {
    EXPECT_LT(autoScrollStep(area, {110, 200}).x(), 0);
    EXPECT_GT(autoScrollStep(area, {490, 200}).x(), 0);
    EXPECT_LT(autoScrollStep(area, {300, 55}).y(), 0);
    EXPECT_GT(autoScrollStep(area, {300, 345}).y(), 0);
}

TEST(AutoScroll, IsFasterFartherOutUpToALimit) {
    const int near = autoScrollStep(area, {490, 200}).x();
    const int far = autoScrollStep(area, {510, 200}).x();
    EXPECT_LT(near, far);
    EXPECT_EQ(autoScrollStep(area, {2000, 200}).x(), autoScrollStep(area, {9000, 200}).x());
}

TEST(AutoScroll, DoesNothingWhereThereIsNoRoom) {
    EXPECT_EQ(autoScrollStep({0, 0, 40, 40}, {1, 1}), QPoint(0, 0));
}

}  // namespace
}  // namespace rangeline::test
