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

void addWait(Formulation& f, int index) {
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
    if (wait.most) {
        require(f, to, !toStarts, from, !fromEnds, -toValue(*wait.most),
                f.asked(RequirementKind::KeepsFor, index));
    }
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

void addWindow(Formulation& f, const Window& window, std::vector<engine::Term>& late) {
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
    if (window.origin == WindowOrigin::Serving && f.lesson.head.lateAllowed) {
        const View by = f.variable(0, f.latest - f.earliest, 1, false, f.yes());
        // by >= point - latest; the other end of a constant is a constant
        f.engine.addDifference(point.view, point.offset - toValue(*window.latest), by, f.yes());
        late.push_back({by, 1});
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
    for (std::size_t i = 0; i < f.expanded.waits.size(); ++i) {
        addWait(f, static_cast<int>(i));
    }
    std::vector<engine::Term> late;
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
