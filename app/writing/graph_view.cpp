#include "writing/graph_view.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "writing/dish_changes.h"

namespace rangeline {
namespace {

constexpr double reach = 6;  // pixels around a line that belong to it

Qt::PenStyle styleOf(GraphTie tie) {
    return tie == GraphTie::Food      ? Qt::SolidLine
           : tie == GraphTie::SamePan ? Qt::DashLine
                                      : Qt::DotLine;
}

void paintArrow(QPainter& painter, QPointF from, QPointF to) {
    const double half = std::max(24.0, std::abs(to.x() - from.x()) / 2);
    QPainterPath path(from);
    path.cubicTo(from + QPointF(half, 0), to - QPointF(half, 0), to);
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
    painter.setBrush(painter.pen().color());
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(QPolygonF{to, to + QPointF(-9, -4.5), to + QPointF(-9, 4.5)});
}

}  // namespace

GraphView::GraphView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setAccessibleName(tr("What waits for what"));
}

void GraphView::show(const Dish& dish, const std::optional<StepId>& chosen) {
    dish_ = dish;
    chosen_ = chosen;
    line_.reset();
    layout_ = layOutGraph(dish_);
    if (from_ && !layout_.nodeOf(*from_)) {
        dropLine();
    }
    resize(sizeHint());
    updateGeometry();
    describe();
    update();
}

QSize GraphView::sizeHint() const {
    return layout_.size.toSize().expandedTo({300, 200});
}

/// For whoever hears it read.
void GraphView::describe() {
    const Step* step = chosen_ ? findStep(dish_, *chosen_) : nullptr;
    QStringList before;
    for (const GraphEdge& edge : layout_.edges) {
        if (step != nullptr && layout_.nodes[edge.to].step == *chosen_) {
            before << QString::fromStdString(findStep(dish_, layout_.nodes[edge.from].step)->name);
        }
    }
    setAccessibleDescription(
        step == nullptr ? QString()
        : before.isEmpty()
            ? tr("“%1” waits for nothing").arg(QString::fromStdString(step->name))
            : tr("“%1” waits for: %2")
                  .arg(QString::fromStdString(step->name), before.join(QStringLiteral(", "))));
}

// ---- painting ----

void GraphView::paintEdge(QPainter& painter, std::size_t number) const {
    const GraphEdge& edge = layout_.edges[number];
    const bool near = chosen_ && (layout_.nodes[edge.from].step == *chosen_ ||
                                  layout_.nodes[edge.to].step == *chosen_);
    const bool lit = line_ == number;
    painter.setPen(QPen(palette().color(QPalette::Text),
                        lit    ? 4
                        : near ? 2.4
                               : 1.2,
                        styleOf(edge.tie)));
    paintArrow(painter, layout_.startOf(edge), layout_.endOf(edge));
}

void GraphView::paintNode(QPainter& painter, const GraphNode& node) const {
    const bool lit = node.step == chosen_;
    const bool begins = node.step == from_;
    const Step& step = *findStep(dish_, node.step);
    painter.setBrush(palette().brush(lit ? QPalette::Highlight : QPalette::Button));
    painter.setPen(QPen(palette().color(QPalette::Text), lit || begins ? 2.5 : 1,
                        begins ? Qt::DashLine : Qt::SolidLine));
    painter.drawRoundedRect(node.box, 4, 4);
    painter.setPen(palette().color(lit ? QPalette::HighlightedText : QPalette::ButtonText));
    const QRectF room = node.box.adjusted(6, 2, -6, -2);
    const QString name = painter.fontMetrics().elidedText(
        QString::fromStdString(step.name), Qt::ElideRight, static_cast<int>(room.width()));
    painter.drawText(room, Qt::AlignVCenter | Qt::AlignLeft, name);
}

void GraphView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const GraphBand& band : layout_.bands) {
        painter.fillRect(QRectF(band.box.left(), band.box.top(), width(), band.box.height()),
                         palette().alternateBase());
        painter.setPen(palette().color(QPalette::Text));
        painter.drawText(band.box.adjusted(12, 3, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                         QString::fromStdString(dish_.components[band.component].name));
    }
    for (std::size_t i = 0; i < layout_.edges.size(); ++i) {
        paintEdge(painter, i);
    }
    for (const GraphNode& node : layout_.nodes) {
        paintNode(painter, node);
    }
    if (from_ && pointer_) {
        painter.setPen(QPen(palette().color(QPalette::Text), 2));
        const QRectF& box = layout_.nodes[*layout_.nodeOf(*from_)].box;
        painter.drawLine(QPointF(box.right(), box.center().y()), *pointer_);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette().color(QPalette::Text), 2));
        painter.drawRect(visibleRegion().boundingRect().adjusted(1, 1, -1, -1));
    }
}

