#include "print/timeline_pages.h"

#include <algorithm>
#include <cmath>
#include <set>

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

/// Fills pages with as many lanes as have room, in order; a group that would be cut begins a page.
class LaneSplitter {
  public:
    LaneSplitter(const TimelineModel& model, const TimelineStyle& style,
                 const std::vector<double>& heights, double available)
        : model_(model), style_(style), heights_(heights), page_(available - 2 * style.axisRow) {}

    std::vector<std::vector<int>> split(const std::vector<int>& lanes) {
        for (std::size_t i = 0; i < lanes.size(); ++i) {
            const int section = sectionOf(lanes[i]);
            const bool newGroup = i > 0 && groupOf(lanes[i]) != groupOf(lanes[i - 1]);
            const bool cut = newGroup && heightOfGroup(lanes, i) > left_;
            const bool newSection = i == 0 || section != sectionOf(lanes[i - 1]);
            const double height = heights_[static_cast<std::size_t>(lanes[i])];
            const double needed = height + (newSection ? style_.sectionHeight : 0);
            if (pages_.empty() || cut || needed > left_) {
                pages_.emplace_back();
                left_ = page_ - style_.sectionHeight - height;
            } else {
                left_ -= needed;
            }
            pages_.back().push_back(lanes[i]);
        }
        return std::move(pages_);
    }

  private:
    int sectionOf(int lane) const { return model_.lanes[static_cast<std::size_t>(lane)].section; }
    int groupOf(int lane) const {
        return model_.sections[static_cast<std::size_t>(sectionOf(lane))].group;
    }

    /// With its section titles, from its first lane on.
    double heightOfGroup(const std::vector<int>& lanes, std::size_t first) const {
        double height = style_.sectionHeight;
        for (std::size_t i = first; i < lanes.size(); ++i) {
            if (groupOf(lanes[i]) != groupOf(lanes[first])) {
                break;
            }
            const bool newSection = i > first && sectionOf(lanes[i]) != sectionOf(lanes[i - 1]);
            height += heights_[static_cast<std::size_t>(lanes[i])] +
                      (newSection ? style_.sectionHeight : 0);
        }
        return height;
    }

    const TimelineModel& model_;
    const TimelineStyle& style_;
    const std::vector<double>& heights_;
    double page_;
    double left_ = 0;
    std::vector<std::vector<int>> pages_;
};

bool isHot(LaneKind kind) {
    return kind == LaneKind::OvenHeat || kind == LaneKind::OvenSlot || kind == LaneKind::Burner;
}

}  // namespace

std::vector<int> lanesOfHeatAndCooks(const TimelineModel& model) {
    const auto kindOf = [&](int lane) { return model.lanes[static_cast<std::size_t>(lane)].kind; };
    std::set<int> heated;  // items
    for (const TimelineBlock& block : model.blocks) {
        if (isHot(kindOf(block.lane))) {
            heated.insert(block.item);
        }
    }
    std::set<int> vessels;
    for (const TimelineBlock& block : model.blocks) {
        if (kindOf(block.lane) == LaneKind::Ware && heated.contains(block.item)) {
            vessels.insert(block.lane);
        }
    }
    std::vector<int> lanes = usedLanes(model);
    std::erase_if(lanes, [&](int lane) {
        const LaneKind kind = kindOf(lane);
        return !isHot(kind) && kind != LaneKind::Cook && !vessels.contains(lane);
    });
    return lanes;
}

std::vector<TimelinePage> splitTimeline(const TimelineModel& model, const TimelineStyle& style,
                                        const QSizeF& body, const std::vector<int>& lanes) {
    const double plotWidth = body.width() - style.headWidth - style.rightRoom;
    const double leastUnitsPerMinute = style.numberRoom / 5;
    const std::vector<Interval> windows = windowsOf(model, plotWidth / leastUnitsPerMinute);
    const double unitsPerMinute = plotWidth / windows.front().length().inMinutes();
    const std::vector<double> heights = laneHeights(model, style, windows, unitsPerMinute, lanes);
    std::vector<TimelinePage> pages;
    for (const Interval& window : windows) {
        for (auto& part : LaneSplitter(model, style, heights, body.height()).split(lanes)) {
            pages.push_back({window, std::move(part), unitsPerMinute});
        }
    }
    return pages;
}

}  // namespace rangeline
