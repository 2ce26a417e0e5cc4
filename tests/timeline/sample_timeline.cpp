#include "timeline/sample_timeline.h"

namespace rangeline::test {
namespace {

Interval minutes(std::int64_t begin, std::int64_t end) {
    return {Instant::atMinutes(begin), Instant::atMinutes(end)};
}

TimelineItem item(int number, const QString& name, const Interval& interval) {
    TimelineItem made;
    made.key = StepKey{{"step-" + std::to_string(number)}, 0, 0};
    made.number = number;
    made.name = name;
    made.interval = interval;
    return made;
}

TimelineBlock block(int item, int lane, bool main, const Interval& interval) {
    return {item, lane, BlockKind::Work, main, interval, {}};
}

void addBlocks(TimelineModel& model) {
    model.blocks = {block(0, rackLane, true, minutes(-60, -20)),
                    block(0, panLane, false, minutes(-60, -20)),
                    block(1, burnerLane, true, minutes(-30, -20)),
                    block(2, burnerLane, true, minutes(-25, -15)),
                    block(3, cookLane, true, minutes(-5, 0)),
                    block(4, cookLane, true, minutes(-5, -5))};
    model.blocks[4].segments = {{Attention::Hands, minutes(-5, 0)}};
    TimelineBlock watch = block(1, cookLane, false, minutes(-30, -20));
    watch.segments = {{Attention::Hands, minutes(-30, -28)}, {Attention::Watch, minutes(-28, -20)}};
    model.blocks.push_back(watch);
    TimelineBlock waiting = block(0, panLane, false, minutes(-20, -5));
    waiting.kind = BlockKind::Waiting;
    model.blocks.push_back(waiting);
}

}  // namespace

TimelineModel sampleTimeline() {
    TimelineModel model;
    model.sections = {{"Oven", 0}, {"Burners", 0}, {"Pans", 0}, {"Cooks", 0}};
    model.lanes = {{LaneKind::OvenHeat, {EquipmentSort::Oven, 0}, -1, 0, "Oven"},
                   {LaneKind::OvenSlot, {EquipmentSort::Oven, 0}, 0, 0, "Rack 1"},
                   {LaneKind::Burner, {EquipmentSort::Burner, 0}, -1, 1, "Front left"},
                   {LaneKind::Ware, {EquipmentSort::Ware, 0}, -1, 2, "Roasting pan"},
                   {LaneKind::Cook, {EquipmentSort::Cook, 0}, -1, 3, "Robin"}};
    model.items = {item(1, "Roast", minutes(-60, -20)), item(2, "Sear", minutes(-30, -20)),
                   item(3, "Glaze", minutes(-25, -15)), item(4, "Plate", minutes(-5, 0)),
                   item(5, "Call", minutes(-5, -5))};
    model.items[1].collides = model.items[2].collides = true;
    model.items[2].pinned = true;
    model.items[3].decides = true;
    model.items[0].spare = Duration::minutes(10);
    addBlocks(model);
    const Temperature hot = Temperature::fahrenheit(425);
    model.heat = {{heatLane, minutes(-60, -20), hot, hot, "425 °F"}};
    model.span = minutes(-60, 0);
    model.servings = {Instant::serving()};
    model.servingClock = Duration::hours(18);
    model.clock = [](Instant t) { return QString::number(t.inSeconds() / 60); };
    return model;
}

TimelineModel largeTimeline(int blocks) {
    TimelineModel model = sampleTimeline();
    model.blocks.clear();
    model.items.clear();
    model.heat.clear();
    constexpr int lanes = 30;
    model.lanes.assign(lanes, {LaneKind::Burner, {EquipmentSort::Burner, 0}, -1, 1, "Burner"});
    for (int i = 0; i < blocks; ++i) {
        const Interval when = minutes(-3000 + 15 * (i / lanes), -3000 + 15 * (i / lanes) + 14);
        model.items.push_back(item(i + 1, QStringLiteral("Step number %1").arg(i + 1), when));
        model.items.back().collides = i % 10 == 0;
        model.blocks.push_back(block(i, i % lanes, true, when));
    }
    model.span = minutes(-3000, 0);
    return model;
}

}  // namespace rangeline::test
