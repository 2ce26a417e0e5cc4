#include "timeline/legend.h"

#include <QCoreApplication>
#include <array>

namespace rangeline {
namespace {

BoxShape block(const TimelineStyle& style, const QRectF& room, Colour fill) {
    BoxShape box;
    box.rect = room;
    box.fill = fill;
    box.outline = Colour::Outline;
    box.outlineWidth = style.thinLine;
    return box;
}

BoxShape patterned(const TimelineStyle& style, const QRectF& room, Pattern pattern,
                   Colour patternColour) {
    BoxShape box = block(style, room, Colour::PaleFill);
    box.pattern = pattern;
    box.patternColour = patternColour;
    return box;
}

void add(Picture& out, const BoxShape& box) {
    out.push_back({box, Part::Legend});
}

void paintMark(Mark mark, Colour colour, const TimelineStyle& style, const QRectF& room,
               Picture& out) {
    QRectF box(0, 0, style.markSize, style.markSize);
    box.moveCenter(room.center());
    out.push_back({MarkShape{mark, box, colour}, Part::Legend});
}

template <Colour fill>
void paintFilled(const TimelineStyle& style, const QRectF& room, Picture& out) {
    add(out, block(style, room, fill));
}

/// A block with something of its own on it.
constexpr auto paintPlain = paintFilled<Colour::WareFill>;

/// From the left to the right of the room, with a head.
void paintLink(double width, Stroke stroke, const TimelineStyle& style, const QRectF& room,
               Picture& out) {
    const double size = style.markSize * 0.8;
    const double y = room.center().y();
    const double end = room.right() - size;
    out.push_back({LineShape{{room.left() + width, y}, {end, y}, Colour::Selection, width, stroke},
                   Part::Legend});
    out.push_back(
        {MarkShape{Mark::ContinuesRight, QRectF(end, y - size / 2, size, size), Colour::Selection},
         Part::Legend});
}

constexpr std::array<LegendEntry, 5> colours = {
    LegendEntry{QT_TRANSLATE_NOOP("Legend", "in the oven"), paintFilled<Colour::OvenFill>},
    {QT_TRANSLATE_NOOP("Legend", "on a burner"), paintFilled<Colour::BurnerFill>},
    {QT_TRANSLATE_NOOP("Legend", "a pan, board or bowl in use"), paintFilled<Colour::WareFill>},
    {QT_TRANSLATE_NOOP("Legend", "a cook’s hands"), paintFilled<Colour::CookFill>},
    {QT_TRANSLATE_NOOP("Legend", "at the sink, counter or on a shelf"),
     paintFilled<Colour::PoolFill>}};

constexpr std::array<LegendEntry, 7> blocks = {
    LegendEntry{QT_TRANSLATE_NOOP("Legend", "the step, and hands at work"), paintPlain},
    {QT_TRANSLATE_NOOP("Legend", "also taken, or washed"), paintFilled<Colour::PaleFill>},
    {QT_TRANSLATE_NOOP("Legend", "watching"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         BoxShape box = block(style, room, Colour::PaleFill);
         box.stroke = Stroke::Dashed;
         add(out, box);
     }},
    {QT_TRANSLATE_NOOP("Legend", "waiting"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         BoxShape box = patterned(style, room, Pattern::Dots, Colour::Outline);
         box.stroke = Stroke::Dotted;
         add(out, box);
     }},
    {QT_TRANSLATE_NOOP("Legend", "oven changes its heat"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         add(out, patterned(style, room, Pattern::Levels, Colour::GridStrong));
     }},
    {QT_TRANSLATE_NOOP("Legend", "decides plating"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         BoxShape box = block(style, room, Colour::WareFill);
         box.outline = Colour::Heavy;
         box.outlineWidth = style.heavyLine;
         add(out, box);
     }},
    {QT_TRANSLATE_NOOP("Legend", "collision"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         BoxShape box = patterned(style, room, Pattern::Hatch, Colour::Collision);
         box.fill = Colour::WareFill;
         add(out, box);
     }}};

constexpr std::array<LegendEntry, 9> marks = {
    LegendEntry{QT_TRANSLATE_NOOP("Legend", "pinned: stays where it is when the rest is arranged"),
                [](const TimelineStyle& style, const QRectF& room, Picture& out) {
                    paintPlain(style, room, out);
                    paintMark(Mark::Pin, Colour::Ink, style, room, out);
                }},
    {QT_TRANSLATE_NOOP("Legend", "has begun"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         paintPlain(style, room, out);
         BoxShape bar;
         bar.rect = QRectF(room.left(), room.top(), 1.5 * style.heavyLine, room.height());
         bar.fill = Colour::Heavy;
         add(out, bar);
     }},
    {QT_TRANSLATE_NOOP("Legend", "collides: the findings say why"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         paintMark(Mark::Warning, Colour::Collision, style, room, out);
     }},
    {QT_TRANSLATE_NOOP("Legend", "takes no time"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         paintMark(Mark::Event, Colour::Ink, style, room, out);
     }},
    {QT_TRANSLATE_NOOP("Legend", "goes on beyond the edge"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         paintPlain(style, room, out);
         paintMark(Mark::ContinuesRight, Colour::Ink, style, room, out);
     }},
    {QT_TRANSLATE_NOOP("Legend", "minutes that the chosen step has to spare"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         BoxShape bar;
         bar.rect = QRectF(room.left(), room.center().y() - style.heavyLine / 2, room.width(),
                           style.heavyLine);
         bar.fill = Colour::Reach;
         add(out, bar);
     }},
    {QT_TRANSLATE_NOOP("Legend", "what the chosen step waits for, or what waits for it"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         paintLink(style.thinLine * 1.5, Stroke::Dashed, style, room, out);
     }},
    {QT_TRANSLATE_NOOP("Legend", "the wait that keeps the chosen step from moving later"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         paintLink(style.heavyLine, Stroke::Solid, style, room, out);
     }},
    {QT_TRANSLATE_NOOP("Legend", "heat that the oven is set to"),
     [](const TimelineStyle& style, const QRectF& room, Picture& out) {
         const double inset = 1.5 * style.heavyLine;
         out.push_back({LineShape{{room.left() + inset, room.bottom() - inset},
                                  {room.right() - inset, room.top() + inset},
                                  Colour::Temperature,
                                  style.heavyLine},
                        Part::Legend});
     }}};

}  // namespace

QString LegendEntry::meaning() const {
    return QCoreApplication::translate("Legend", text);
}

std::span<const LegendEntry> coloursOfBlocks() {
    return colours;
}

std::span<const LegendEntry> looksOfBlocks() {
    return blocks;
}

std::span<const LegendEntry> looksOfMarks() {
    return marks;
}

}  // namespace rangeline
