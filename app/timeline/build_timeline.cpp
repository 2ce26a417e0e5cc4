#include "timeline/build_timeline.h"

#include <algorithm>
#include <ranges>

#include "analysis/at.h"
#include "timeline/blocks.h"
#include "timeline/lanes.h"
#include "timeline/oven_heat.h"

namespace rangeline {
namespace {

/// "5:10" or "17:10": the axis has no room for more.
QString axisClock(const QTime& time, Units units) {
    const int hour = units == Units::UsCustomary ? (time.hour() + 11) % 12 + 1 : time.hour();
    return QStringLiteral("%1:%2").arg(hour).arg(time.minute(), 2, 10, QChar(u'0'));
}

class TimelineBuilder {
  public:
    explicit TimelineBuilder(const TimelineInput& input)
        : input_(input), index_(input.index), names_(input.text) {}

    TimelineModel run() {
        addServings();
        addItems();
        markFindings();
        markAnalysis();
        const Lanes lanes(index_);
        model_.lanes = lanes.all();
        model_.sections = lanes.sections();
        model_.blocks = makeBlocks(index_, lanes, model_.span.begin);
        for (int unit = 0; unit < index_.stations().ovens.size(); ++unit) {
            addHeat(makeHeatLine(index_, lanes, input_.text, unit));
        }
        for (TimelineBlock& block : model_.blocks) {
            block.item = at(itemOfNode_, block.item);
            model_.span.begin = std::min(model_.span.begin, block.interval.begin);
            model_.span.end = std::max(model_.span.end, block.interval.end);
        }
        return std::move(model_);
    }

  private:
    void addServings() {
        const Lesson& lesson = index_.lesson();
        model_.servings = {Instant::serving()};
        for (int group = 0; group < lesson.head.groups.count; ++group) {
            for (const Serving& serving : lesson.servings) {
                model_.servings.push_back(Instant::serving() + serving.offset +
                                          lesson.head.groups.stagger * group);
            }
        }
        std::ranges::sort(model_.servings);
        const auto doubles = std::ranges::unique(model_.servings);
        model_.servings.erase(doubles.begin(), doubles.end());
        const Clock clock(input_.text);
        const Units units = input_.text.units;
        model_.servingClock = Duration::seconds(
            clock.moment(Instant::serving()).time().msecsSinceStartOfDay() / 1000);
        model_.clock = [clock, units](Instant t) {
            return axisClock(clock.moment(t).time(), units);
        };
    }

    void addItems() {
        std::vector<int> nodes;
        for (int node = 0; node < index_.nodes(); ++node) {
            if (index_.placed(node)) {
                nodes.push_back(node);
            }
        }
        std::ranges::stable_sort(nodes, {}, [&](int node) { return index_.placed(node).interval; });
        itemOfNode_.assign(static_cast<std::size_t>(index_.nodes()), -1);
        model_.span = {model_.servings.front(), model_.servings.back()};
        for (const int node : nodes) {
            const Interval& interval = index_.placed(node).interval;
            at(itemOfNode_, node) = static_cast<int>(model_.items.size());
            model_.items.push_back(itemOf(node, interval));
            model_.span.begin = std::min(model_.span.begin, interval.begin);
            model_.span.end = std::max(model_.span.end, interval.end);
        }
    }

    TimelineItem itemOf(int node, const Interval& interval) const {
        TimelineItem item;
        item.key = index_.keyOf(node);
        item.number = static_cast<int>(model_.items.size()) + 1;
        item.name = sentenceCase(names_.plainStep(item.key));
        item.interval = interval;
        item.pinned = index_.placed(node).placement->pinned;
        item.begun = index_.placed(node).placement->started;
        if (index_.isTask(node)) {
            const Task& task = at(index_.expanded().tasks, node);
            if (task.batches > 1) {
                item.name += QStringLiteral(" %1/%2").arg(task.key.batch + 1).arg(task.batches);
            }
        }
        return item;
    }

    TimelineItem* itemOf(const PlacementKey& key) {
        const int node = index_.nodeOf(key);
        const int item = node < 0 ? -1 : at(itemOfNode_, node);
        return item < 0 ? nullptr : &at(model_.items, item);
    }

    void markFindings() {
        for (const Finding& finding : input_.findings) {
            for (const PlacementKey& key : finding.keys) {
                if (TimelineItem* item = itemOf(key)) {
                    item->collides = item->collides || finding.severity == Severity::Collision;
                    item->late = item->late || finding.severity == Severity::Late;
                }
            }
        }
    }

    void markAnalysis() {
        for (const Spare& spare : input_.analysis.spares) {
            if (TimelineItem* item = itemOf(spare.key)) {
                item->spare = spare.spare;
            }
        }
        for (const int spare : input_.analysis.path) {
            if (TimelineItem* item = itemOf(at(input_.analysis.spares, spare).key)) {
                item->decides = true;
            }
        }
    }

    void addHeat(OvenHeatLine line) {
        std::ranges::move(line.pieces, std::back_inserter(model_.heat));
        for (TimelineBlock& block : line.changeOvers) {
            if (index_.placed(block.item)) {
                model_.blocks.push_back(std::move(block));
            }
        }
    }

    const TimelineInput& input_;
    const UseIndex& index_;
    Names names_;
    TimelineModel model_;
    std::vector<int> itemOfNode_;
};

}  // namespace

TimelineModel buildTimeline(const TimelineInput& input) {
    return TimelineBuilder(input).run();
}

}  // namespace rangeline
