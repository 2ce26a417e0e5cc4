// Painting: the plot scrolls both ways, the heads only down, the ruler only along.

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>

#include "text/quantities.h"
#include "timeline/paint_help.h"
#include "timeline_view/timeline_view.h"

namespace rangeline {
namespace {

constexpr double reasonWidth = 300;
constexpr double beside = 16;

/// What lies outside need not be played.
Picture seenOf(const Picture& picture, const QRectF& exposed) {
    Picture seen;
    seen.reserve(picture.size());
    for (const Primitive& primitive : picture) {
        if (inkBounds(primitive).adjusted(-2, -2, 2, 2).intersects(exposed)) {
            seen.push_back(primitive);
        }
    }
    return seen;
}

}  // namespace

const Palette& TimelineView::colours() const {
    return palette().color(QPalette::Base).lightness() < 128 ? Palette::darkScreen()
                                                             : Palette::lightScreen();
}

void TimelineView::paintPart(QPainter& painter, const Picture& picture, const QRectF& clip,
                             const QPointF& shift) const {
    painter.save();
    painter.setClipRect(clip, Qt::IntersectClip);
    painter.translate(shift);
    play(seenOf(picture, clip.translated(-shift)), painter, colours(), *fonts_);
    painter.restore();
}

void TimelineView::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    painter.setClipRect(event->rect().adjusted(-2, -2, 2, 2));
    painter.fillRect(event->rect(), QColor::fromRgba(colours()[Colour::Paper]));
    const QRectF plot = plotArea();
    const QPointF at = offset();
    const PaintJob job{scene_.model(), scene_.layout(), style_, *fonts_};
    const QRectF exposed = plot.intersected(QRectF(event->rect())).translated(at);
    Picture picture;
    paintPlot(job, exposed, picture);
    paintOverlay(job, overlay(), picture);
    if (const int item = focusItem(); item >= 0 && hasFocus() && !proposal_) {
        paintFocus(job, scene_.mainBlockOf(item), picture);
    }
    paintPart(painter, picture, plot, -at);
    Picture heads;
    paintHeads(job, heads);
    paintPart(painter, heads, QRectF(0, plot.top(), plot.left(), plot.height()), {0, -at.y()});
    // Titles of sections may go on into the empty strip beside them.
    std::erase_if(heads, [](const Primitive& primitive) {
        return primitive.item >= 0 || !std::holds_alternative<TextShape>(primitive.shape);
    });
    paintPart(painter, heads, plot.adjusted(-plot.left(), 0, 0, 0), {0, -at.y()});
    Picture axis;
    paintAxis(job, axis);
    paintPart(painter, axis, QRectF(plot.left(), 0, plot.width(), plot.top()), {-at.x(), 0});
    std::erase_if(axis, [&](const Primitive& primitive) {
        return inkBounds(primitive).left() > 2 * style_.inset;
    });
    paintPart(painter, axis, QRectF(0, 0, plot.left(), plot.top()), {0, 0});
    painter.setPen(QColor::fromRgba(colours()[Colour::GridStrong]));
    painter.drawLine(QPointF(0, plot.top()), QPointF(plot.right(), plot.top()));
    painter.drawLine(plot.topLeft(), plot.bottomLeft());
    if (scene_.model().items.empty() && !proposal_) {
        paintEmpty(painter);
    }
    if (proposal_) {
        paintReasons(painter);
    }
}

/// A frame round the block that the keyboard is on, with ground around it so that it stands out
/// from every block.
void TimelineView::paintFocus(const PaintJob& job, int block, Picture& out) const {
    QRectF rect = scene_.rectOf(block);
    if (rect.width() < job.style.markSize) {
        const double more = (job.style.markSize - rect.width()) / 2;
        rect.adjust(-more, 0, more, 0);
    }
    BoxShape frame;
    frame.rect = rect.adjusted(-2, -1, 2, 1);
    frame.outline = Colour::Selection;
    frame.outlineWidth = 2;
    out.push_back({frame, Part::Overlay, block});
    frame.rect = rect.adjusted(1, 2, -1, -2);
    frame.outline = Colour::Paper;
    frame.outlineWidth = 1.5;
    out.push_back({frame, Part::Overlay, block});
}

