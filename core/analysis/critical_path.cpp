#include "analysis/critical_path.h"

#include <algorithm>
#include <deque>

#include "analysis/at.h"
#include "analysis/order_graph.h"

namespace rangeline {
namespace {

/// The latest starts over an order graph, and what decides them.
class LatestStarts {
  public:
    LatestStarts(const UseIndex& index, const OrderGraph& graph,
                 const std::vector<int>& nodesByStart);

    Instant of(int node) const { return at(latest_, node); }
    bool isPinned(int node) const {
        const Placement& placement = *index_.placed(node).placement;
        return placement.pinned || placement.started;
    }
    /// Holds with nodes for `next`, most direct first.
    std::vector<Hold> holdsOf(int node) const;

  private:
    void startFromDeadlines();
    void settle(const std::vector<int>& nodesByStart);
    bool lower(const OrderArc& arc);

    const UseIndex& index_;
    const OrderGraph& graph_;
    std::vector<Instant> latest_;
    std::vector<std::vector<int>> arcsInto_;  ///< indexes of arcs, by the node they lead to
    std::vector<std::vector<int>> arcsFrom_;
};

LatestStarts::LatestStarts(const UseIndex& index, const OrderGraph& graph,
                           const std::vector<int>& nodesByStart)
    : index_(index),
      graph_(graph),
      latest_(static_cast<std::size_t>(index.nodes())),
      arcsInto_(latest_.size()),
      arcsFrom_(latest_.size()) {
    for (std::size_t i = 0; i < graph.arcs().size(); ++i) {
        at(arcsInto_, graph.arcs()[i].to).push_back(static_cast<int>(i));
        at(arcsFrom_, graph.arcs()[i].from).push_back(static_cast<int>(i));
    }
    startFromDeadlines();
    settle(nodesByStart);
}

/// Lowers the latest start of what comes before an arc; says whether that changed it.
bool LatestStarts::lower(const OrderArc& arc) {
    const Instant latest = at(latest_, arc.to) - arc.least;
    if (isPinned(arc.from) || latest >= at(latest_, arc.from)) {
        return false;
    }
    at(latest_, arc.from) = latest;
    return true;
}

/// What each placement's own deadlines allow.
void LatestStarts::startFromDeadlines() {
    std::vector<bool> known(latest_.size(), false);
    for (const LatestStart& bound : graph_.latestStarts()) {
        Instant& latest = at(latest_, bound.node);
        latest = at(known, bound.node) ? std::min(latest, bound.latest) : bound.latest;
        at(known, bound.node) = true;
        if (isPinned(bound.node)) {
            latest = index_.placed(bound.node).interval.begin;
        }
    }
}

/// From the deadlines backwards until nothing changes. Ends, because the lesson as placed keeps
/// every arc: no circle of arcs adds up to more than nothing.
void LatestStarts::settle(const std::vector<int>& nodesByStart) {
    std::deque<int> again(nodesByStart.rbegin(), nodesByStart.rend());
    std::vector<bool> waiting(latest_.size(), true);
    while (!again.empty()) {
        const int node = again.front();
        again.pop_front();
        at(waiting, node) = false;
        for (const int arc : at(arcsInto_, node)) {
            const int from = at(graph_.arcs(), arc).from;
            if (lower(at(graph_.arcs(), arc)) && !at(waiting, from)) {
                at(waiting, from) = true;
                again.push_back(from);
            }
        }
    }
}

std::vector<Hold> LatestStarts::holdsOf(int node) const {
    if (isPinned(node)) {
        return {Hold{HeldBy::Pin, -1, {}, -1, -1}};
    }
    std::vector<Hold> holds;
    for (const LatestStart& bound : graph_.latestStarts()) {
        if (bound.node == node && bound.latest == of(node)) {
            holds.push_back({bound.by, -1, {}, bound.wait, bound.window});
        }
    }
    for (const int i : at(arcsFrom_, node)) {
        const OrderArc& arc = at(graph_.arcs(), i);
        if (of(arc.to) - arc.least == of(node)) {
            holds.push_back({arc.by, arc.to, arc.equipment, arc.wait, -1});
        }
    }
    std::ranges::stable_sort(holds, std::less<>(), &Hold::by);
    const auto repeated = std::ranges::unique(holds);
    holds.erase(repeated.begin(), repeated.end());
    return holds;
}

std::vector<int> nodesByStart(const UseIndex& index) {
    std::vector<int> nodes;
    for (int node = 0; node < index.nodes(); ++node) {
        if (index.placed(node)) {
            nodes.push_back(node);
        }
    }
    std::ranges::stable_sort(nodes, std::less<>(),
                             [&](int node) { return index.placed(node).interval.begin; });
    return nodes;
}

bool heldByServing(const UseIndex& index, const Spare& spare) {
    return std::ranges::any_of(spare.holds, [&](const Hold& hold) {
        return hold.window >= 0 &&
               at(index.expanded().windows, hold.window).origin == WindowOrigin::Serving;
    });
}

/// Of those that the serving itself holds, the one with the least to spare, the last of equals; -1
/// if there is none.
int platingOf(const UseIndex& index, const std::vector<Spare>& spares) {
    int plating = -1;
    for (int i = 0; i < static_cast<int>(spares.size()); ++i) {
        if (heldByServing(index, at(spares, i)) &&
            (plating < 0 || at(spares, i).spare <= at(spares, plating).spare)) {
            plating = i;
        }
    }
    return plating;
}

/// The placements with as little to spare as `pushed` that push against it.
std::vector<int> pushersOf(int pushed, const std::vector<Spare>& spares) {
    std::vector<int> pushers;
    for (int i = 0; i < static_cast<int>(spares.size()); ++i) {
        const Spare& before = at(spares, i);
        if (before.spare == at(spares, pushed).spare &&
            std::ranges::count(before.holds, pushed, &Hold::next) > 0) {
            pushers.push_back(i);
        }
    }
    return pushers;
}

/// From the earliest placement that pushes against plating without a gap to plating.
std::vector<int> pathTo(int plating, const std::vector<Spare>& spares) {
    if (plating < 0) {
        return {};
    }
    std::vector<int> next(spares.size(), -1);
    at(next, plating) = plating;
    std::deque<int> open{plating};
    int first = plating;
    while (!open.empty()) {
        const int current = open.front();
        open.pop_front();
        first = std::min(first, current);
        for (const int pusher : pushersOf(current, spares)) {
            if (at(next, pusher) < 0) {
                at(next, pusher) = current;
                open.push_back(pusher);
            }
        }
    }
    std::vector<int> path{first};
    while (path.back() != plating) {
        path.push_back(at(next, path.back()));
    }
    return path;
}

}  // namespace

PlatingAnalysis analysePlating(const UseIndex& index) {
    const OrderGraph graph(index);
    const std::vector<int> nodes = nodesByStart(index);
    const LatestStarts latest(index, graph, nodes);
    std::vector<int> places(static_cast<std::size_t>(index.nodes()), -1);
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        at(places, nodes[i]) = static_cast<int>(i);
    }
    PlatingAnalysis analysis;
    for (const int node : nodes) {
        Spare spare{index.keyOf(node), latest.of(node) - index.placed(node).interval.begin,
                    latest.isPinned(node), latest.holdsOf(node)};
        for (Hold& hold : spare.holds) {
            hold.next = hold.next < 0 ? -1 : at(places, hold.next);
        }
        analysis.spares.push_back(std::move(spare));
    }
    analysis.path = pathTo(platingOf(index, analysis.spares), analysis.spares);
    return analysis;
}

}  // namespace rangeline
