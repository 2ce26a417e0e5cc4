#include "timeline_view/scene.h"

#include <algorithm>

#include "timeline/build_timeline.h"

namespace rangeline {
namespace {

constexpr Duration roomBefore = Duration::minutes(60);
constexpr Duration roomAfter = Duration::minutes(30);
constexpr Duration leastBefore = Duration::minutes(180);

/// On round quarters of an hour, so that the picture does not shift with every edit.
Interval windowOf(const TimelineModel& model, const Head& head) {
    constexpr std::int64_t quarter = 900;
    Interval window = model.span;
    window.begin = std::min(window.begin, head.kitchenOpens.value_or(window.begin));
    window.end = std::max(window.end, head.everyoneOut.value_or(window.end));
    window.begin = std::min(window.begin - roomBefore, model.servings.front() - leastBefore);
    window.end = window.end + roomAfter;
    const std::int64_t rest = ((window.begin.inSeconds() % quarter) + quarter) % quarter;
    window.begin = window.begin - Duration::seconds(rest);
    return window;
}

}  // namespace

void TimelineScene::read(const LessonDocument& document, const QLocale& locale) {
    const TextContext text = document.text(locale);
    model_ = buildTimeline({document.index(), text, document.findings(), document.analysis()});
    lanes_ = std::make_unique<Lanes>(document.index());
    window_ = windowOf(model_, document.lesson().head);
    items_.clear();
    for (std::size_t item = 0; item < model_.items.size(); ++item) {
        items_.emplace(model_.items[item].key, static_cast<int>(item));
    }
    mains_.assign(model_.items.size(), -1);
    for (std::size_t block = 0; block < model_.blocks.size(); ++block) {
        if (model_.blocks[block].main) {
            mains_[static_cast<std::size_t>(model_.blocks[block].item)] = static_cast<int>(block);
        }
    }
}

void TimelineScene::layOut(const TimelineStyle& style, const View& view) {
    layout_ = rangeline::layOut(model_, style,
                                {{0, 0},
                                 view.unitsPerMinute,
                                 view.deviceScale,
                                 window_,
                                 view.onlyUsedLanes ? usedLanes(model_) : allLanes(model_)});
    boxes_.assign(model_.blocks.size(), -1);
    for (std::size_t box = 0; box < layout_.blocks.size(); ++box) {
        boxes_[static_cast<std::size_t>(layout_.blocks[box].block)] = static_cast<int>(box);
    }
}

int TimelineScene::itemOf(const PlacementKey& key) const {
    const auto found = items_.find(key);
    return found == items_.end() ? -1 : found->second;
}

QRectF TimelineScene::rectOf(int block) const {
    const int box = boxes_[static_cast<std::size_t>(block)];
    return box < 0 ? QRectF() : layout_.blocks[static_cast<std::size_t>(box)].rect;
}

DropTarget TimelineScene::targetOf(int index) const {
    return index < 0 ? DropTarget() : DropTarget{lane(index).equipment, lane(index).slot};
}

int TimelineScene::laneOf(const DropTarget& target) const {
    const auto found = std::ranges::find_if(model_.lanes, [&](const Lane& lane) {
        return lane.equipment == target.equipment && lane.slot == target.slot;
    });
    return found == model_.lanes.end() ? -1 : static_cast<int>(found - model_.lanes.begin());
}

}  // namespace rangeline
