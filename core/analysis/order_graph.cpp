#include "analysis/order_graph.h"

#include <algorithm>

#include "analysis/at.h"

namespace rangeline {

OrderGraph::OrderGraph(const UseIndex& index) : index_(index) {
    addWaits();
    addDeadlines();
    addBurners();
    addWares();
    addOvens();
    addPools();
    addCooks();
}

// ---- terms ----------------------------------------------------------------------------------

Instant OrderGraph::now(const Term& term) const {
    return index_.placed(term.node).interval.begin + term.offset;
}

OrderGraph::Term OrderGraph::endOf(int node) const {
    return {node, index_.placed(node).timing.length};
}

OrderGraph::Taken OrderGraph::takenByNode(int node) const {
    return {index_.placed(node).interval, startOf(node), {endOf(node)}, 1};
}

OrderGraph::Taken OrderGraph::takenBySpan(const Span& span, std::span<const int> tasks) const {
    Taken taken;
    taken.interval = index_.intervalOf(span, tasks).value_or(Interval());
    if (span.begin != SpanBegin::Opening && index_.placed(span.beginTask)) {
        taken.begin =
            span.begin == SpanBegin::TaskStart ? startOf(span.beginTask) : endOf(span.beginTask);
        taken.ends.push_back(*taken.begin);
    }
    if (span.endOf >= 0 && index_.placed(span.endOf)) {
        taken.ends.push_back(endOf(span.endOf));
    }
    for (const int task : tasks) {
        if (task != span.endOf && index_.placed(task)) {
            taken.ends.push_back(endOf(task));
        }
    }
    for (const int user : span.untilStartOf) {
        if (index_.placed(user)) {
            taken.ends.push_back(startOf(user));
        }
    }
    return taken;
}

OrderGraph::Taken OrderGraph::takenByHands(const CookUse& use) const {
    const Instant start = index_.placed(use.node).interval.begin;
    return {use.interval,
            Term{use.node, use.interval.begin - start},
            {Term{use.node, use.interval.end - start}},
            1};
}

OrderGraph::Taken OrderGraph::takenByWatch(const CookUse& use) const {
    const auto& segments = index_.placed(use.node).timing.segments;
    const TimedSegment& segment = at(segments, use.segment);
    Taken taken{use.interval,
                Term{use.node, segment.offset},
                {Term{use.node, segment.offset + segment.length}},
                1};
    const int next = index_.touches().watchedUntil(use.node);
    if (use.segment + 1 == static_cast<int>(segments.size()) && next >= 0 && index_.placed(next)) {
        taken.ends.push_back(startOf(next));
    }
    return taken;
}

// ---- arcs -----------------------------------------------------------------------------------

void OrderGraph::add(const Term& from, const Term& to, Duration least, const Reason& reason) {
    if (from.node == to.node) {
        return;
    }
    const Duration wanted = from.offset + least - to.offset;
    const Duration given =
        index_.placed(to.node).interval.begin - index_.placed(from.node).interval.begin;
    arcs_.push_back({from.node, to.node, std::min(wanted, given), reason.by, reason.equipment,
                     reason.wait, from.offset, to.offset, reason.turn});
}

void OrderGraph::after(const Taken& first, const Taken& then, Duration gap, const Reason& reason) {
    if (then.begin) {
        Reason counted = reason;
        counted.turn = first.turn;
        for (const Term& end : first.ends) {
            add(end, *then.begin, gap, counted);
        }
    }
}

void OrderGraph::inSequence(const std::vector<Taken>& takens, const Reason& reason) {
    for (std::size_t i = 1; i < takens.size(); ++i) {
        after(takens[i - 1], takens[i], Duration(), reason);
    }
}

/// What takes nothing as placed goes on taking nothing.
void OrderGraph::staysEmpty(const Taken& taken, const Reason& reason) {
    if (taken.begin) {
        for (const Term& end : taken.ends) {
            add(end, *taken.begin, Duration(), reason);
        }
    }
}

/// What the others take at the moment of one that takes nothing itself.
std::int64_t OrderGraph::amountAround(const Taken& taken, std::span<const Taken> others) {
    std::int64_t amount = 0;
    for (const Taken& other : others) {
        const bool around = other.interval.begin < taken.interval.begin &&
                            taken.interval.begin < other.interval.end;
        amount += around ? other.amount : 0;
    }
    return amount;
}

/// Food that is used at once takes nothing as placed, but would if its use slipped. It has a place
/// in the order like everything else, except where there is no room for it now.
void OrderGraph::withinCapacity(std::vector<Taken> takens, std::int64_t capacity,
                                const Reason& reason) {
    std::ranges::stable_sort(takens, std::less<>(), &Taken::interval);
    std::vector<Taken> ordered;
    for (const Taken& taken : takens) {
        if (taken.interval.empty() && taken.amount + amountAround(taken, takens) > capacity) {
            staysEmpty(taken, reason);
        } else {
            ordered.push_back(taken);
        }
    }
    takens = std::move(ordered);
    for (std::size_t i = 0; i < takens.size(); ++i) {
        takens[i].turn = static_cast<int>(i);
        afterWhatMakesRoom(std::span(takens).first(i), takens[i], capacity, reason);
    }
}

/// Each one stays after those that have ended before it and could not go on beside it. Going back
/// from the last that ended: what still fits beside it may go on, the others have to end first.
void OrderGraph::afterWhatMakesRoom(std::span<const Taken> before, const Taken& then,
                                    std::int64_t capacity, const Reason& reason) {
    std::int64_t beside = then.amount;
    std::vector<const Taken*> ended;
    for (const Taken& other : before) {
        if (other.interval.end <= then.interval.begin) {
            ended.push_back(&other);
        } else {
            beside += other.amount;
        }
    }
    std::ranges::stable_sort(ended, std::greater<>(),
                             [](const Taken* taken) { return taken->interval.end; });
    for (const Taken* other : ended) {
        if (beside + other->amount > capacity) {
            after(*other, then, Duration(), reason);
        } else {
            beside += other->amount;
        }
    }
}

// ---- waits and deadlines --------------------------------------------------------------------

void OrderGraph::addWaits() {
    for (int i = 0; i < index_.count(Subject::Wait); ++i) {
        const Wait& wait = at(index_.expanded().waits, i);
        if (!index_.timeOf(wait.from) || !index_.timeOf(wait.to)) {
            continue;
        }
        const Reason reason{HeldBy::Wait, {}, i};
        if (wait.least && !wait.from.tasks.empty()) {
            addLeast(wait, reason);
        }
        if (wait.most) {
            addMost(wait, reason);
        }
    }
}

namespace {

/// The tasks that a rule about a point speaks of: all batches where each of them has to keep it,
/// else only the one that decides the point as placed.
std::vector<int> tasksOf(const UseIndex& index, const StepPoint& point, bool all) {
    return all || point.tasks.empty() ? point.tasks : std::vector<int>{index.timeOf(point)->task};
}

}  // namespace

void OrderGraph::addLeast(const Wait& wait, const Reason& reason) {
    const auto term = [this](int task, StepEnd end) {
        return end == StepEnd::Start ? startOf(task) : endOf(task);
    };
    for (const int from : tasksOf(index_, wait.from, wait.from.end == StepEnd::End)) {
        for (const int to : tasksOf(index_, wait.to, wait.to.end == StepEnd::Start)) {
            add(term(from, wait.from.end), term(to, wait.to.end), *wait.least, reason);
        }
    }
}

/// "At most so long after" pushes the earlier step along with the later one.
void OrderGraph::addMost(const Wait& wait, const Reason& reason) {
    const auto term = [this](int task, StepEnd end) {
        return end == StepEnd::Start ? startOf(task) : endOf(task);
    };
    for (const int to : tasksOf(index_, wait.to, wait.to.end == StepEnd::End)) {
        const Term later = term(to, wait.to.end);
        for (const int from : tasksOf(index_, wait.from, wait.from.end == StepEnd::Start)) {
            add(later, term(from, wait.from.end), -*wait.most, reason);
        }
        if (wait.from.tasks.empty()) {
            const Instant latest = std::max(wait.from.fixed + *wait.most, now(later));
            latest_.push_back(
                {to, latest - later.offset, HeldBy::Wait, -1, reason.wait, later.offset});
        }
    }
}

void OrderGraph::addDeadlines() {
    Instant close = Instant::serving();
    for (int node = 0; node < index_.nodes(); ++node) {
        close = index_.placed(node) ? std::max(close, index_.placed(node).interval.end) : close;
    }
    close = index_.lesson().head.everyoneOut.value_or(close);
    for (int i = 0; i < index_.count(Subject::Window); ++i) {
        const Window& window = at(index_.expanded().windows, i);
        const Placed& placed = index_.placed(window.task);
        if (placed && window.latest) {
            const Duration offset = window.end == StepEnd::End ? placed.timing.length : Duration();
            latest_.push_back(
                {window.task, *window.latest - offset, HeldBy::Deadline, i, -1, offset});
        }
    }
    for (int node = 0; node < index_.nodes(); ++node) {
        if (index_.placed(node)) {
            latest_.push_back({node, close - index_.placed(node).timing.length, HeldBy::Deadline,
                               -1, -1, index_.placed(node).timing.length});
        }
    }
}

}  // namespace rangeline
