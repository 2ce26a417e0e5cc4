#include <algorithm>
#include <numeric>

#include "model/loads.h"
#include "model/validate_parts.h"

namespace rangeline {
namespace {

/// `to` comes at least `seconds` after `from`. Nodes are the starts (2n) and ends (2n + 1) of
/// steps, or the steps themselves.
struct Edge {
    std::size_t from = 0, to = 0;
    std::int64_t seconds = 0;
};

/// What must come after what.
class OrderGraph {
  public:
    OrderGraph(const Lesson& lesson, const StepIndex& steps);

    /// The steps of a circle of uses and carrying on; empty if there is none.
    std::vector<std::size_t> circleOfFood() const;
    /// The steps of a circle that takes longer than no time; empty if there is none.
    std::vector<std::size_t> circleOfTime() const;

  private:
    std::size_t numberOf(const StepId& id) const {
        return static_cast<std::size_t>(steps_.find(id) - steps_.all().data());
    }
    bool batched(std::size_t step) const { return batched_[step]; }
    std::int64_t shortest(std::size_t step) const;
    void addBatchwise(std::size_t from, StepEnd fromEnd, std::size_t to, StepEnd toEnd,
                      std::int64_t least);
    void addWait(const LinkPoint& from, const LinkPoint& to, std::int64_t least, bool each);
    void addStep(std::size_t number);
    std::vector<std::size_t> waitingForFood() const;

