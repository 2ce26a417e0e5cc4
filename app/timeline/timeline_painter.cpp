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
