#pragma once

#include "timeline/primitives.h"
#include "timeline/text_measure.h"
#include "timeline/timeline_style.h"

namespace rangeline {

/// What the looks of blocks mean, in rows inside `width` from `at` on. Returns the height used;
/// with `page` null nothing is painted.
double addLegend(const TextMeasure& measure, const TimelineStyle& style, QPointF at, double width,
                 Picture* page);

}  // namespace rangeline
