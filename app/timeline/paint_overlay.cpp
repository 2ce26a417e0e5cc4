#include <algorithm>
#include <cmath>

#include "timeline/paint_help.h"

namespace rangeline {
namespace {

const TimelineBlock& blockOf(const PaintJob& job, const BlockBox& box) {
    return job.model.blocks[static_cast<std::size_t>(box.block)];
}

const BlockBox* mainBox(const PaintJob& job, int item) {
    const auto found = std::ranges::find_if(job.layout.blocks, [&](const BlockBox& box) {
        return blockOf(job, box).main && blockOf(job, box).item == item;
    });
    return found == job.layout.blocks.end() ? nullptr : &*found;
}

/// Rings around the blocks of these items.
void paintRings(const PaintJob& job, const std::vector<int>& items, const BoxShape& ring,
                Picture& out) {
    for (const BlockBox& box : job.layout.blocks) {
        if (std::ranges::find(items, blockOf(job, box).item) == items.end()) {
            continue;
        }
        BoxShape shape = ring;
        shape.rect = box.rect;
        if (shape.rect.width() < job.style.markSize) {
            const double more = (job.style.markSize - shape.rect.width()) / 2;
            shape.rect.adjust(-more, 0, more, 0);
        }
        out.push_back({shape, Part::Overlay, box.block});
    }
}

void paintSelection(const PaintJob& job, const TimelineOverlay& overlay, Picture& out) {
    BoxShape ring;
    ring.outline = Colour::Selection;
    ring.outlineWidth = job.style.thinLine * 2;
    ring.stroke = Stroke::Dashed;
    paintRings(job, overlay.related, ring, out);
    ring.outlineWidth = job.style.heavyLine;
    ring.stroke = Stroke::Solid;
    paintRings(job, overlay.selected, ring, out);
    ring.outline = Colour::Collision;
    ring.pattern = Pattern::Hatch;
    ring.patternColour = Colour::Collision;
    paintRings(job, overlay.clashing, ring, out);
}

void paintReach(const PaintJob& job, int item, Picture& out) {
    const TimelineItem& it = job.model.items[static_cast<std::size_t>(item)];
    for (const BlockBox& box : job.layout.blocks) {
        const TimelineBlock& block = job.model.blocks[static_cast<std::size_t>(box.block)];
        if (block.item != item || !block.main || it.spare <= Duration()) {
            continue;
        }
        const Interval reach =
            intersection({it.interval.end, it.interval.end + it.spare}, job.layout.window);
        const Extent extent = job.layout.scale.snapped(reach);
        BoxShape bar;
        bar.rect = QRectF(extent.begin, box.rect.bottom() - job.style.heavyLine - 1, extent.width(),
                          job.style.heavyLine);
        bar.fill = Colour::Reach;
        out.push_back({bar, Part::Overlay, box.block});
    }
}

double xOfEnd(const QRectF& rect, StepEnd end) {
    return end == StepEnd::Start ? rect.left() : rect.right();
}

/// Out of one block, along between the rows, into the other.
void paintLink(const PaintJob& job, const TimelineLink& link, Picture& out) {
    const BlockBox* from = mainBox(job, link.fromItem);
    const BlockBox* to = mainBox(job, link.toItem);
    if (from == nullptr || to == nullptr) {
        return;
    }
    const QPointF begin(xOfEnd(from->rect, link.fromEnd), from->rect.center().y());
    const double size = job.style.markSize * 0.8;
    const QPointF end(xOfEnd(to->rect, link.toEnd), to->rect.center().y());
    const double turn = std::max(begin.x() + size, end.x() - size);
    const double width = link.holds ? job.style.heavyLine : job.style.thinLine * 1.5;
    const Stroke stroke = link.holds ? Stroke::Solid : Stroke::Dashed;
    for (const auto& [a, b] : {std::pair(begin, QPointF(turn, begin.y())),
                               std::pair(QPointF(turn, begin.y()), QPointF(turn, end.y())),
                               std::pair(QPointF(turn, end.y()), end)}) {
        if (a != b) {
            out.push_back({LineShape{a, b, Colour::Selection, width, stroke}, Part::Overlay, -1});
        }
    }
    const bool fromLeft = turn <= end.x();
    const QRectF head(fromLeft ? end.x() - size : end.x(), end.y() - size / 2, size, size);
    out.push_back(
        {MarkShape{fromLeft ? Mark::ContinuesRight : Mark::ContinuesLeft, head, Colour::Selection},
         Part::Overlay, -1});
}

void paintGhost(const PaintJob& job, const Ghost& ghost, Picture& out) {
    const auto lane = std::ranges::find(job.layout.lanes, ghost.lane, &LaneBox::lane);
    const Interval seenPart = intersection(ghost.interval, job.layout.window);
    if (lane == job.layout.lanes.end() || seenPart.empty()) {
        return;
    }
    const Extent extent = job.layout.scale.snapped(seenPart);
    BoxShape box;
    box.rect = QRectF(extent.begin, lane->top + job.style.lanePadding, extent.width(),
                      std::min(job.style.rowHeight, lane->height));
    box.fill = Colour::PaleFill;
    box.outline = ghost.collides ? Colour::Collision : Colour::Selection;
    box.outlineWidth = job.style.thinLine * 2;
    box.stroke = Stroke::Dashed;
    if (ghost.collides) {
        box.pattern = Pattern::Hatch;
        box.patternColour = Colour::Collision;
    }
    out.push_back({box, Part::Overlay, -1});
    const QRectF room = box.rect.adjusted(job.style.inset, 0, -job.style.inset, 0);
    const QString name = job.measure.fitted(FontRole::Block, ghost.name, room.width());
    if (ghost.collides && !name.isEmpty()) {
        BoxShape plate;  // plain ground below the words
        const double high = job.measure.lineHeight(FontRole::Block);
        plate.rect = QRectF(room.left() - 1, room.center().y() - high / 2,
                            job.measure.width(FontRole::Block, name) + 2, high);
        plate.fill = Colour::PaleFill;
        out.push_back({plate, Part::Overlay, -1});
    }
    addText(job.measure, out, Part::Overlay, -1, {name, {}, FontRole::Block, Colour::Ink}, room);
}

}  // namespace

void paintOverlay(const PaintJob& job, const TimelineOverlay& overlay, Picture& out) {
    if (overlay.reachOf) {
        paintReach(job, *overlay.reachOf, out);
    }
    paintSelection(job, overlay, out);
    for (const TimelineLink& link : overlay.links) {
        paintLink(job, link, out);
    }
    for (const SpreadMark& spread : overlay.spreads) {
        if (const BlockBox* box = mainBox(job, spread.item)) {
            paintSpread(job, *box, spread, out);
        }
    }
    for (const Ghost& ghost : overlay.ghosts) {
        paintGhost(job, ghost, out);
    }
}

}  // namespace rangeline
