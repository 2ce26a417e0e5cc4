// Least and most waits between steps, and instants of the clock.

#include <algorithm>

#include "arrange/engine/linear.h"
#include "arrange/rules/formulation.h"

namespace rangeline::rules {
namespace {

std::vector<TimePoint> pointsOf(const Formulation& f, const StepPoint& point) {
    std::vector<TimePoint> points;
    for (const int task : point.tasks) {
        points.push_back(point.end == StepEnd::Start ? f.startOf(task) : f.endOf(task));
    }
    if (points.empty()) {
        points.push_back(f.constant(toValue(point.fixed)));
    }
    return points;
}

/// later >= earlier + gap, where of each side either all points or at least one must fit.
void require(Formulation& f, const std::vector<TimePoint>& earlier, bool allEarlier,
             const std::vector<TimePoint>& later, bool allLater, Value gap, Literal asked) {
    const bool manyEarlier = !allEarlier && earlier.size() > 1;
    const bool manyLater = !allLater && later.size() > 1;
    if (!manyEarlier && !manyLater) {
        for (const TimePoint from : earlier) {
            for (const TimePoint to : later) {
                f.order(from, to, gap, asked);
            }
        }
        return;
    }
    // One literal per free pair; the side that must fit as a whole is tied to each.
    std::vector<Literal> options{f.no(asked)};
    for (const TimePoint from : manyEarlier ? earlier : std::vector<TimePoint>{{}}) {
        for (const TimePoint to : manyLater ? later : std::vector<TimePoint>{{}}) {
            const Literal option = f.boolean();
            options.push_back(option);
            for (const TimePoint a : manyEarlier ? std::vector{from} : earlier) {
                for (const TimePoint b : manyLater ? std::vector{to} : later) {
                    f.order(a, b, gap, option);
                }
            }
        }
    }
    f.clause(options);
}

/// Of what counts towards the total lateness: a second that food keeps too long counts like so many
/// seconds of a late plate.
constexpr Value keptTooLongCounts = 100;

/// The same where batches make it hard to say by how much.
constexpr Value brokenCounts = 600 * keptTooLongCounts;

/// What is too late by then, by as many seconds as `by`.
void addLate(Formulation& f, TimePoint earlier, TimePoint later, Value most, Value weight,
             std::vector<engine::Term>& late) {
    const View by = f.variable(0, 2 * (f.latest - f.earliest), 1, false, f.yes());
    // by >= (later - earlier) - most; one of the two is a constant
    if (f.engine.fixed(earlier.view)) {
        const Value from = f.engine.low(earlier);
        f.engine.addDifference(later.view, later.offset - from - most, by, f.yes());
    } else {
        const Value to = f.engine.low(later);
        f.engine.addDifference(engine::opposite(earlier.view), to - earlier.offset - most, by,
                               f.yes());
    }
    late.push_back({by, weight});
}

bool anyFixed(const Formulation& f, const std::vector<TimePoint>& points) {
    return std::ranges::any_of(points, [&](TimePoint p) { return f.engine.fixed(p.view); });
}

void addWait(Formulation& f, int index, std::vector<engine::Term>& late) {
    const Wait& wait = f.expanded.waits[static_cast<std::size_t>(index)];
    const std::vector<TimePoint> from = pointsOf(f, wait.from);
    const std::vector<TimePoint> to = pointsOf(f, wait.to);
    const bool fromEnds = wait.from.end == StepEnd::End;
    const bool toStarts = wait.to.end == StepEnd::Start;
    // A step's end is its last batch's, its start the first one's: after an end means after all.
    if (wait.least) {
        require(f, from, fromEnds, to, toStarts, toValue(*wait.least),
                f.asked(RequirementKind::Follows, index));
    }
    if (!wait.most || f.allLeftOut(wait.from.tasks) || f.allLeftOut(wait.to.tasks)) {
        return;
    }
    // What has begun may have made the wait too long already, or may yet.
    const bool mayBeBroken = f.underway != nullptr && (anyFixed(f, from) || anyFixed(f, to));
    if (mayBeBroken && from.size() == 1 && to.size() == 1) {
        addLate(f, from.front(), to.front(), toValue(*wait.most), keptTooLongCounts, late);
        return;
    }
    Literal asked = f.asked(RequirementKind::KeepsFor, index);
    if (mayBeBroken) {
        const Literal broken = f.boolean();
        late.push_back({broken.view, brokenCounts});
        asked = f.no(broken);
    }
    require(f, to, !toStarts, from, !fromEnds, -toValue(*wait.most), asked);
}

/// The first window of the same origin, dish and group.
int firstAlike(const Expanded& expanded, const Window& window) {
    const auto taskOf = [&](const Window& w) -> const Task& {
        return expanded.tasks[static_cast<std::size_t>(w.task)];
    };
    const auto alike = [&](const Window& other) {
        return other.origin == window.origin && taskOf(other).serving == taskOf(window).serving &&
               taskOf(other).key.group == taskOf(window).key.group;
    };
    return static_cast<int>(std::ranges::find_if(expanded.windows, alike) -
                            expanded.windows.begin());
}

/// Late plates where that is allowed and, once cooking has begun, everything that is not done when
/// it should be.
bool mayBeLate(const Formulation& f, const Window& window) {
    return (window.origin == WindowOrigin::Serving && f.lateAllowed()) || f.underway != nullptr;
}

void addWindow(Formulation& f, const Window& window, std::vector<engine::Term>& late) {
    if (f.allLeftOut({window.task})) {
        return;
    }
    const Literal asked = f.requirements.of(requirementOf(f.expanded, window));
    const TimePoint point =
        window.end == StepEnd::Start ? f.startOf(window.task) : f.endOf(window.task);
    if (window.earliest) {
        f.order(f.constant(toValue(*window.earliest)), point, 0, asked);
    }
    if (!window.latest) {
        return;
    }
    const TimePoint latest = f.constant(toValue(*window.latest));
    if (mayBeLate(f, window)) {
        addLate(f, latest, point, 0, 1, late);
    } else {
        f.order(point, latest, 0, asked);
    }
}

}  // namespace

Requirement requirementOf(const Expanded& expanded, const Window& window) {
    switch (window.origin) {
        case WindowOrigin::KitchenOpens:
            return {RequirementKind::KitchenOpens, 0};
        case WindowOrigin::CookingMayStart:
            return {RequirementKind::CookingMayStart, 0};
        case WindowOrigin::EveryoneOut:
            return {RequirementKind::EveryoneOut, 0};
        case WindowOrigin::PlateKeeps:
            return {RequirementKind::PlateKeeps, firstAlike(expanded, window)};
        case WindowOrigin::AfterServing:
            return {RequirementKind::AfterServing, firstAlike(expanded, window)};
        case WindowOrigin::Serving:
            break;
    }
    return {RequirementKind::Serving, firstAlike(expanded, window)};
}

void addWaits(Formulation& f) {
    std::vector<engine::Term> late;
    for (std::size_t i = 0; i < f.expanded.waits.size(); ++i) {
        addWait(f, static_cast<int>(i), late);
    }
    for (const Window& window : f.expanded.windows) {
        addWindow(f, window, late);
    }
    if (!late.empty()) {
        f.lateness = f.variable(0, 1'000'000'000, 1, false, f.yes());
        engine::addLinearAtMost(f.engine, std::move(late), 0, f.lateness);
    } else {
        f.lateness = f.engine.newVariable(0, 0);
    }
}

}  // namespace rangeline::rules