// ---- choosing and drawing lines ----

void GraphView::choose(std::size_t node) {
    chosen_ = layout_.nodes[node].step;
    line_.reset();
    describe();
    update();
    Q_EMIT stepChosen(*chosen_);
}

/// To the nearest step in that direction.
void GraphView::go(int key) {
    const auto now = chosen_ ? layout_.nodeOf(*chosen_) : std::nullopt;
    if (!now) {
        if (!layout_.nodes.empty()) {
            choose(0);
        }
        return;
    }
    const QPointF here = layout_.nodes[*now].box.center();
    std::optional<std::size_t> best;
    double nearest = 0;
    for (std::size_t i = 0; i < layout_.nodes.size(); ++i) {
        const QPointF away = layout_.nodes[i].box.center() - here;
        const double along = key == Qt::Key_Left    ? -away.x()
                             : key == Qt::Key_Right ? away.x()
                             : key == Qt::Key_Up    ? -away.y()
                                                    : away.y();
        const bool sideways = key == Qt::Key_Left || key == Qt::Key_Right;
        const double across = std::abs(sideways ? away.y() : away.x());
        const double cost = along + 2 * across;
        if (along > 1 && (!best || cost < nearest)) {
            best = i;
            nearest = cost;
        }
    }
    if (best) {
        choose(*best);
    }
}

/// Through the lines that begin or end at the chosen step.
void GraphView::nextLine() {
    for (std::size_t i = 1; i <= layout_.edges.size(); ++i) {
        const std::size_t number =
            (line_.value_or(layout_.edges.size() - 1) + i) % layout_.edges.size();
        const GraphEdge& edge = layout_.edges[number];
        if (layout_.nodes[edge.from].step == chosen_ || layout_.nodes[edge.to].step == chosen_) {
            line_ = number;
            const auto name = [this](std::size_t node) {
                return QString::fromStdString(findStep(dish_, layout_.nodes[node].step)->name);
            };
            Q_EMIT hinted(tr("The line from “%1” to “%2”; Delete takes it away.")
                              .arg(name(edge.from), name(edge.to)));
            update();
            return;
        }
    }
}

void GraphView::finishLine(const StepId& to) {
    const auto from = from_;
    dropLine();
    if (from && *from != to) {
        Q_EMIT lineWanted(*from, to);
    }
}

void GraphView::dropLine() {
    from_.reset();
    pointer_.reset();
    Q_EMIT hinted({});
    update();
}

void GraphView::removeLine() {
    if (line_) {
        const GraphEdge edge = layout_.edges[*line_];
        Q_EMIT hinted({});
        Q_EMIT lineUnwanted(layout_.nodes[edge.from].step, layout_.nodes[edge.to].step);
    }
}

void GraphView::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down) {
        go(key);
    } else if (key == Qt::Key_L && chosen_) {
        from_ = chosen_;
        Q_EMIT hinted(tr("Go to the step that the food goes into and press Enter; Escape: not."));
        update();
    } else if ((key == Qt::Key_Return || key == Qt::Key_Enter) && from_ && chosen_) {
        finishLine(*chosen_);
    } else if (key == Qt::Key_Escape && from_) {
        dropLine();
    } else if (key == Qt::Key_Space) {
        nextLine();
    } else if (key == Qt::Key_Delete) {
        removeLine();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void GraphView::mousePressEvent(QMouseEvent* event) {
    if (const auto node = layout_.nodeAt(event->position())) {
        choose(*node);
        from_ = chosen_;
    } else {
        line_ = layout_.edgeAt(event->position(), reach);
        if (line_) {
            Q_EMIT hinted(tr("Delete takes the line away."));
        }
        update();
    }
}

void GraphView::mouseMoveEvent(QMouseEvent* event) {
    if (from_ && (event->buttons() & Qt::LeftButton) != 0) {
        pointer_ = event->position();
        update();
    }
}

void GraphView::mouseReleaseEvent(QMouseEvent* event) {
    const auto node = layout_.nodeAt(event->position());
    if (from_ && pointer_ && node) {
        finishLine(layout_.nodes[*node].step);
    } else if (from_) {
        dropLine();
    }
}

bool GraphView::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto node = layout_.nodeAt(help->pos());
        QToolTip::showText(
            help->globalPos(),
            node ? QString::fromStdString(findStep(dish_, layout_.nodes[*node].step)->name)
                 : QString(),
            this);
        return true;
    }
    return QWidget::event(event);
}

}  // namespace rangeline
