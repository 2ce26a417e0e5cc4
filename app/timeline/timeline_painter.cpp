#include "timeline/timeline_painter.h"

#include <algorithm>

#include "timeline/paint_help.h"

namespace rangeline {
namespace {

void paintBands(const PaintJob& job, Picture& out) {
    const QRectF& plot = job.layout.plot;
    bool band = false;
    for (const LaneBox& lane : job.layout.lanes) {
        BoxShape box;
        box.rect = QRectF(plot.left(), lane.top, plot.width(), lane.height);
        box.fill = band ? Colour::LaneBand : Colour::Paper;
        band = !band;
        out.push_back({box, Part::Ground, lane.lane});
    }
}

void paintGrid(const PaintJob& job, Picture& out) {
    const QRectF& plot = job.layout.plot;
    for (const Tick& tick : ticksIn(job.layout.scale, job.layout.window, job.model.servingClock,
                                    job.style.lineGap, job.style.labelGap)) {
        const double x = job.layout.scale.snapped(job.layout.scale.xOf(tick.at));
        const Colour colour = tick.labelled ? Colour::GridStrong : Colour::Grid;
        out.push_back(
            {LineShape{
                 {x, plot.top()}, {x, plot.bottom()}, colour, job.style.thinLine, Stroke::Solid},
             Part::GridLine, -1});
    }
}

void paintSections(const PaintJob& job, Picture& out) {
    const TimelineLayout& layout = job.layout;
    for (const SectionBox& section : layout.sections) {
        BoxShape box;
        box.rect =
            QRectF(layout.plot.left(), section.top, layout.plot.width(), job.style.sectionHeight);
        box.fill = Colour::HeadBand;
        out.push_back({box, Part::Ground, -1});
    }
}

void paintServings(const PaintJob& job, Picture& out) {
    const QRectF& plot = job.layout.plot;
    for (const Instant serving : job.model.servings) {
        if (serving < job.layout.window.begin || job.layout.window.end < serving) {
            continue;
        }
        const double x = job.layout.scale.snapped(job.layout.scale.xOf(serving));
        out.push_back({LineShape{{x, plot.top()},
                                 {x, plot.bottom()},
                                 Colour::Serving,
                                 job.style.heavyLine,
                                 Stroke::Solid},
                       Part::Serving, -1});
    }
}

/// A box that meets the exposed part, with the room beside it for its name.
bool seen(const BlockBox& box, const QRectF& exposed) {
    return box.rect.left() <= exposed.right() && box.freeRight >= exposed.left() &&
           box.rect.top() <= exposed.bottom() && box.rect.bottom() >= exposed.top();
}

void paintSelection(const PaintJob& job, const std::vector<int>& selected, Picture& out) {
    for (const BlockBox& box : job.layout.blocks) {
        const int item = job.model.blocks[static_cast<std::size_t>(box.block)].item;
        if (std::ranges::find(selected, item) == selected.end()) {
            continue;
        }
        BoxShape ring;
        ring.rect = box.rect;
        ring.outline = Colour::Selection;
        ring.outlineWidth = job.style.heavyLine;
        out.push_back({ring, Part::Overlay, box.block});
    }
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
        bar.rect = QRectF(extent.begin, box.rect.center().y() - job.style.heavyLine / 2,
                          extent.width(), job.style.heavyLine);
        bar.fill = Colour::Reach;
        out.push_back({bar, Part::Overlay, box.block});
    }
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
    box.outlineWidth = job.style.heavyLine;
    box.stroke = Stroke::Dashed;
    if (ghost.collides) {
        box.pattern = Pattern::Hatch;
        box.patternColour = Colour::Collision;
    }
    out.push_back({box, Part::Overlay, -1});
    const QRectF room = box.rect.adjusted(job.style.inset, 0, -job.style.inset, 0);
    addText(job.measure, out, Part::Overlay, -1,
            {job.measure.fitted(FontRole::Block, ghost.name, room.width()),
             {},
             FontRole::Block,
             Colour::Ink},
            room);
}

}  // namespace

void paintPlot(const PaintJob& job, const QRectF& exposed, Picture& out) {
    paintBands(job, out);
    paintGrid(job, out);
    paintSections(job, out);
    paintServings(job, out);
    for (const BlockBox& box : job.layout.blocks) {
        if (seen(box, exposed)) {
            paintBlock(job, box, out);
        }
    }
    for (const LaneBox& lane : job.layout.lanes) {
        if (job.model.lanes[static_cast<std::size_t>(lane.lane)].kind == LaneKind::OvenHeat) {
            paintHeat(job, lane, out);
        }
    }
}

void paintOverlay(const PaintJob& job, const TimelineOverlay& overlay, Picture& out) {
    if (overlay.reachOf) {
        paintReach(job, *overlay.reachOf, out);
    }
    paintSelection(job, overlay.selected, out);
    for (const Ghost& ghost : overlay.ghosts) {
        paintGhost(job, ghost, out);
    }
}

Picture paintTimeline(const PaintJob& job, const TimelineOverlay& overlay) {
    Picture out;
    out.reserve(job.layout.blocks.size() * 4 + 64);
    paintPlot(job, job.layout.plot, out);
    paintHeads(job, out);
    paintAxis(job, out);
    paintOverlay(job, overlay, out);
    return out;
}

}  // namespace rangeline
