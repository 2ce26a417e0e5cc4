#pragma once
// The steps of a dish drawn as what waits for what: from left to right as they follow each other,
// a band for each component. Pure; in pixels.

#include <QRectF>
#include <QSizeF>
#include <optional>
#include <vector>

#include "model/dish.h"

namespace rangeline {

struct GraphNode {
    StepId step;
    std::size_t component = 0;
    int layer = 0;  ///< how many steps come before it at the least
    QRectF box;
};

enum class GraphTie : std::uint8_t { Food, SamePan, Wait };

struct GraphEdge {
    std::size_t from = 0, to = 0;  ///< of the nodes
    GraphTie tie = GraphTie::Food;
};

struct GraphBand {
    std::size_t component = 0;
    QRectF box;
};

struct GraphLayout {
    std::vector<GraphNode> nodes;  ///< in the order of the dish
    std::vector<GraphEdge>
        edges;  ///< one for each two steps, food before the same pan before waits
    std::vector<GraphBand> bands;
    QSizeF size;

    std::optional<std::size_t> nodeOf(const StepId& step) const;
    std::optional<std::size_t> nodeAt(QPointF point) const;
    /// The edge whose line passes within that distance; the nearest.
    std::optional<std::size_t> edgeAt(QPointF point, double within) const;
    QPointF startOf(const GraphEdge& edge) const;
    QPointF endOf(const GraphEdge& edge) const;
};

struct GraphMeasures {
    QSizeF box{150, 34};
    double gapAcross = 46;
    double gapDown = 10;
    double bandHead = 22;  ///< room for the component's name
    double margin = 12;
};

/// Steps that wait for each other in a circle have a layer, too.
GraphLayout layOutGraph(const Dish& dish, const GraphMeasures& measures = {});

}  // namespace rangeline
