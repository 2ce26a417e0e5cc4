#include "timeline_view/auto_scroll.h"

#include <algorithm>

namespace rangeline {
namespace {

constexpr int margin = 28;
constexpr int mostPerTick = 18;

int stepAlong(int low, int high, int at) {
    const int before = low + margin - at;
    const int after = at - (high - margin);
    if (before > 0) {
        return -std::clamp(before / 2, 1, mostPerTick);
    }
    return after > 0 ? std::clamp(after / 2, 1, mostPerTick) : 0;
}

}  // namespace

QPoint autoScrollStep(const QRect& area, const QPoint& pointer) {
    if (area.width() < 3 * margin || area.height() < 3 * margin) {
        return {};
    }
    return {stepAlong(area.left(), area.right(), pointer.x()),
            stepAlong(area.top(), area.bottom(), pointer.y())};
}

}  // namespace rangeline
