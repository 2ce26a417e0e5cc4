#include "timeline/primitives_qt.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <cmath>

namespace rangeline {
namespace {

bool isStrong(FontRole role) {
    return role == FontRole::Title || role == FontRole::Heading || role == FontRole::BodyStrong ||
           role == FontRole::BlockStrong;
}

class Player {
  public:
    Player(QPainter& painter, const Palette& palette, const QtFonts& fonts)
        : painter_(painter), palette_(palette), fonts_(fonts), scale_(fonts.scale()) {
        // Each text runs as its own letters do, whatever the direction of the window around it.
        painter_.setLayoutDirection(Qt::LayoutDirectionAuto);
    }

    void operator()(const BoxShape& box) {
        const QRectF rect = scaled(box.rect);
        if (box.fill != Colour::None) {
            painter_.fillRect(rect, colour(box.fill));
        }
        if (box.pattern != Pattern::None) {
            paintPattern(rect, box.pattern, colour(box.patternColour));
        }
        if (box.outline != Colour::None) {
            paintOutline(rect, box);
        }
    }

    void operator()(const RoundShape& round) {
        const double inset = round.outline == Colour::None ? 0 : round.outlineWidth * scale_ / 2;
        painter_.setPen(inset == 0 ? QPen(Qt::NoPen)
                                   : pen(round.outline, round.outlineWidth, round.stroke));
        painter_.setBrush(round.fill == Colour::None ? QBrush() : QBrush(colour(round.fill)));
        painter_.setRenderHint(QPainter::Antialiasing, true);
        painter_.drawEllipse(scaled(round.rect).adjusted(inset, inset, -inset, -inset));
        painter_.setRenderHint(QPainter::Antialiasing, false);
        painter_.setBrush(Qt::NoBrush);
    }

    void operator()(const LineShape& line) {
        const bool straight = line.from.x() == line.to.x() || line.from.y() == line.to.y();
        if (straight && line.stroke == Stroke::Solid) {
            fillLine(line);
            return;
        }
        painter_.setPen(pen(line.colour, line.width, line.stroke));
        painter_.drawLine(line.from * scale_, line.to * scale_);
    }

    void operator()(const TextShape& text) {
        painter_.setFont(fonts_.font(text.font));
        painter_.setPen(colour(text.colour));
        const QPointF base(text.box.left(), text.box.top() + fonts_.ascent(text.font));
        painter_.drawText(base * scale_, text.text);
    }

    void operator()(const MarkShape& mark) {
        const QRectF box = scaled(mark.box);
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(colour(mark.colour));
        painter_.setRenderHint(QPainter::Antialiasing, true);
        paintMark(mark.mark, box);
        painter_.setRenderHint(QPainter::Antialiasing, false);
        painter_.setBrush(Qt::NoBrush);
    }

  private:
    QRectF scaled(const QRectF& rect) const {
        return {rect.topLeft() * scale_, rect.size() * scale_};
    }

    QColor colour(Colour role) const { return QColor::fromRgba(palette_[role]); }

    QPen pen(Colour role, double width, Stroke stroke) const {
        QPen result(colour(role), width * scale_);
        result.setCapStyle(Qt::FlatCap);
        result.setJoinStyle(Qt::MiterJoin);
        if (stroke == Stroke::Dashed) {
            result.setDashPattern({4, 3});
        } else if (stroke == Stroke::Dotted) {
            result.setDashPattern({1, 2});
        }
        return result;
    }

    /// Filling is several times as fast as stroking, and there are many lines of the grid. At least
    /// one pixel wide, as a stroke is.
    void fillLine(const LineShape& line) {
        const double half = std::max(line.width * scale_, pixel()) / 2;
        QRectF rect = QRectF(line.from * scale_, line.to * scale_).normalized();
        rect.adjust(rect.width() == 0 ? -half : 0, rect.height() == 0 ? -half : 0,
                    rect.width() == 0 ? half : 0, rect.height() == 0 ? half : 0);
        painter_.fillRect(rect, colour(line.colour));
    }

    /// Inside the rectangle's edges.
    void fillFrame(const QRectF& rect, double width, const QColor& colour) {
        painter_.fillRect(QRectF(rect.left(), rect.top(), rect.width(), width), colour);
        painter_.fillRect(QRectF(rect.left(), rect.bottom() - width, rect.width(), width), colour);
        painter_.fillRect(QRectF(rect.left(), rect.top(), width, rect.height()), colour);
        painter_.fillRect(QRectF(rect.right() - width, rect.top(), width, rect.height()), colour);
    }

    double pixel() const { return 1 / painter_.device()->devicePixelRatio(); }

