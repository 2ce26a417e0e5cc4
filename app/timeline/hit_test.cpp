#include "timeline/hit_test.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rangeline {
namespace {

QRectF targetOf(const QRectF& rect, double leastTarget) {
    const double missing = std::max(0.0, leastTarget - rect.width()) / 2;
    return rect.adjusted(-missing, 0, missing, 0);
}

bool within(const QRectF& rect, QPointF point) {
    return rect.left() <= point.x() && point.x() < rect.right() && rect.top() <= point.y() &&
           point.y() < rect.bottom();
}

}  // namespace

Hit hitTest(const TimelineLayout& layout, QPointF point, double leastTarget) {
    Hit hit{-1, -1, layout.scale.timeAt(point.x())};
    const auto lane = std::ranges::find_if(layout.lanes, [&](const LaneBox& box) {
        return box.top <= point.y() && point.y() < box.bottom();
    });
    if (lane != layout.lanes.end()) {
        hit.lane = lane->lane;
    }
    double nearest = std::numeric_limits<double>::max();
    for (const BlockBox& box : layout.blocks) {
        if (!within(targetOf(box.rect, leastTarget), point)) {
            continue;
        }
        // A point on the block itself beats one only near a narrow neighbour.
        const double beside = within(box.rect, point) ? 0 : leastTarget;
        const double distance = beside + std::abs(box.rect.center().x() - point.x());
        if (distance < nearest) {
            nearest = distance;
            hit.block = box.block;
        }
    }
    return hit;
}

}  // namespace rangeline
