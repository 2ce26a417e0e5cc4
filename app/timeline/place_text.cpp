#include "timeline/place_text.h"

namespace rangeline {

void addText(const TextMeasure& measure, Picture& out, Part part, int item, const TextShape& text,
             const QRectF& room) {
    if (text.text.isEmpty()) {
        return;
    }
    const double width = measure.width(text.font, text.text);
    const double height = measure.lineHeight(text.font);
    double left = room.left();
    if (text.align == Align::Centre) {
        left = room.center().x() - width / 2;
    } else if (text.align == Align::Right) {
        left = room.right() - width;
    }
    TextShape placed = text;
    placed.align = Align::Left;
    placed.box = QRectF(left, room.center().y() - height / 2, width, height);
    out.push_back({placed, part, item});
}

}  // namespace rangeline