/// When it would start and what speaks against it, beside the pointer.
void TimelineView::paintReasons(QPainter& painter) const {
    const Clock clock(document_.text(locale()));
    std::vector<QString> lines;
    if (proposal_->removes) {
        lines.push_back(tr("Back to the shelf"));
    } else {
        lines.push_back(clock.span(look_.interval));
        if (proposal_->begun) {
            lines.push_back(tr("It has begun: only its end moves."));
        } else if (proposal_->refused) {
            lines.push_back(tr("It does not go there: only its time changes."));
        }
    }
    for (const QString& note : look_.notes) {
        lines.push_back(fonts_->fitted(FontRole::Small, note, reasonWidth));
    }
    if (look_.more > 0) {
        lines.push_back(tr("and %1 more").arg(look_.more));
    }
    const double height = fonts_->lineHeight(FontRole::Small) + 2;
    double width = 0;
    for (const QString& line : lines) {
        const FontRole role = &line == &lines.front() ? FontRole::BlockStrong : FontRole::Small;
        width = std::max(width, fonts_->width(role, line));
    }
    const double pad = 2 * style_.inset;
    QRectF box(QPointF(0, 0),
               QSizeF(width + 2 * pad, height * static_cast<double>(lines.size()) + pad));
    box.moveTopLeft(reasonCorner(box.size()));
    BoxShape ground;
    ground.rect = box;
    ground.fill = Colour::Paper;
    ground.outline = look_.collides ? Colour::Collision : Colour::Selection;
    ground.outlineWidth = 2;
    Picture picture{{ground, Part::Overlay, -1}};
    QRectF row(box.left() + pad, box.top() + pad / 2, width, height);
    for (const QString& line : lines) {
        const bool first = &line == &lines.front();
        addText(*fonts_, picture, Part::Overlay, -1,
                {line, {}, first ? FontRole::BlockStrong : FontRole::Small, Colour::Ink}, row);
        row.translate(0, height);
    }
    play(picture, painter, colours(), *fonts_);
}

/// Below and right of the pointer, or of the ghost; inside the viewport, and not under the pointer.
QPointF TimelineView::reasonCorner(const QSizeF& size) const {
    const QRectF area = plotArea();
    QPointF at = area.center();
    if (proposal_->pointer) {
        at = *proposal_->pointer - offset();
    } else if (!look_.ghosts.empty()) {
        at.setX(scene_.layout().scale.xOf(look_.interval.begin) - offset().x());
        for (const LaneBox& lane : scene_.layout().lanes) {
            if (lane.lane == look_.ghosts.front().lane) {
                at.setY(lane.bottom() - offset().y());
            }
        }
    }
    QPointF corner = at + QPointF(beside, beside);
    if (corner.y() + size.height() > area.bottom()) {
        corner.setY(at.y() - beside - size.height());
    }
    corner.setX(
        std::clamp(corner.x(), area.left(), std::max(area.left(), area.right() - size.width())));
    corner.setY(std::max(corner.y(), area.top()));
    return corner;
}

/// In one band at the foot of the plot, over as few lanes as can be.
void TimelineView::paintEmpty(QPainter& painter) const {
    const QString text =
        document_.expanded().tasks.empty()
            ? tr("There is nothing to cook yet. Open a lesson, or add a dish.")
            : tr("Nothing is placed yet. Drag a component or a step from the shelf onto a burner "
                 "or an oven slot, or let everything be arranged.");
    constexpr double pad = 12;
    const QRectF plot = plotArea();
    painter.setFont(fonts_->font(FontRole::Body));
    const int how = static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap;
    const QRectF needed =
        painter.boundingRect(plot.adjusted(2 * pad, pad, -2 * pad, -pad), how, text);
    QRectF band(plot.left(), 0, plot.width(), needed.height() + 2 * pad);
    const double lanesEnd = scene_.layout().bounds.bottom() - offset().y();
    band.moveTop(std::min(plot.bottom() - band.height(), std::max(lanesEnd, plot.top())));
    painter.fillRect(band, QColor::fromRgba(colours()[Colour::HeadBand]));
    painter.setPen(QColor::fromRgba(colours()[Colour::Ink]));
    painter.drawText(band.adjusted(2 * pad, 0, -2 * pad, 0), how, text);
}

}  // namespace rangeline
