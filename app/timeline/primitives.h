#pragma once
// What a picture consists of, as values that tests can look at. Colours and fonts are named by
// their role; a player (primitives_qt.h) turns roles into real ones for a screen or for paper.

#include <QPointF>
#include <QRectF>
#include <QString>
#include <cstdint>
#include <variant>
#include <vector>

namespace rangeline {

enum class Colour : std::uint8_t {
    None,
    Paper,     ///< the ground
    LaneBand,  ///< every other lane
    HeadBand,  ///< ground of the lane heads and the axis
    Grid,
    GridStrong,
    Ink,
    InkSoft,  ///< text of less weight
    OvenFill,
    BurnerFill,
    WareFill,
    CookFill,
    PoolFill,
    PaleFill,  ///< blocks of less weight: waiting, washing, warming up
    Outline,   ///< edge of a block
    Heavy,     ///< edge of what decides plating
    Collision,
    Serving,
    Temperature,
    Selection,
    Reach  ///< minutes to spare of the selected step
};
inline constexpr int colourCount = static_cast<int>(Colour::Reach) + 1;

enum class FontRole : std::uint8_t {
    Title,
    Heading,
    Body,
    BodyStrong,
    LaneName,
    Block,
    BlockStrong,
    Axis,
    Small
};
inline constexpr int fontRoleCount = static_cast<int>(FontRole::Small) + 1;

enum class Pattern : std::uint8_t {
    None,
    Hatch,  ///< slanting lines: a collision
    Dots,   ///< waiting: taken, but nobody works on it
    Levels  ///< level lines: the oven is warming up or changing over
};

enum class Stroke : std::uint8_t { Solid, Dashed, Dotted };

struct BoxShape {
    QRectF rect;
    Colour fill = Colour::None;
    Pattern pattern = Pattern::None;
    Colour patternColour = Colour::None;
    Colour outline = Colour::None;
    double outlineWidth = 1;  ///< drawn inside the rect
    Stroke stroke = Stroke::Solid;
    double radius = 0;
};

/// An ellipse that fills its rect: burners and round vessels seen from above.
struct RoundShape {
    QRectF rect;
    Colour fill = Colour::None;
    Colour outline = Colour::None;
    double outlineWidth = 1;  ///< drawn inside the rect
    Stroke stroke = Stroke::Solid;
};

struct LineShape {
    QPointF from;
    QPointF to;
    Colour colour = Colour::Ink;
    double width = 1;
    Stroke stroke = Stroke::Solid;
};

enum class Align : std::uint8_t { Left, Centre, Right };

/// One line of text, cut to length already. It is centred on the box's height.
struct TextShape {
    QString text;
    QRectF box;
    FontRole font = FontRole::Body;
    Colour colour = Colour::Ink;
    Align align = Align::Left;
};

enum class Mark : std::uint8_t {
    Pin,            ///< a round head on a needle
    Event,          ///< a diamond: something that takes no time
    Warning,        ///< a triangle with a stroke in it: a collision
    ContinuesLeft,  ///< the block goes on beyond the edge
    ContinuesRight
};

struct MarkShape {
    Mark mark = Mark::Pin;
    QRectF box;
    Colour colour = Colour::Ink;
};

/// What a primitive is there for, so that tests and readers of the list can find it.
enum class Part : std::uint8_t {
    Ground,
    LaneHead,
    Axis,
    GridLine,
    OvenLine,
    MainBlock,
    EchoBlock,
    Serving,
    Overlay,
    Page,
    Legend
};

struct Primitive {
    std::variant<BoxShape, RoundShape, LineShape, TextShape, MarkShape> shape;
    Part part = Part::Page;
    int item = -1;  ///< index of the block or lane it belongs to, or -1
};

using Picture = std::vector<Primitive>;

/// The rectangle that a primitive may leave ink in.
QRectF inkBounds(const Primitive& primitive);

}  // namespace rangeline
