#include "print/legend.h"

#include <QCoreApplication>
#include <array>

#include "timeline/place_text.h"

namespace rangeline {
namespace {

constexpr double swatchWidth = 17;
constexpr double swatchHeight = 8.5;
constexpr double textGap = 3.5;
constexpr double entryGap = 13;
constexpr double rowGap = 2;

BoxShape swatch(Colour fill, double width) {
    BoxShape box;
    box.fill = fill;
    box.outline = Colour::Outline;
    box.outlineWidth = width;
    return box;
}

struct Entry {
    const char* text;
    BoxShape box;
};

BoxShape dotted(const TimelineStyle& style) {
    BoxShape box = swatch(Colour::PaleFill, style.thinLine);
    box.pattern = Pattern::Dots;
    box.patternColour = Colour::Outline;
    box.stroke = Stroke::Dotted;
    return box;
}

std::array<Entry, 7> entries(const TimelineStyle& style) {
    BoxShape watching = swatch(Colour::PaleFill, style.thinLine);
    watching.stroke = Stroke::Dashed;
    BoxShape warming = swatch(Colour::PaleFill, style.thinLine);
    warming.pattern = Pattern::Levels;
    warming.patternColour = Colour::GridStrong;
    BoxShape deciding = swatch(Colour::WareFill, style.heavyLine);
    deciding.outline = Colour::Heavy;
    BoxShape collision = swatch(Colour::WareFill, style.thinLine);
    collision.pattern = Pattern::Hatch;
    collision.patternColour = Colour::Collision;
    return {Entry{QT_TRANSLATE_NOOP("Print", "the step, and hands at work"),
                  swatch(Colour::WareFill, style.thinLine)},
            Entry{QT_TRANSLATE_NOOP("Print", "also taken, or washed"),
                  swatch(Colour::PaleFill, style.thinLine)},
            Entry{QT_TRANSLATE_NOOP("Print", "watching"), watching},
            Entry{QT_TRANSLATE_NOOP("Print", "waiting"), dotted(style)},
            Entry{QT_TRANSLATE_NOOP("Print", "oven changes its heat"), warming},
            Entry{QT_TRANSLATE_NOOP("Print", "decides plating"), deciding},
            Entry{QT_TRANSLATE_NOOP("Print", "collision"), collision}};
}

}  // namespace

double addLegend(const TextMeasure& measure, const TimelineStyle& style, QPointF at, double width,
                 Picture* page) {
    const double height = std::max(measure.lineHeight(FontRole::Small), swatchHeight);
    double x = at.x();
    double y = at.y();
    for (Entry& entry : entries(style)) {
        const QString text = QCoreApplication::translate("Print", entry.text);
        const double textWidth = measure.width(FontRole::Small, text);
        if (x > at.x() && x + swatchWidth + textGap + textWidth > at.x() + width) {
            x = at.x();
            y += height + rowGap;
        }
        if (page != nullptr) {
            entry.box.rect = QRectF(x, y + (height - swatchHeight) / 2, swatchWidth, swatchHeight);
            page->push_back({entry.box, Part::Legend});
            addText(measure, *page, Part::Legend, -1, {text, {}, FontRole::Small, Colour::Ink},
                    QRectF(x + swatchWidth + textGap, y, textWidth, height));
        }
        x += swatchWidth + textGap + textWidth + entryGap;
    }
    return y + height - at.y();
}

}  // namespace rangeline
