#pragma once
// The dish as what waits for what, to look at and to write in: a line drawn from step to step lets
// the food of the one go into the other.

#include <QWidget>

#include "writing/graph_layout.h"

namespace rangeline {

/// Drag from step to step, or press L, go to the other step and press Enter. Delete takes the
/// chosen line away: click it, or go through the lines of the chosen step with Space.
class GraphView : public QWidget {
    Q_OBJECT

  public:
    explicit GraphView(QWidget* parent = nullptr);

    void show(const Dish& dish, const std::optional<StepId>& chosen);
    const GraphLayout& graph() const { return layout_; }
    const std::optional<StepId>& chosen() const { return chosen_; }
    QSize sizeHint() const override;

  Q_SIGNALS:
    void stepChosen(const rangeline::StepId& step);
    void lineWanted(const rangeline::StepId& from, const rangeline::StepId& to);
    void lineUnwanted(const rangeline::StepId& from, const rangeline::StepId& to);
    /// What the keys do now, or an empty text.
    void hinted(const QString& text);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

  private:
    void paintEdge(QPainter& painter, std::size_t number) const;
    void paintNode(QPainter& painter, const GraphNode& node) const;
    void choose(std::size_t node);
    void go(int key);
    void nextLine();
    void finishLine(const StepId& to);
    void dropLine();
    void removeLine();
    void describe();

    Dish dish_;
    GraphLayout layout_;
    std::optional<StepId> chosen_;
    std::optional<std::size_t> line_;  ///< the chosen edge
    std::optional<StepId> from_;       ///< of the line being drawn
    std::optional<QPointF> pointer_;   ///< its loose end, while it is dragged
};

}  // namespace rangeline
