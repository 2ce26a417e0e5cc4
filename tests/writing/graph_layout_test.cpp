// The picture of what waits for what.

#include "writing/graph_layout.h"

#include <gtest/gtest.h>

#include "writing/dish_changes.h"
#include "writing/ties.h"

namespace rangeline::test {
namespace {

/// Peel > boil, whisk; dress uses boil and whisk and lies in the second component.
struct Graph : public ::testing::Test {
    Graph() : dish(newDish("Salad")) {
        addComponent(dish, 1, "Dressing");
        peel = addStep(dish, {0, 0}, "Peel");
        boil = addStep(dish, {0, 1}, "Boil");
        whisk = addStep(dish, {1, 0}, "Whisk");
        dress = addStep(dish, {1, 1}, "Dress");
        dish = withUse(dish, dress, boil);
    }
    const GraphNode& node(const GraphLayout& layout, const StepId& id) {
        return layout.nodes[*layout.nodeOf(id)];
    }
    Dish dish;
    StepId peel, boil, whisk, dress;
};

TEST_F(Graph, StepsStandRightOfAllThatTheyWaitForInTheBandOfTheirComponent) {
    const GraphLayout layout = layOutGraph(dish);
    ASSERT_EQ(layout.nodes.size(), 4U);
    EXPECT_EQ(node(layout, peel).layer, 0);
    EXPECT_EQ(node(layout, boil).layer, 1);
    EXPECT_EQ(node(layout, whisk).layer, 0);
    EXPECT_EQ(node(layout, dress).layer, 2);
    for (const GraphEdge& edge : layout.edges) {
        EXPECT_LT(layout.startOf(edge).x(), layout.endOf(edge).x());
    }
    for (const GraphNode& each : layout.nodes) {
        EXPECT_TRUE(layout.bands[each.component].box.contains(each.box));
        for (const GraphNode& other : layout.nodes) {
            EXPECT_TRUE(&each == &other || !each.box.intersects(other.box));
        }
    }
    EXPECT_FALSE(layout.bands[0].box.intersects(layout.bands[1].box));
}

TEST_F(Graph, TwoStepsHaveOneLineThatTellsTheFoodFirst) {
    WareNeed pot;
    pot.kind = "pot";
    dish.components[0].steps[1].wares = {pot};
    dish = withSamePan(dish, dress, boil);
    dish = withTies(dish, dress,
                    {{boil, true, false, Duration::minutes(5), {}},
                     {whisk, false, false, {}, Duration::minutes(9)}});
    const GraphLayout layout = layOutGraph(dish);
    ASSERT_EQ(layout.edges.size(), 3U);
    const auto tie = [&](const StepId& from) {
        return std::ranges::find_if(
                   layout.edges,
                   [&](const GraphEdge& edge) { return layout.nodes[edge.from].step == from; })
            ->tie;
    };
    EXPECT_EQ(tie(boil), GraphTie::Food);
    EXPECT_EQ(tie(whisk), GraphTie::Wait);
}

TEST_F(Graph, ACircleIsDrawn) {
    dish = withUse(dish, peel, dress);
    const GraphLayout layout = layOutGraph(dish);
    EXPECT_EQ(layout.edges.size(), 4U);
    for (const GraphNode& each : layout.nodes) {
        EXPECT_LT(each.layer, 4);
    }
}

TEST_F(Graph, PointsFindTheirStepOrTheNearestLine) {
    const GraphLayout layout = layOutGraph(dish);
    EXPECT_EQ(layout.nodeAt(node(layout, boil).box.center()), layout.nodeOf(boil));
    EXPECT_FALSE(layout.nodeAt({-5, -5}));
    const GraphEdge& edge = layout.edges[0];
    const QPointF middle = (layout.startOf(edge) + layout.endOf(edge)) / 2;
    EXPECT_EQ(layout.edgeAt(middle + QPointF(0, 2), 4), 0U);
    EXPECT_FALSE(layout.edgeAt(middle + QPointF(0, 90), 4));
}

TEST(GraphOfNothing, IsEmptyWithABand) {
    const GraphLayout layout = layOutGraph(newDish("Salad"));
    EXPECT_TRUE(layout.nodes.empty());
    EXPECT_EQ(layout.bands.size(), 1U);
}

}  // namespace
}  // namespace rangeline::test
