#include <QCoreApplication>
#include <algorithm>

#include "timeline/paint_help.h"

namespace rangeline {
namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(Timeline)
};

/// Labels of one axis row; a label that would touch an earlier one is left out.
class AxisRow {
  public:
    AxisRow(const PaintJob& job, double top, Picture& out)
        : job_(job), row_(job.layout.axis), out_(out) {
        row_.setTop(top);
        row_.setHeight(job.style.axisRow);
    }

    void add(Instant at, const QString& text, FontRole font, Colour colour) {
        const double half = job_.measure.width(font, text) / 2;
        const double x = job_.layout.scale.xOf(at);
        const double gap = job_.style.inset;
        const QRectF room(x - half, row_.top(), 2 * half, row_.height());
        const bool taken = std::ranges::any_of(taken_, [&](const QRectF& other) {
            return other.intersects(room.adjusted(-gap, 0, gap, 0));
        });
        if (taken || room.right() > row_.right()) {
            return;
        }
        taken_.push_back(room);
        addText(job_.measure, out_, Part::Axis, -1, {text, {}, font, colour, Align::Centre}, room);
    }

  private:
    const PaintJob& job_;
    QRectF row_;
    Picture& out_;
    std::vector<QRectF> taken_;
};

QString minutesLabel(Instant at) {
    const std::int64_t minutes = -at.inSeconds() / 60;
    return minutes < 0 ? u'+' + QString::number(-minutes) : QString::number(minutes);
}

void paintClockRow(const PaintJob& job, Picture& out) {
    AxisRow row(job, job.layout.axis.top(), out);
    for (const Tick& tick : ticksIn(job.layout.scale, job.layout.window, job.model.servingClock,
                                    job.style.lineGap, job.style.labelGap)) {
        if (tick.labelled) {
            row.add(tick.at, job.model.clock(tick.at), FontRole::Axis, Colour::Ink);
        }
    }
}

void paintMinutesRow(const PaintJob& job, Picture& out) {
    AxisRow row(job, job.layout.axis.top() + job.style.axisRow, out);
    for (const Instant serving : job.model.servings) {
        if (job.layout.window.begin <= serving && serving <= job.layout.window.end) {
            row.add(serving, Text::tr("serve"), FontRole::BlockStrong, Colour::Serving);
        }
    }
    for (const Tick& tick : ticksIn(job.layout.scale, job.layout.window, Duration(),
                                    job.style.lineGap, job.style.labelGap)) {
        if (tick.labelled && tick.at != Instant::serving()) {
            row.add(tick.at, minutesLabel(tick.at), FontRole::Axis, Colour::InkSoft);
        }
    }
}

void paintAxisHead(const PaintJob& job, double top, const QString& name, Picture& out) {
    const QRectF room(job.layout.heads.left() + job.style.inset, top,
                      job.layout.heads.width() - 6 * job.style.inset, job.style.axisRow);
    const QString fitted = job.measure.fitted(FontRole::Small, name, room.width());
    addText(job.measure, out, Part::Axis, -1, {fitted, {}, FontRole::Small, Colour::InkSoft}, room);
}

void paintSectionTitles(const PaintJob& job, Picture& out) {
    // The strip beside a section's title is empty, so that a long one may go on there.
    const double left = job.layout.heads.left() + job.style.inset;
    const double width = job.layout.bounds.width() - 2 * job.style.inset;
    for (const SectionBox& box : job.layout.sections) {
        const QString& title = job.model.sections[static_cast<std::size_t>(box.section)].title;
        addText(job.measure, out, Part::LaneHead, -1,
                {job.measure.fitted(FontRole::BlockStrong, title, width),
                 {},
                 FontRole::BlockStrong,
                 Colour::Ink},
                QRectF(left, box.top, width, job.style.sectionHeight));
    }
}

}  // namespace

void paintAxis(const PaintJob& job, Picture& out) {
    const QRectF& axis = job.layout.axis;
    BoxShape ground;
    ground.rect = QRectF(QPointF(job.layout.heads.left(), axis.top()), axis.bottomRight());
    ground.fill = Colour::HeadBand;
    out.push_back({ground, Part::Axis, -1});
    paintAxisHead(job, axis.top(), Text::tr("clock"), out);
    paintAxisHead(job, axis.top() + job.style.axisRow, Text::tr("min to plating"), out);
    paintClockRow(job, out);
    paintMinutesRow(job, out);
}

void paintHeads(const PaintJob& job, Picture& out) {
    const TimelineLayout& layout = job.layout;
    BoxShape ground;
    ground.rect = layout.heads;
    ground.fill = Colour::HeadBand;
    out.push_back({ground, Part::LaneHead, -1});
    const double left = layout.heads.left() + job.style.inset;
    const double width = layout.heads.width() - 2 * job.style.inset;
    paintSectionTitles(job, out);
    for (const LaneBox& box : layout.lanes) {
        const QString& name = job.model.lanes[static_cast<std::size_t>(box.lane)].name;
        addText(job.measure, out, Part::LaneHead, box.lane,
                {job.measure.fitted(FontRole::LaneName, name, width),
                 {},
                 FontRole::LaneName,
                 Colour::Ink},
                QRectF(left, box.top, width, std::min(box.height, job.style.rowHeight * 2)));
    }
}

}  // namespace rangeline
