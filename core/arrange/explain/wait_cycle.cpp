#include "arrange/explain/wait_cycle.h"

#include <algorithm>
#include <optional>

#include "arrange/explain/temporal_network.h"

namespace rangeline::explain {
namespace {

constexpr int clockPoint = 0;

/// The times of a lesson as a network: the clock, and the start and end of each task.
class LessonTimes {
  public:
    explicit LessonTimes(const rules::Formulation& f)
        : f_(f), network_(1 + 2 * static_cast<int>(f.tasks.size())) {
        addTasks();
        addWaits();
        addWindows();
    }

    std::vector<Requirement> conflict() const {
        std::vector<Requirement> needed;
        if (const auto cycle = network_.positiveCycle()) {
            for (const int distance : *cycle) {
                if (const auto& why = why_[static_cast<std::size_t>(distance)]) {
                    needed.push_back(*why);
                }
            }
        }
        std::ranges::sort(needed);
        const auto repeated = std::ranges::unique(needed);
        needed.erase(repeated.begin(), repeated.end());
        return needed;
    }

  private:
    static int point(int task, StepEnd end) { return 1 + 2 * task + (end == StepEnd::End ? 1 : 0); }

    void atLeast(int from, int to, std::int64_t seconds, std::optional<Requirement> why) {
        network_.atLeast(from, to, seconds);
        why_.push_back(why);
    }

    void addTasks() {
        for (std::size_t i = 0; i < f_.tasks.size(); ++i) {
            const int task = static_cast<int>(i);
            const int start = point(task, StepEnd::Start);
            const int end = point(task, StepEnd::End);
            const auto [least, most] = std::ranges::minmax(
                f_.tasks[i].staffings, {},
                [](const rules::Staffing& staffing) { return staffing.timing.length; });
            atLeast(start, end, least.timing.length.inSeconds(), std::nullopt);
            atLeast(end, start, -most.timing.length.inSeconds(), std::nullopt);
            if (const Placement* pinned = f_.tasks[i].pinned) {
                const Requirement why{RequirementKind::Pinned, task};
                atLeast(clockPoint, start, pinned->start.inSeconds(), why);
                atLeast(start, clockPoint, -pinned->start.inSeconds(), why);
            }
        }
    }

    /// later - earlier >= seconds. A side of which one point is enough says nothing if it has
    /// several.
    void require(const StepPoint& earlier, bool allEarlier, const StepPoint& later, bool allLater,
                 std::int64_t seconds, Requirement why) {
        if ((!allEarlier && earlier.tasks.size() > 1) || (!allLater && later.tasks.size() > 1)) {
            return;
        }
        for (const auto& [from, before] : pointsOf(earlier)) {
            for (const auto& [to, after] : pointsOf(later)) {
                atLeast(from, to, seconds + before - after, why);
            }
        }
    }

    /// Points and how much later than them the time in question is.
    static std::vector<std::pair<int, std::int64_t>> pointsOf(const StepPoint& step) {
        std::vector<std::pair<int, std::int64_t>> points;
        for (const int task : step.tasks) {
            points.emplace_back(point(task, step.end), 0);
        }
        if (points.empty()) {
            points.emplace_back(clockPoint, step.fixed.inSeconds());
        }
        return points;
    }

    void addWaits() {
        for (std::size_t i = 0; i < f_.expanded.waits.size(); ++i) {
            const Wait& wait = f_.expanded.waits[i];
            const int index = static_cast<int>(i);
            const bool fromEnds = wait.from.end == StepEnd::End;
            const bool toStarts = wait.to.end == StepEnd::Start;
            if (wait.least) {
                require(wait.from, fromEnds, wait.to, toStarts, wait.least->inSeconds(),
                        {RequirementKind::Follows, index});
            }
            if (wait.most) {
                require(wait.to, !toStarts, wait.from, !fromEnds, -wait.most->inSeconds(),
                        {RequirementKind::KeepsFor, index});
            }
        }
    }

    void addWindows() {
        for (const Window& window : f_.expanded.windows) {
            const int self = point(window.task, window.end);
            const Requirement why = rules::requirementOf(f_.expanded, window);
            const bool soft = window.origin == WindowOrigin::Serving && f_.lesson.head.lateAllowed;
            if (window.earliest) {
                atLeast(clockPoint, self, window.earliest->inSeconds(), why);
            }
            if (window.latest && !soft) {
                atLeast(self, clockPoint, -window.latest->inSeconds(), why);
            }
        }
    }

    const rules::Formulation& f_;
    TemporalNetwork network_;
    std::vector<std::optional<Requirement>> why_;  ///< by distance; none: how long a step takes
};

}  // namespace

std::vector<Requirement> conflictingTimes(const rules::Formulation& f) {
    return LessonTimes(f).conflict();
}

}  // namespace rangeline::explain