    const StepIndex& steps_;
    std::vector<bool> batched_;
    std::vector<Edge> food_;  ///< between steps
    std::vector<Edge> time_;  ///< between starts and ends
};

std::size_t node(std::size_t step, StepEnd end) {
    return 2 * step + (end == StepEnd::End ? 1 : 0);
}

OrderGraph::OrderGraph(const Lesson& lesson, const StepIndex& steps) : steps_(steps) {
    const Loads loads(lesson);
    for (const StepAt& at : steps.all()) {
        batched_.push_back(loads.mayBeSeveral(*at.step));
    }
    for (std::size_t number = 0; number < steps.all().size(); ++number) {
        addStep(number);
    }
    for (const Serving& serving : lesson.servings) {
        for (const Link& link : serving.dish.links) {
            addWait(link.from, link.to, link.least.inSeconds(), link.each);
        }
    }
}

void OrderGraph::addStep(std::size_t number) {
    const Step& step = *steps_.all()[number].step;
    time_.push_back({node(number, StepEnd::Start), node(number, StepEnd::End), shortest(number)});
    for (const Use& use : step.uses) {
        food_.push_back({numberOf(use.step), number, 0});
        addWait({use.step, StepEnd::End}, {step.id, StepEnd::Start}, 0, use.each);
    }
    for (const WareNeed& need : step.wares) {
        if (need.carriesOn) {
            food_.push_back({numberOf(*need.carriesOn), number, 0});
            addWait({*need.carriesOn, StepEnd::End}, {step.id, StepEnd::Start}, 0, true);
        }
    }
}

std::int64_t OrderGraph::shortest(std::size_t step) const {
    return steps_.all()[step].step->time.shortest.inSeconds();
}

/// What batch by batch means for the first start and the last end: a batch ends after its start,
/// and no batch starts before the first or ends after the last.
void OrderGraph::addBatchwise(std::size_t from, StepEnd fromEnd, std::size_t to, StepEnd toEnd,
                              std::int64_t least) {
    const bool perLoad = steps_.all()[from].step->timePer == TimePer::Load &&
                         steps_.all()[to].step->timePer == TimePer::Load;
    const std::int64_t first = perLoad && fromEnd == StepEnd::End ? shortest(from) : 0;
    const std::int64_t last = perLoad && toEnd == StepEnd::Start ? shortest(to) : 0;
    if (toEnd == StepEnd::Start) {
        time_.push_back({node(from, StepEnd::Start), node(to, StepEnd::Start), first + least});
    }
    if (fromEnd == StepEnd::End) {
        time_.push_back({node(from, StepEnd::End), node(to, StepEnd::End), last + least});
    } else {
        time_.push_back({node(from, StepEnd::Start), node(to, StepEnd::End), last + least});
    }
}

void OrderGraph::addWait(const LinkPoint& from, const LinkPoint& to, std::int64_t least,
                         bool each) {
    const std::size_t before = numberOf(from.step);
    const std::size_t after = numberOf(to.step);
    if (each && (batched(before) || batched(after))) {
        addBatchwise(before, from.end, after, to.end, least);
    } else {
        time_.push_back({node(before, from.end), node(after, to.end), least});
    }
}

/// Follows `before` from a node until it comes round; in the order of time.
std::vector<std::size_t> circleFrom(std::size_t start, const std::vector<std::size_t>& before) {
    std::size_t at = start;
    for (std::size_t i = 0; i < before.size(); ++i) {
        at = before[at];  // surely inside the circle after so many
    }
    std::vector<std::size_t> circle;
    for (std::size_t next = at; circle.empty() || next != at; next = before[next]) {
        circle.push_back(next);
    }
    std::ranges::reverse(circle);
    return circle;
}

/// How many steps each one still waits for when all that can be done has been done.
std::vector<std::size_t> OrderGraph::waitingForFood() const {
    const std::size_t count = steps_.all().size();
    std::vector<std::vector<std::size_t>> after(count);
    std::vector<std::size_t> waitsFor(count, 0);
    for (const Edge& edge : food_) {
        after[edge.from].push_back(edge.to);
        ++waitsFor[edge.to];
    }
    std::vector<std::size_t> ready;
    for (std::size_t i = 0; i < count; ++i) {
        if (waitsFor[i] == 0) {
            ready.push_back(i);
        }
    }
    for (std::size_t done = 0; done < ready.size(); ++done) {
        for (const std::size_t next : after[ready[done]]) {
            if (--waitsFor[next] == 0) {
                ready.push_back(next);
            }
        }
    }
    return waitsFor;
}

std::vector<std::size_t> OrderGraph::circleOfFood() const {
    const std::vector<std::size_t> waitsFor = waitingForFood();
    const auto left = std::ranges::find_if(waitsFor, [](std::size_t n) { return n > 0; });
    if (left == waitsFor.end()) {
        return {};
    }
    // What is left waits for something that is left.
    std::vector<std::size_t> before(waitsFor.size());
    std::iota(before.begin(), before.end(), std::size_t{0});
    for (const Edge& edge : food_) {
        if (waitsFor[edge.from] > 0 && waitsFor[edge.to] > 0) {
            before[edge.to] = edge.from;
        }
    }
    return circleFrom(static_cast<std::size_t>(left - waitsFor.begin()), before);
}

std::vector<std::size_t> OrderGraph::circleOfTime() const {
    // Longest paths by repeated relaxing: more rounds than nodes means that one goes round.
    const std::size_t count = 2 * steps_.all().size();
    std::vector<std::int64_t> latest(count, 0);
    std::vector<std::size_t> before(count);
    std::iota(before.begin(), before.end(), std::size_t{0});
    std::size_t moved = 0;
    bool changed = true;
    for (std::size_t round = 0; round <= count && changed; ++round) {
        changed = false;
        for (const Edge& edge : time_) {
            if (latest[edge.from] + edge.seconds > latest[edge.to]) {
                latest[edge.to] = latest[edge.from] + edge.seconds;
                before[edge.to] = edge.from;
                moved = edge.to;
                changed = true;
            }
        }
    }
    if (!changed || count == 0) {
        return {};
    }
    std::vector<std::size_t> circle = circleFrom(moved, before);
    for (std::size_t& item : circle) {
        item /= 2;
    }
    return circle;
}

void reportCircle(ValueChecks& checks, std::vector<std::size_t> circle, const StepIndex& steps) {
    std::ranges::rotate(circle, std::ranges::min_element(circle));
    const auto repeated = std::ranges::unique(circle);  // start and end of one step
    circle.erase(repeated.begin(), repeated.end());
    if (circle.size() > 1 && circle.front() == circle.back()) {
        circle.pop_back();
    }
    std::string names;
    for (const std::size_t step : circle) {
        names += steps.all()[step].step->id.text + " > ";
    }
    const StepAt& first = steps.all()[circle.front()];
    names += first.step->id.text;
    atPlaceOf(first,
              [&](const Place& place) { checks.report(place, FaultCode::CycleInSteps, {names}); });
}

}  // namespace

void validateOrder(ValueChecks& checks, const Lesson& lesson, const StepIndex& steps) {
    const OrderGraph graph(lesson, steps);
    std::vector<std::size_t> circle = graph.circleOfFood();
    if (circle.empty()) {
        circle = graph.circleOfTime();
    }
    if (!circle.empty()) {
        reportCircle(checks, std::move(circle), steps);
    }
}

}  // namespace rangeline
