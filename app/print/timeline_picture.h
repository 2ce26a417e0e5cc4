#pragma once
// The station timeline as one picture, for other devices than paper.

#include "timeline/build_timeline.h"
#include "timeline/primitives.h"
#include "timeline/timeline_style.h"

namespace rangeline {

/// In points, from the top left corner.
struct TimelinePicture {
    QString title;
    TimelineStyle style;  ///< whose font sizes it was measured with
    QSizeF size;
    Picture picture;
};

/// The whole lesson from the first thing to the last, all lanes that are used, and what the looks
/// of blocks mean. As wide as it must be for three minutes to hold a number. Needs a
/// QGuiApplication, for the fonts.
TimelinePicture makeTimelinePicture(const TimelineInput& input);

}  // namespace rangeline
