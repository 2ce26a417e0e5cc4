#include "print/station_timeline_sheet.h"

#include <algorithm>
#include <array>
#include <ranges>
#include <span>

#include "print/legend_rows.h"
#include "print/lesson_facts.h"
#include "print/notes.h"
#include "print/page_frame.h"
#include "print/pdf_writer.h"
#include "print/print_text.h"
#include "print/text_sheet.h"
#include "print/timeline_pages.h"
#include "timeline/place_text.h"
#include "timeline/primitives_qt.h"
#include "timeline/timeline_painter.h"

namespace rangeline {
namespace {

/// Tried from the largest on: whatever takes no more pages than the smallest does.
constexpr std::array enlargements = {1.35, 1.2, 1.1, 1.0};
/// For reading across the room.
constexpr std::array wallEnlargement = {2.0};
constexpr double legendGap = 6;

class SheetMaker {
  public:
    SheetMaker(const TimelineInput& input, const SheetSetup& setup, bool wall)
        : input_(input),
          wall_(wall),
          layout_(setup.layout),
          model_(buildTimeline(input)),
          name_(q(input.text.lesson.head.name)),
          facts_(lessonFacts(input, Printed::tr("listed at the end"))) {}

    SheetPages run() {
        sheet_.title = wall_ ? Printed::tr("%1: timeline for the wall").arg(name_)
                             : Printed::tr("%1: station timeline").arg(name_);
        chooseSize(wall_ ? std::span<const double>(wallEnlargement) : enlargements);
        const QtFonts fonts(sheet_.style, pixelsPerPoint);
        const PageFrame frame(layout_, fonts, name_, facts_);
        const std::vector<TimelinePage> parts = split(fonts, sheet_.style);
        for (const TimelinePage& page : parts) {
            const double bottom = addTimeline(fonts, page);
            if (wall_) {
                addJoints(fonts, parts, page, bottom);
            }
        }
        if (!parts.empty() || !wall_) {
            addTables(fonts, frame);
        }
        addFeet(frame);
        return std::move(sheet_);
    }

  private:
    void addTables(const QtFonts& fonts, const PageFrame& frame) {
        TextFlow flow(fonts, frame.body(), [&] {
            Picture page;
            frame.addHead(page);
            return page;
        });
        if (wall_) {
            addKey(input_, model_, flow);
        } else {
            addRunningOrder(input_, model_, flow);
            addNotes(input_, model_, flow);
        }
        for (Picture& page : flow.takePages()) {
            sheet_.pages.push_back(std::move(page));
        }
    }

    void addFeet(const PageFrame& frame) {
        const QString note = guidanceNote(input_.text.lesson.head.profile);
        const int pages = static_cast<int>(sheet_.pages.size());
        for (int page = 0; page < pages; ++page) {
            frame.addFoot(sheet_.pages[static_cast<std::size_t>(page)], note, page + 1, pages);
        }
    }

