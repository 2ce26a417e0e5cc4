#include "writing/graph_layout.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace rangeline {
namespace {

void addNodes(GraphLayout& layout, const Dish& dish) {
    for (std::size_t c = 0; c < dish.components.size(); ++c) {
        for (const Step& step : dish.components[c].steps) {
            layout.nodes.push_back({step.id, c, 0, {}});
        }
    }
}

void addEdge(GraphLayout& layout, const StepId& from, const StepId& to, GraphTie tie) {
    const auto first = layout.nodeOf(from);
    const auto second = layout.nodeOf(to);
    if (!first || !second || first == second) {
        return;
    }
    const bool there = std::ranges::any_of(layout.edges, [&](const GraphEdge& edge) {
        return edge.from == *first && edge.to == *second;
    });
    if (!there) {
        layout.edges.push_back({*first, *second, tie});
    }
}

void addEdges(GraphLayout& layout, const Dish& dish) {
    for (const Component& component : dish.components) {
        for (const Step& step : component.steps) {
            for (const Use& use : step.uses) {
                addEdge(layout, use.step, step.id, GraphTie::Food);
            }
            for (const WareNeed& need : step.wares) {
                if (need.carriesOn) {
                    addEdge(layout, *need.carriesOn, step.id, GraphTie::SamePan);
                }
            }
        }
    }
    for (const Link& link : dish.links) {
        addEdge(layout, link.from.step, link.to.step, GraphTie::Wait);
    }
}

/// The longest way to each; as many rounds as there are steps end a circle, too.
void setLayers(GraphLayout& layout) {
    const int most = static_cast<int>(layout.nodes.size()) - 1;
    bool moved = true;
    for (std::size_t round = 0; moved && round < layout.nodes.size(); ++round) {
        moved = false;
        for (const GraphEdge& edge : layout.edges) {
            int& layer = layout.nodes[edge.to].layer;
            const int wanted = std::min(layout.nodes[edge.from].layer + 1, most);
            if (layer < wanted) {
                layer = wanted;
                moved = true;
            }
        }
    }
}

void place(GraphLayout& layout, const Dish& dish, const GraphMeasures& m) {
    double top = m.margin;
    double right = 0;
    for (std::size_t c = 0; c < dish.components.size(); ++c) {
        std::map<int, int> inLayer;
        int rows = 1;
        for (GraphNode& node : layout.nodes) {
            if (node.component != c) {
                continue;
            }
            const int row = inLayer[node.layer]++;
            rows = std::max(rows, row + 1);
            const double x = m.margin + node.layer * (m.box.width() + m.gapAcross);
            const double y = top + m.bandHead + row * (m.box.height() + m.gapDown);
            node.box = QRectF(QPointF(x, y), m.box);
            right = std::max(right, node.box.right());
        }
        const double height = m.bandHead + rows * (m.box.height() + m.gapDown);
        layout.bands.push_back({c, QRectF(0, top, 0, height)});
        top += height + m.gapDown;
    }
    layout.size = QSizeF(right + m.margin, top + m.margin);
    for (GraphBand& band : layout.bands) {
        band.box.setWidth(layout.size.width());
    }
}

double distance(QPointF point, QPointF from, QPointF to) {
    const QPointF along = to - from;
    const double length = QPointF::dotProduct(along, along);
    const double part =
        length > 0 ? std::clamp(QPointF::dotProduct(point - from, along) / length, 0.0, 1.0) : 0.0;
    const QPointF away = point - (from + part * along);
    return std::hypot(away.x(), away.y());
}

}  // namespace

std::optional<std::size_t> GraphLayout::nodeOf(const StepId& step) const {
    const auto found = std::ranges::find(nodes, step, &GraphNode::step);
    return found == nodes.end() ? std::nullopt
                                : std::optional(static_cast<std::size_t>(found - nodes.begin()));
}

std::optional<std::size_t> GraphLayout::nodeAt(QPointF point) const {
    const auto found = std::ranges::find_if(
        nodes, [&](const GraphNode& node) { return node.box.contains(point); });
    return found == nodes.end() ? std::nullopt
                                : std::optional(static_cast<std::size_t>(found - nodes.begin()));
}

std::optional<std::size_t> GraphLayout::edgeAt(QPointF point, double within) const {
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < edges.size(); ++i) {
        const double away = distance(point, startOf(edges[i]), endOf(edges[i]));
        if (away <= within) {
            within = away;
            nearest = i;
        }
    }
    return nearest;
}

QPointF GraphLayout::startOf(const GraphEdge& edge) const {
    const QRectF& box = nodes[edge.from].box;
    return {box.right(), box.center().y()};
}

QPointF GraphLayout::endOf(const GraphEdge& edge) const {
    const QRectF& box = nodes[edge.to].box;
    return {box.left(), box.center().y()};
}

GraphLayout layOutGraph(const Dish& dish, const GraphMeasures& measures) {
    GraphLayout layout;
    addNodes(layout, dish);
    addEdges(layout, dish);
    setLayers(layout);
    place(layout, dish, measures);
    return layout;
}

}  // namespace rangeline
