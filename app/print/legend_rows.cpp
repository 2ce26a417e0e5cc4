#include "print/legend_rows.h"

#include <algorithm>

#include "timeline/legend.h"
#include "timeline/place_text.h"

namespace rangeline {
namespace {

constexpr double swatchWidth = 17;
constexpr double swatchHeight = 8.5;
constexpr double textGap = 3.5;
constexpr double entryGap = 13;
constexpr double rowGap = 2;

}  // namespace

double addLegend(const TextMeasure& measure, const TimelineStyle& style, QPointF at, double width,
                 Picture* page) {
    const double height = std::max(measure.lineHeight(FontRole::Small), swatchHeight);
    double x = at.x();
    double y = at.y();
    for (const LegendEntry& entry : looksOfBlocks()) {
        const QString text = entry.meaning();
        const double textWidth = measure.width(FontRole::Small, text);
        if (x > at.x() && x + swatchWidth + textGap + textWidth > at.x() + width) {
            x = at.x();
            y += height + rowGap;
        }
        if (page != nullptr) {
            entry.paint(style,
                        QRectF(x, y + (height - swatchHeight) / 2, swatchWidth, swatchHeight),
                        *page);
            addText(measure, *page, Part::Legend, -1, {text, {}, FontRole::Small, Colour::Ink},
                    QRectF(x + swatchWidth + textGap, y, textWidth, height));
        }
        x += swatchWidth + textGap + textWidth + entryGap;
    }
    return y + height - at.y();
}

}  // namespace rangeline
