#include "timeline/timeline_layout.h"

#include <algorithm>
#include <numeric>

namespace rangeline {
namespace {

/// Whether any of the block is seen; something that takes no time is seen at the window's end too.
bool meets(const Interval& window, const Interval& block) {
    if (block.empty()) {
        return window.begin <= block.begin && block.begin <= window.end;
    }
    return window.overlaps(block);
}

class Builder {
  public:
    Builder(const TimelineModel& model, const TimelineStyle& style, const LayoutRequest& request)
        : model_(model), style_(style), request_(request), blocksOfLane_(model.lanes.size()) {
        const double plotLeft = request.origin.x() + style.headWidth;
        layout_.scale =
            TimeScale(request.window.begin, plotLeft, request.unitsPerMinute, request.deviceScale);
        layout_.window = request.window;
        for (int block = 0; block < static_cast<int>(model.blocks.size()); ++block) {
            const TimelineBlock& it = model.blocks[static_cast<std::size_t>(block)];
            if (meets(request.window, it.interval)) {
                blocksOfLane_[static_cast<std::size_t>(it.lane)].push_back(block);
            }
        }
    }

    TimelineLayout run() {
        double y = request_.origin.y() + 2 * style_.axisRow;
        const double top = y;
        int section = -1;
        for (const int lane : request_.lanes) {
            const Lane& it = model_.lanes[static_cast<std::size_t>(lane)];
            if (it.section != section) {
                section = it.section;
                layout_.sections.push_back({section, y});
                y += style_.sectionHeight;
            }
            y = addLane(lane, it, y);
        }
        setAreas(top, y);
        return std::move(layout_);
    }

  private:
    void setAreas(double top, double bottom) {
        const double left = request_.origin.x();
        const double plotLeft = left + style_.headWidth;
        const double plotRight = layout_.scale.xOf(request_.window.end) + style_.rightRoom;
        layout_.bounds = QRectF(QPointF(left, request_.origin.y()), QPointF(plotRight, bottom));
        layout_.axis = QRectF(QPointF(plotLeft, request_.origin.y()), QPointF(plotRight, top));
        layout_.heads = QRectF(QPointF(left, top), QPointF(plotLeft, bottom));
        layout_.plot = QRectF(QPointF(plotLeft, top), QPointF(plotRight, bottom));
    }

    double addLane(int lane, const Lane& it, double y) {
        const bool heat = it.kind == LaneKind::OvenHeat;
        const double rowHeight = heat ? style_.heatHeight : style_.rowHeight;
        const int rows = placeBlocks(lane, y + style_.lanePadding, rowHeight);
        const double height = rows * rowHeight + 2 * style_.lanePadding;
        layout_.lanes.push_back({lane, y, height, rows});
        return y + height;
    }

    /// How far right of its begin the block needs its row for itself.
    double reserved(const TimelineBlock& block, const Extent& extent) const {
        const LaneKind kind = model_.lanes[static_cast<std::size_t>(block.lane)].kind;
        const bool numbered = kind == LaneKind::Cook || (block.main && kind != LaneKind::OvenHeat);
        if (numbered && extent.width() < style_.numberRoom) {
            return extent.end + style_.numberRoom + style_.inset;
        }
        return extent.end;
    }

    /// Each block goes into the first row that is free; returns the number of rows.
    int placeBlocks(int lane, double top, double rowHeight) {
        std::vector<int>& blocks = blocksOfLane_[static_cast<std::size_t>(lane)];
        std::ranges::stable_sort(blocks, {}, [&](int block) { return at(block).interval; });
        std::vector<double> rowEnds;
        std::vector<int> lastInRow;
        for (const int block : blocks) {
            const BlockBox box = boxOf(block);
            const Extent extent{box.rect.left(), box.rect.right()};
            const auto row = static_cast<std::size_t>(freeRow(rowEnds, extent.begin));
            if (row == rowEnds.size()) {
                rowEnds.push_back(0);
                lastInRow.push_back(-1);
            }
            if (lastInRow[row] >= 0) {
                double& free = layout_.blocks[static_cast<std::size_t>(lastInRow[row])].freeRight;
                free = std::min(free, extent.begin);
            }
            rowEnds[row] = reserved(at(block), extent);
            lastInRow[row] = static_cast<int>(layout_.blocks.size());
            layout_.blocks.push_back(box);
            QRectF& rect = layout_.blocks.back().rect;
            rect.moveTop(top + static_cast<double>(row) * rowHeight);
            rect.setHeight(rowHeight);
        }
        return std::max(1, static_cast<int>(rowEnds.size()));
    }

    static int freeRow(const std::vector<double>& rowEnds, double begin) {
        constexpr double tolerance = 1e-6;
        const auto row =
            std::ranges::find_if(rowEnds, [&](double end) { return end <= begin + tolerance; });
        return static_cast<int>(row - rowEnds.begin());
    }

    BlockBox boxOf(int block) const {
        const Interval& whole = at(block).interval;
        const Interval& window = request_.window;
        const Interval seen = whole.empty() ? whole : intersection(whole, window);
        const Extent extent = layout_.scale.snapped(seen);
        double freeRight = layout_.scale.xOf(window.end) + style_.rightRoom;
        for (const Instant serving : model_.servings) {
            const double x = layout_.scale.xOf(serving);
            freeRight = x > extent.end ? std::min(freeRight, x) : freeRight;
        }
        return {block, QRectF(extent.begin, 0, extent.width(), 0), freeRight,
                whole.begin<window.begin, whole.end> window.end};
    }

    const TimelineBlock& at(int block) const {
        return model_.blocks[static_cast<std::size_t>(block)];
    }

    const TimelineModel& model_;
    const TimelineStyle& style_;
    const LayoutRequest& request_;
    TimelineLayout layout_;
    std::vector<std::vector<int>> blocksOfLane_;
};

}  // namespace

TimelineLayout layOut(const TimelineModel& model, const TimelineStyle& style,
                      const LayoutRequest& request) {
    return Builder(model, style, request).run();
}

std::vector<int> allLanes(const TimelineModel& model) {
    std::vector<int> lanes(model.lanes.size());
    std::iota(lanes.begin(), lanes.end(), 0);
    return lanes;
}

std::vector<int> usedLanes(const TimelineModel& model) {
    std::vector<bool> used(model.lanes.size());
    for (const TimelineBlock& block : model.blocks) {
        used[static_cast<std::size_t>(block.lane)] = true;
    }
    for (const HeatPiece& piece : model.heat) {
        used[static_cast<std::size_t>(piece.lane)] = true;
    }
    std::vector<int> lanes = allLanes(model);
    std::erase_if(lanes, [&](int lane) { return !used[static_cast<std::size_t>(lane)]; });
    return lanes;
}

}  // namespace rangeline
