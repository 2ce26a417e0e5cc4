#include "print/timeline_pages.h"

#include <algorithm>
#include <cmath>

namespace rangeline {
namespace {

constexpr std::int64_t fiveMinutes = 300;
constexpr std::int64_t quarterHour = 900;

std::int64_t floorTo(std::int64_t value, std::int64_t step) {
    const std::int64_t rest = value % step;
    return value - (rest < 0 ? rest + step : rest);
}

std::int64_t ceilTo(std::int64_t value, std::int64_t step) {
    return floorTo(value + step - 1, step);
}

/// Windows of equal length on round clock times that together show the whole lesson.
std::vector<Interval> windowsOf(const TimelineModel& model, double mostMinutes) {
    const std::int64_t clock = model.servingClock.inSeconds();
    const std::int64_t begin = model.span.begin.inSeconds() + clock;
    const std::int64_t end = ceilTo(model.span.end.inSeconds() + clock + 1, fiveMinutes);
    const auto most = static_cast<std::int64_t>(mostMinutes * 60);
    std::int64_t first = floorTo(begin, fiveMinutes);
    std::int64_t length = end - first;
    if (length > most) {
        first = floorTo(begin, quarterHour);
        const std::int64_t longest = std::max(floorTo(most, quarterHour), quarterHour);
        const std::int64_t pages = (end - first + longest - 1) / longest;
        length = ceilTo((end - first + pages - 1) / pages, quarterHour);
    }
    std::vector<Interval> windows;
    for (std::int64_t at = first; at < end; at += length) {
        windows.push_back(
            {Instant::atSeconds(at - clock), Instant::atSeconds(at + length - clock)});
    }
    return windows;
}

/// The greatest height of each lane over all windows.
std::vector<double> laneHeights(const TimelineModel& model, const TimelineStyle& style,
                                const std::vector<Interval>& windows, double unitsPerMinute,
                                const std::vector<int>& lanes) {
    std::vector<double> heights(model.lanes.size());
    for (const Interval& window : windows) {
        const TimelineLayout layout =
            layOut(model, style, {{0, 0}, unitsPerMinute, 1.0, window, lanes});
        for (const LaneBox& box : layout.lanes) {
            double& height = heights[static_cast<std::size_t>(box.lane)];
            height = std::max(height, box.height);
        }
    }
    return heights;
}

/// As many lanes a page as have room, in order.
std::vector<std::vector<int>> splitLanes(const TimelineModel& model, const TimelineStyle& style,
                                         const std::vector<int>& lanes,
                                         const std::vector<double>& heights, double available) {
    std::vector<std::vector<int>> pages;
    double left = 0;
    int section = -1;
    for (const int lane : lanes) {
        const auto index = static_cast<std::size_t>(lane);
        const bool newSection = model.lanes[index].section != section;
        const double height = heights[index];
        const double needed = height + (newSection ? style.sectionHeight : 0);
        if (pages.empty() || needed > left) {
            pages.emplace_back();
            left = available - 2 * style.axisRow - style.sectionHeight - height;
        } else {
            left -= needed;
        }
        section = model.lanes[index].section;
        pages.back().push_back(lane);
    }
    return pages;
}

}  // namespace

std::vector<TimelinePage> splitTimeline(const TimelineModel& model, const TimelineStyle& style,
                                        const QSizeF& body) {
    const double plotWidth = body.width() - style.headWidth - style.rightRoom;
    const double leastUnitsPerMinute = style.numberRoom / 5;
    const std::vector<Interval> windows = windowsOf(model, plotWidth / leastUnitsPerMinute);
    const double unitsPerMinute = plotWidth / windows.front().length().inMinutes();
    const std::vector<int> lanes = usedLanes(model);
    const std::vector<double> heights = laneHeights(model, style, windows, unitsPerMinute, lanes);
    std::vector<TimelinePage> pages;
    for (const Interval& window : windows) {
        for (auto& part : splitLanes(model, style, lanes, heights, body.height())) {
            pages.push_back({window, std::move(part), unitsPerMinute});
        }
    }
    return pages;
}

}  // namespace rangeline
