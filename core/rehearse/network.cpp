#include "rehearse/network.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "analysis/at.h"
#include "analysis/order_graph.h"

namespace rangeline {
namespace {

Activity activityOf(const UseIndex& index, int node) {
    const Placed& placed = index.placed(node);
    Activity made;
    made.planned = placed.interval.begin;
    made.length = placed.timing.length;
    made.node = node;
    made.range = {made.length, made.length, made.length};
    made.stretchEnd = made.length;
    const auto& tasks = index.expanded().tasks;
    if (node >= static_cast<int>(tasks.size())) {
        return made;  // a wash, or turning an oven on
    }
    const Task& task = at(tasks, node);
    made.range = task.time;
    const auto stretching = static_cast<std::size_t>(task.stretching);
    if (task.stretching >= 0 && stretching < placed.timing.segments.size()) {
        const TimedSegment& segment = placed.timing.segments[stretching];
        made.stretchBegin = segment.offset;
        made.stretchEnd = segment.offset + segment.length;
    }
    return made;
}

}  // namespace

Network networkOf(const UseIndex& index) {
    Network network;
    for (int node = 0; node < index.nodes(); ++node) {
        if (index.placed(node)) {
            network.activities.push_back(activityOf(index, node));
        }
    }
    std::ranges::sort(network.activities, {}, [](const Activity& it) {
        return std::tuple(it.planned, it.planned + it.length, it.node);
    });
    std::map<int, int> numberOf;
    for (std::size_t i = 0; i < network.activities.size(); ++i) {
        numberOf.emplace(network.activities[i].node, static_cast<int>(i));
    }
    const OrderGraph graph(index);
    for (const OrderArc& arc : graph.arcs()) {
        const int from = numberOf.at(arc.from);
        const int to = numberOf.at(arc.to);
        if (from < to) {
            network.followings.push_back({from, to, arc.fromOffset, arc.toOffset,
                                          arc.least - arc.fromOffset + arc.toOffset});
        }
    }
    std::ranges::stable_sort(network.followings, {}, &Following::to);
    for (const LatestStart& bound : graph.latestStarts()) {
        const bool plates =
            bound.window >= 0 &&
            at(index.expanded().windows, bound.window).origin == WindowOrigin::Serving;
        if (plates) {
            network.plating.push_back(
                {numberOf.at(bound.node), bound.offset, bound.latest + bound.offset});
        }
    }
    return network;
}

}  // namespace rangeline
