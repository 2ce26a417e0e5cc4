#pragma once
// Where everything lies: shared by the painter, the hit test and, later, accessibility.

#include <QRectF>
#include <vector>

#include "timeline/time_scale.h"
#include "timeline/timeline_model.h"
#include "timeline/timeline_style.h"

namespace rangeline {

struct LayoutRequest {
    QPointF origin;  ///< top left corner of the whole picture
    double unitsPerMinute = 4;
    double deviceScale = 1;  ///< device pixels in a unit
    Interval window;         ///< the time shown
    std::vector<int> lanes;  ///< the lanes shown, ascending
};

struct SectionBox {
    int section = 0;
    double top = 0;
};

struct LaneBox {
    int lane = 0;
    double top = 0;
    double height = 0;
    int rows = 1;  ///< more than one where blocks would cover each other

    double bottom() const { return top + height; }
};

struct BlockBox {
    int block = 0;
    QRectF rect;           ///< no width for something that takes no time
    double freeRight = 0;  ///< the row is empty from the rect up to here; no further than a serving
    bool cutLeft = false;  ///< goes on beyond the window
    bool cutRight = false;
};

struct TimelineLayout {
    TimeScale scale;
    Interval window;
    QRectF bounds;  ///< all of it
    QRectF axis;    ///< clock and minutes rows, right of the heads
    QRectF heads;   ///< lane names
    QRectF plot;    ///< the lanes; blocks stay inside
    std::vector<SectionBox> sections;
    std::vector<LaneBox> lanes;    ///< from top to bottom
    std::vector<BlockBox> blocks;  ///< those that the window meets, by lane and start
};

TimelineLayout layOut(const TimelineModel& model, const TimelineStyle& style,
                      const LayoutRequest& request);

/// All lanes, or only those that hold a block or an oven's temperature.
std::vector<int> allLanes(const TimelineModel& model);
std::vector<int> usedLanes(const TimelineModel& model);

}  // namespace rangeline
