#pragma once
// The picture of the range from above and of its ovens from the front, in primitives.

#include <QRectF>
#include <vector>

#include "range/range_scene.h"
#include "timeline/primitives.h"
#include "timeline/text_measure.h"

namespace rangeline {

struct RangePicture {
    Picture picture;
    /// Where a step can be pointed at.
    std::vector<std::pair<QRectF, PlacementKey>> targets;
};

/// Fills the frame: side by side where it is wide, else the range above the ovens.
RangePicture paintRange(const RangeScene& scene, const QRectF& frame, const TextMeasure& measure);

}  // namespace rangeline
