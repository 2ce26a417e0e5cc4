// How far begin and end of a step spread over rehearsals.

#include <algorithm>

#include "timeline/paint_help.h"

namespace rangeline {
namespace {

/// A line between two instants with a stroke across each end, on ground of its own so that it
/// stands out from every block.
void paintWhisker(const PaintJob& job, const Interval& between, double y, Stroke stroke,
                  const BlockBox& box, Picture& out) {
    const double from = job.layout.scale.xOf(between.begin);
    const double to = job.layout.scale.xOf(between.end);
    const double half = job.style.markSize / 3;
    const double ground = 2 * job.style.thinLine;
    const std::pair<QPointF, QPointF> lines[] = {{QPointF(from, y), QPointF(to, y)},
                                                 {QPointF(from, y - half), QPointF(from, y + half)},
                                                 {QPointF(to, y - half), QPointF(to, y + half)}};
    const double width = 2 * job.style.thinLine;
    for (const auto& [a, b] : lines) {
        out.push_back({LineShape{a, b, Colour::Paper, width + ground, Stroke::Solid}, Part::Overlay,
                       box.block});
    }
    for (const auto& [a, b] : lines) {
        const bool across = a.x() == b.x();
        out.push_back({LineShape{a, b, Colour::Heavy, width, across ? Stroke::Solid : stroke},
                       Part::Overlay, box.block});
    }
}

}  // namespace

void paintSpread(const PaintJob& job, const BlockBox& box, const SpreadMark& spread, Picture& out) {
    const double away = job.style.markSize / 3 + job.style.thinLine;
    const Interval begins = intersection({spread.beginEarly, spread.beginLate}, job.layout.window);
    if (!begins.empty()) {
        paintWhisker(job, begins, box.rect.top() + away, Stroke::Dashed, box, out);
    }
    const Interval ends = intersection({spread.endEarly, spread.endLate}, job.layout.window);
    if (ends.empty()) {
        return;
    }
    const double y = box.rect.bottom() - away;
    paintWhisker(job, ends, y, Stroke::Solid, box, out);
    const double size = job.style.markSize * 0.7;
    const double x = job.layout.scale.xOf(std::clamp(spread.endMiddle, ends.begin, ends.end));
    out.push_back(
        {MarkShape{Mark::Event, QRectF(x - size / 2, y - size / 2, size, size), Colour::Heavy},
         Part::Overlay, box.block});
}

}  // namespace rangeline
