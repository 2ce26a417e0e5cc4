#include "print/timeline_picture.h"

#include <algorithm>

#include "print/legend_rows.h"
#include "print/lesson_facts.h"
#include "print/page_frame.h"
#include "print/pdf_writer.h"
#include "print/print_text.h"
#include "timeline/place_text.h"
#include "timeline/primitives_qt.h"
#include "timeline/timeline_painter.h"

namespace rangeline {
namespace {

constexpr double margin = 20;
constexpr double gap = 6;
/// Narrower, the head would have too little room.
constexpr double leastWidth = 560;

/// Whole quarters of an hour by the clock, so that the axis begins and ends on a label.
Interval windowOf(const TimelineModel& model) {
    constexpr std::int64_t quarter = 900;
    const std::int64_t clock = model.servingClock.inSeconds();
    const std::int64_t begin = model.span.begin.inSeconds() + clock;
    const std::int64_t end = model.span.end.inSeconds() + clock + 1;
    const auto floored = [](std::int64_t value) {
        const std::int64_t rest = value % quarter;
        return value - (rest < 0 ? rest + quarter : rest);
    };
    return {Instant::atSeconds(floored(begin) - clock),
            Instant::atSeconds(floored(end + quarter - 1) - clock)};
}

}  // namespace

TimelinePicture makeTimelinePicture(const TimelineInput& input) {
    const TimelineModel model = buildTimeline(input);
    TimelinePicture made{q(input.text.lesson.head.name), TimelineStyle::paper(), {}, {}};
    const QtFonts fonts(made.style, pixelsPerPoint);
    const Interval window = windowOf(model);
    const double perMinute = std::max(
        made.style.numberRoom / 3,
        (leastWidth - made.style.headWidth - made.style.rightRoom) / window.length().inMinutes());
    const double width =
        made.style.headWidth + made.style.rightRoom + perMinute * window.length().inMinutes();
    const QString facts = lessonFacts(input, Printed::tr("marked in the picture"));
    double top = margin;
    const auto line = [&](FontRole font, const QString& text) {
        const double height = fonts.lineHeight(font);
        addText(fonts, made.picture, Part::Page, -1,
                {fonts.fitted(font, text, width), {}, font, Colour::Ink},
                QRectF(margin, top, width, height));
        top += height;
    };
    line(FontRole::Title, made.title);
    for (const QString& part : fonts.wrapped(FontRole::Body, facts, width)) {
        line(FontRole::Body, part);
    }
    top += gap;
    const TimelineLayout layout = layOut(
        model, made.style, {{margin, top}, perMinute, pixelsPerPoint, window, usedLanes(model)});
    const Picture lanes = paintTimeline({model, layout, made.style, fonts});
    made.picture.insert(made.picture.end(), lanes.begin(), lanes.end());
    top = layout.bounds.bottom() + gap;
    top += addLegend(fonts, made.style, {margin, top}, width, &made.picture);
    made.size = {width + 2 * margin, top + margin};
    return made;
}

}  // namespace rangeline
