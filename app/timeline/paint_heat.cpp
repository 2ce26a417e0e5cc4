#include <QLineF>
#include <algorithm>

#include "timeline/paint_help.h"

namespace rangeline {
namespace {

/// Where a temperature lies in an oven's lane: settings between the lane's upper and lower third,
/// whatever is colder than all settings at its foot.
class HeatScale {
  public:
    HeatScale(const TimelineModel& model, const LaneBox& lane) : lane_(lane) {
        bool any = false;
        for (const HeatPiece& piece : model.heat) {
            if (piece.lane == lane.lane && piece.from == piece.to) {
                lowest_ = any ? std::min(lowest_, piece.to) : piece.to;
                highest_ = any ? std::max(highest_, piece.to) : piece.to;
                any = true;
            }
        }
    }

    double yOf(Temperature t) const {
        if (t < lowest_) {
            return lane_.bottom() - lane_.height * 0.08;
        }
        const double range = static_cast<double>((highest_ - lowest_).units());
        const double part = range > 0 ? static_cast<double>((t - lowest_).units()) / range : 0.5;
        return lane_.bottom() - lane_.height * (0.3 + 0.4 * std::min(part, 1.0));
    }

  private:
    const LaneBox& lane_;
    Temperature lowest_;
    Temperature highest_;
};

void paintLabel(const PaintJob& job, const LaneBox& lane, const QString& label, const QLineF& line,
                Picture& out) {
    const double width = line.dx() - 2 * job.style.inset;
    const double height = job.measure.lineHeight(FontRole::BlockStrong);
    const bool above = line.y1() - height >= lane.top;
    const double top = above ? line.y1() - height : line.y1() + job.style.thinLine;
    addText(job.measure, out, Part::OvenLine, lane.lane,
            {job.measure.fitted(FontRole::BlockStrong, label, width),
             {},
             FontRole::BlockStrong,
             Colour::Ink},
            QRectF(line.x1() + job.style.inset, top, width, height));
}

}  // namespace

void paintHeat(const PaintJob& job, const LaneBox& lane, Picture& out) {
    const HeatScale heat(job.model, lane);
    for (const HeatPiece& piece : job.model.heat) {
        if (piece.lane != lane.lane || !job.layout.window.overlaps(piece.interval)) {
            continue;
        }
        const Extent whole = job.layout.scale.snapped(piece.interval);
        const Extent seen =
            job.layout.scale.snapped(intersection(piece.interval, job.layout.window));
        const QLineF full(whole.begin, heat.yOf(piece.from), whole.end, heat.yOf(piece.to));
        const QLineF line(full.pointAt((seen.begin - whole.begin) / whole.width()),
                          full.pointAt((seen.end - whole.begin) / whole.width()));
        out.push_back({LineShape{line.p1(), line.p2(), Colour::Temperature, job.style.heavyLine,
                                 Stroke::Solid},
                       Part::OvenLine, lane.lane});
        paintLabel(job, lane, piece.label, line, out);
    }
}

}  // namespace rangeline
