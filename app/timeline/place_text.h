#pragma once

#include "timeline/primitives.h"
#include "timeline/text_measure.h"

namespace rangeline {

/// Adds a text whose box is as large as the text and centred in `room`'s height; the text's `align`
/// says which edge of the room (or its middle) it keeps to. Does nothing for an empty text.
void addText(const TextMeasure& measure, Picture& out, Part part, int item, const TextShape& text,
             const QRectF& room);

}  // namespace rangeline