    void chooseSize(std::span<const double> factors) {
        std::size_t fewest = 0;
        for (const double factor : std::views::reverse(factors)) {
            const TimelineStyle style = styleOf(factor);
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
        const double number = fonts.width(FontRole::BlockStrong, largest);
        style.numberRoom = std::max(style.numberRoom, number + 2 * style.heavyLine);
        style.rightRoom = std::max(style.rightRoom, number + style.inset);
        return style;
    }

    double legendHeight(const TextMeasure& measure, const TimelineStyle& style) const {
        return addLegend(measure, style, {}, layout_.frame().width(), nullptr);
    }

    QRectF timelineBody(const TextMeasure& measure, const TimelineStyle& style) const {
        const QRectF body = PageFrame(layout_, measure, name_, facts_).body();
        const double joints = wall_ ? measure.lineHeight(FontRole::Small) : 0;
        return body.adjusted(0, joints, 0, -legendHeight(measure, style) - legendGap);
    }

    std::vector<TimelinePage> split(const TextMeasure& measure, const TimelineStyle& style) const {
        std::vector<TimelinePage> parts =
            splitTimeline(model_, style, timelineBody(measure, style).size(),
                          wall_ ? lanesOfHeatAndCooks(model_) : usedLanes(model_));
        if (wall_) {
            std::erase_if(parts, [&](const TimelinePage& page) { return isBare(page); });
        }
        return parts;
    }

    /// Whether nothing happens there: no paper for it.
    bool isBare(const TimelinePage& page) const {
        const auto shows = [&](const auto& piece) {
            return std::ranges::find(page.lanes, piece.lane) != page.lanes.end() &&
                   piece.interval.overlaps(page.window);
        };
        return std::ranges::none_of(model_.blocks, shows) &&
               std::ranges::none_of(model_.heat, shows);
    }

    /// The bottom of its lanes.
    double addTimeline(const QtFonts& fonts, const TimelinePage& page) {
        const Clock clock(input_.text);
        const QString title = Printed::tr("%1, %2").arg(name_, clock.span(page.window));
        const PageFrame frame(layout_, fonts, title, facts_);
        const QRectF body = timelineBody(fonts, sheet_.style);
        const TimelineLayout layout =
            layOut(model_, sheet_.style,
                   {body.topLeft(), page.unitsPerMinute, pixelsPerPoint, page.window, page.lanes});
        Picture picture = paintTimeline({model_, layout, sheet_.style, fonts});
        frame.addHead(picture);
        const double bottom = std::min(layout.bounds.bottom(), body.bottom());
        addLegend(fonts, sheet_.style, {body.left(), bottom + legendGap}, body.width(), &picture);
        sheet_.pages.push_back(std::move(picture));
        return bottom;
    }

    /// Where pages of the wall are cut and joined: on the left at the plot's edge, on the right at
    /// the window's end, each with the page that comes there.
    void addJoints(const QtFonts& fonts, const std::vector<TimelinePage>& parts,
                   const TimelinePage& page, double bottom) {
        QRectF body = timelineBody(fonts, sheet_.style);
        body.setBottom(bottom);
        const double left = body.left() + sheet_.style.headWidth;
        const double right = left + page.unitsPerMinute * page.window.length().inMinutes();
        const auto joint = [&](double x, Instant edge, bool begins) {
            for (std::size_t other = 0; other < parts.size(); ++other) {
                const Interval& window = parts[other].window;
                if (parts[other].lanes == page.lanes &&
                    (begins ? window.end : window.begin) == edge) {
                    addJoint(fonts, x, body, other + 1, begins);
                }
            }
        };
        joint(left, page.window.begin, true);
        joint(right, page.window.end, false);
    }

    void addJoint(const QtFonts& fonts, double x, const QRectF& body, std::size_t page,
                  bool begins) {
        Picture& picture = sheet_.pages.back();
        picture.push_back(
            {LineShape{{x, body.top()}, {x, body.bottom()}, Colour::Ink, 1.2, Stroke::Dashed},
             Part::Page});
        const QString text = begins ? Printed::tr("cut here, page %1 goes before")
                                    : Printed::tr("page %1 is glued here");
        const double height = fonts.lineHeight(FontRole::Small);
        const QString fitted = text.arg(QString::number(page));
        const double width = fonts.width(FontRole::Small, fitted);
        const double from = begins ? x : x - width;
        addText(fonts, picture, Part::Page, -1, {fitted, {}, FontRole::Small, Colour::Ink},
                QRectF(from, body.top() - height, width, height));
    }

    const TimelineInput& input_;
    bool wall_;
    const PageLayout& layout_;
    TimelineModel model_;
    QString name_;
    QString facts_;
    SheetPages sheet_;
};

}  // namespace

QString stationTimelineTitle() {
    return Printed::tr("Station timeline");
}

SheetPages makeStationTimeline(const TimelineInput& input, const SheetSetup& setup) {
    return SheetMaker(input, setup, false).run();
}

QString wallTimelineTitle() {
    return Printed::tr("Timeline for the wall");
}

SheetPages makeWallTimeline(const TimelineInput& input, const SheetSetup& setup) {
    SheetPages made = SheetMaker(input, setup, true).run();
    return made.pages.empty() ? TextSheet(input, setup.layout, wallTimelineTitle()).finish() : made;
}

}  // namespace rangeline
