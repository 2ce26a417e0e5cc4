#include "print/station_timeline_sheet.h"

#include <algorithm>
#include <array>

#include "print/legend.h"
#include "print/lesson_facts.h"
#include "print/notes.h"
#include "print/page_frame.h"
#include "print/pdf_writer.h"
#include "print/print_text.h"
#include "print/timeline_pages.h"
#include "timeline/primitives_qt.h"
#include "timeline/timeline_painter.h"

namespace rangeline {
namespace {

/// Tried from the largest on: whatever takes no more pages than the smallest does.
constexpr std::array enlargements = {1.35, 1.2, 1.1, 1.0};
constexpr double legendGap = 6;

class SheetMaker {
  public:
    SheetMaker(const TimelineInput& input, const PageLayout& layout)
        : input_(input),
          layout_(layout),
          model_(buildTimeline(input)),
          name_(q(input.text.lesson.head.name)),
          facts_(lessonFacts(input, words("listed at the end"))) {}

    SheetPages run() {
        sheet_.title = words("%1: station timeline").arg(name_);
        chooseSize();
        const QtFonts fonts(sheet_.style, pixelsPerPoint);
        const PageFrame frame(layout_, fonts, name_, facts_);
        for (const TimelinePage& page : split(fonts, sheet_.style)) {
            addTimeline(fonts, page);
        }
        TextFlow flow(fonts, frame.body(), [&] {
            Picture page;
            frame.addHead(page);
            return page;
        });
        addRunningOrder(input_, model_, flow);
        addNotes(input_, model_, flow);
        for (Picture& page : flow.takePages()) {
            sheet_.pages.push_back(std::move(page));
        }
        const QString note = guidanceNote(input_.text.lesson.head.profile);
        const int pages = static_cast<int>(sheet_.pages.size());
        for (int page = 0; page < pages; ++page) {
            frame.addFoot(sheet_.pages[static_cast<std::size_t>(page)], note, page + 1, pages);
        }
        return std::move(sheet_);
    }

  private:
    void chooseSize() {
        std::size_t fewest = 0;
        for (auto factor = enlargements.rbegin(); factor != enlargements.rend(); ++factor) {
            const TimelineStyle style = styleOf(*factor);
            const std::size_t pages = split(QtFonts(style, pixelsPerPoint), style).size();
            if (fewest == 0 || pages <= fewest) {
                fewest = pages;
                sheet_.style = style;
            }
        }
    }

    /// With room beside narrow blocks for the largest number.
    TimelineStyle styleOf(double factor) const {
        TimelineStyle style = TimelineStyle::paperEnlarged(factor);
        const QtFonts fonts(style, pixelsPerPoint);
        const QString largest = QString::number(model_.items.size());
        style.numberRoom = std::max(
            style.numberRoom, fonts.width(FontRole::BlockStrong, largest) + 2 * style.heavyLine);
        return style;
    }

    double legendHeight(const TextMeasure& measure, const TimelineStyle& style) const {
        return addLegend(measure, style, {}, layout_.frame().width(), nullptr);
    }

    QRectF timelineBody(const TextMeasure& measure, const TimelineStyle& style) const {
        const QRectF body = PageFrame(layout_, measure, name_, facts_).body();
        return body.adjusted(0, 0, 0, -legendHeight(measure, style) - legendGap);
    }

    std::vector<TimelinePage> split(const TextMeasure& measure, const TimelineStyle& style) const {
        return splitTimeline(model_, style, timelineBody(measure, style).size());
    }

    void addTimeline(const QtFonts& fonts, const TimelinePage& page) {
        const Clock clock(input_.text.lesson.head, input_.text.locale);
        const QString title = words("%1, %2").arg(name_, clock.span(page.window));
        const PageFrame frame(layout_, fonts, title, facts_);
        const QRectF body = timelineBody(fonts, sheet_.style);
        const TimelineLayout layout =
            layOut(model_, sheet_.style,
                   {body.topLeft(), page.unitsPerMinute, pixelsPerPoint, page.window, page.lanes});
        Picture picture = paintTimeline({model_, layout, sheet_.style, fonts});
        frame.addHead(picture);
        addLegend(fonts, sheet_.style,
                  {body.left(), std::min(layout.bounds.bottom(), body.bottom()) + legendGap},
                  body.width(), &picture);
        sheet_.pages.push_back(std::move(picture));
    }

    const TimelineInput& input_;
    const PageLayout& layout_;
    TimelineModel model_;
    QString name_;
    QString facts_;
    SheetPages sheet_;
};

}  // namespace

QString stationTimelineTitle() {
    return words("Station timeline");
}

SheetPages makeStationTimeline(const TimelineInput& input, const PageLayout& layout) {
    return SheetMaker(input, layout).run();
}

}  // namespace rangeline
