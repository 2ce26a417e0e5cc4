#include "print/range_sheet.h"

#include <algorithm>
#include <set>

#include "analysis/use_index.h"
#include "print/print_text.h"
#include "print/text_sheet.h"
#include "range/range_painter.h"

namespace rangeline {
namespace {

constexpr std::size_t mostMoments = 8;
constexpr double gap = 14;
/// Two beside each other have room for their names.
constexpr double pictureHeight = 194;

/// What can be seen to change: every begin and end on a burner or in an oven of that station.
std::set<Instant> changesOf(const UseIndex& index, int group) {
    std::set<Instant> instants;
    const auto add = [&](const Interval& interval) {
        if (!interval.empty()) {
            instants.insert(std::max(interval.begin, Instant::atSeconds(-7 * 86'400)));
            instants.insert(interval.end);
        }
    };
    const auto ofGroup = [&](const UnitTable& units, int unit) {
        return units[unit].group == group;
    };
    const Stations& stations = index.stations();
    for (int unit = 0; unit < stations.burners.size(); ++unit) {
        for (const BurnerUse& use : index.burnerUses(unit)) {
            if (ofGroup(stations.burners, unit)) {
                add(use.interval);
            }
        }
    }
    for (int unit = 0; unit < stations.ovens.size(); ++unit) {
        for (const OvenUse& use : index.ovenUses(unit)) {
            add(use.interval);
        }
    }
    return instants;
}

/// How many lines of the description are in one of them only.
std::size_t difference(QStringList before, QStringList after) {
    std::ranges::sort(before);
    std::ranges::sort(after);
    QStringList changed;
    std::ranges::set_symmetric_difference(before, after, std::back_inserter(changed));
    return static_cast<std::size_t>(changed.size());
}

QStringList standing(const TimelineInput& input, Instant at, int group) {
    return sceneLines(rangeScene(input.index, input.text, at, group));
}

/// The moments with the most changes, in order of time.
std::vector<Instant> moments(const TimelineInput& input, int group) {
    std::vector<std::pair<std::size_t, Instant>> all;
    QStringList before;
    for (const Instant at : changesOf(input.index, group)) {
        QStringList now = standing(input, at, group);
        all.emplace_back(difference(before, now), at);
        before = std::move(now);
    }
    std::ranges::stable_sort(all, std::greater(), [](const auto& each) { return each.first; });
    all.resize(std::min(all.size(), mostMoments));
    std::vector<Instant> chosen;
    for (const auto& [changes, at] : all) {
        chosen.push_back(at);
    }
    std::ranges::sort(chosen);
    return chosen;
}

void paint(const TimelineInput& input, int group, const TextMeasure& measure, TextFlow& flow) {
    const std::vector<Instant> chosen = moments(input, group);
    for (std::size_t i = 0; i < chosen.size(); i += 2) {
        flow.figure(pictureHeight + gap, [&](Picture& page, const QRectF& room) {
            const double width = (room.width() - gap) / 2;
            for (std::size_t k = i; k < std::min(i + 2, chosen.size()); ++k) {
                const QRectF frame(room.left() + static_cast<double>(k - i) * (width + gap),
                                   room.top(), width, pictureHeight);
                const RangePicture painted = paintRange(
                    rangeScene(input.index, input.text, chosen[k], group), frame, measure);
                page.insert(page.end(), painted.picture.begin(), painted.picture.end());
            }
        });
    }
}

}  // namespace

QString rangeTitle() {
    return Printed::tr("The range from above");
}

SheetPages makeRange(const TimelineInput& input, const SheetSetup& setup) {
    TextSheet sheet(input, setup.layout, rangeTitle());
    const int groups = input.text.lesson.head.groups.count;
    for (int group = 0; group < groups; ++group) {
        const QString title = groups == 1
                                  ? rangeTitle()
                                  : Printed::tr("%1: group %2")
                                        .arg(rangeTitle(), input.text.locale.toString(group + 1));
        sheet.section(title, [&](TextFlow& flow) { paint(input, group, sheet.measure(), flow); });
    }
    return sheet.finish();
}

}  // namespace rangeline