    void paintOutline(const QRectF& rect, const BoxShape& box) {
        const double width = std::min(box.outlineWidth * scale_, rect.width() / 2);
        if (box.stroke == Stroke::Solid) {
            fillFrame(rect, std::max(width, pixel()), colour(box.outline));
            return;
        }
        painter_.setPen(pen(box.outline, width / scale_, box.stroke));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawRect(rect.adjusted(width / 2, width / 2, -width / 2, -width / 2));
    }

    void paintPattern(const QRectF& rect, Pattern pattern, const QColor& colour) {
        painter_.save();
        painter_.setClipRect(rect, Qt::IntersectClip);
        const double step = (pattern == Pattern::Hatch ? hatchStep : patternStep) * scale_;
        painter_.setPen(QPen(colour, patternLine * scale_));
        if (pattern == Pattern::Hatch) {
            paintHatch(rect, step);
        } else if (pattern == Pattern::Levels) {
            for (double y = rect.top() + step / 2; y < rect.bottom(); y += step) {
                painter_.drawLine(QPointF(rect.left(), y), QPointF(rect.right(), y));
            }
        } else {
            paintDots(rect, step);
        }
        painter_.restore();
    }

    /// Lines start on a grid of their own, so neighbouring hatched blocks line up.
    void paintHatch(const QRectF& rect, double step) {
        const double first = std::floor((rect.left() - rect.height()) / step) * step;
        for (double x = first; x < rect.right(); x += step) {
            painter_.drawLine(QPointF(x, rect.bottom()), QPointF(x + rect.height(), rect.top()));
        }
    }

    void paintDots(const QRectF& rect, double step) {
        QPen dots = painter_.pen();
        dots.setWidthF(1.6 * patternLine * scale_);
        dots.setCapStyle(Qt::SquareCap);
        painter_.setPen(dots);
        QList<QPointF> points;
        for (double y = rect.top() + step / 2; y < rect.bottom(); y += step) {
            for (double x = std::ceil(rect.left() / step) * step; x < rect.right(); x += step) {
                points.append({x, y});
            }
        }
        painter_.drawPoints(points.data(), static_cast<int>(points.size()));
    }

    void paintMark(Mark mark, const QRectF& box) {
        const auto at = [&](double x, double y) {
            return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
        };
        switch (mark) {
            case Mark::Pin:
                painter_.drawEllipse(QRectF(at(0.2, 0), at(0.8, 0.6)));
                painter_.drawPolygon(QPolygonF({at(0.4, 0.5), at(0.6, 0.5), at(0.5, 1)}));
                return;
            case Mark::Event:
                painter_.drawPolygon(QPolygonF({at(0.5, 0), at(1, 0.5), at(0.5, 1), at(0, 0.5)}));
                return;
            case Mark::Warning:
                painter_.drawPolygon(QPolygonF({at(0.5, 0), at(1, 1), at(0, 1)}));
                painter_.setBrush(colour(Colour::Paper));
                painter_.drawRect(QRectF(at(0.44, 0.35), at(0.56, 0.7)));
                painter_.drawRect(QRectF(at(0.44, 0.78), at(0.56, 0.9)));
                return;
            case Mark::ContinuesLeft:
                painter_.drawPolygon(QPolygonF({at(0.7, 0.1), at(0.7, 0.9), at(0.1, 0.5)}));
                return;
            case Mark::ContinuesRight:
                painter_.drawPolygon(QPolygonF({at(0.3, 0.1), at(0.3, 0.9), at(0.9, 0.5)}));
                return;
        }
    }

    static constexpr double patternStep = 5;
    static constexpr double hatchStep = 7;
    static constexpr double patternLine = 0.6;

    QPainter& painter_;
    const Palette& palette_;
    const QtFonts& fonts_;
    double scale_;
};

}  // namespace

QtFonts::QtFonts(const TimelineStyle& style, double scale) : scale_(scale) {
    for (int role = 0; role < fontRoleCount; ++role) {
        const auto index = static_cast<std::size_t>(role);
        QFont font = QGuiApplication::font();
        font.setPixelSize(std::max(1, qRound(style.fontSizes[index] * scale)));
        font.setBold(isStrong(static_cast<FontRole>(role)));
        font.setHintingPreference(QFont::PreferNoHinting);
        const QFontMetricsF metrics(font);
        heights_[index] = metrics.height() / scale;
        ascents_[index] = metrics.ascent() / scale;
        fonts_[index] = font;
    }
}

double QtFonts::lineHeight(FontRole font) const {
    return heights_[static_cast<std::size_t>(font)];
}

double QtFonts::measure(FontRole font, const QString& text) const {
    return QFontMetricsF(fonts_[static_cast<std::size_t>(font)]).horizontalAdvance(text) / scale_;
}

void play(const Picture& picture, QPainter& painter, const Palette& palette, const QtFonts& fonts) {
    Player player(painter, palette, fonts);
    for (const Primitive& primitive : picture) {
        std::visit(player, primitive.shape);
    }
}

}  // namespace rangeline
