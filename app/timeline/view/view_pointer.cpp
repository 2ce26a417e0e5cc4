// The pointer, drags from the shelf, and what tools ask of the view.

#include <QApplication>
#include <QDragEnterEvent>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "document/free_place.h"
#include "timeline/hit_test.h"
#include "timeline_view/auto_scroll.h"
#include "timeline_view/carry_tool.h"
#include "timeline_view/describe.h"
#include "timeline_view/point_tool.h"
#include "timeline_view/shelf_drag.h"
#include "timeline_view/timeline_access.h"
#include "timeline_view/timeline_view.h"

namespace rangeline {
namespace {

constexpr double leastTarget = 24;
constexpr double snapDistance = 8;
constexpr int scrollTick = 16;

}  // namespace

// ---- pointer --------------------------------------------------------------------------------

PointerAt TimelineView::pointerAt(const QPointF& inViewport,
                                  Qt::KeyboardModifiers modifiers) const {
    PointerAt pointer;
    pointer.position = inViewport + offset();
    const Hit hit = hitTest(scene_.layout(), pointer.position, leastTarget);
    pointer.at = hit.at;
    pointer.modifiers = modifiers;
    if (plotArea().contains(inViewport)) {
        pointer.lane = hit.lane;
        if (hit.block >= 0) {
            const int item = scene_.model().blocks[static_cast<std::size_t>(hit.block)].item;
            pointer.key = scene_.item(item).key;
        }
    }
    if (shelf_ != nullptr && shelf_->isVisible()) {
        const QPoint global = viewport()->mapToGlobal(inViewport.toPoint());
        pointer.onShelf = shelf_->rect().contains(shelf_->mapFromGlobal(global));
    }
    return pointer;
}

void TimelineView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        edgesScroll_ = !isAtEdge(event->position());
        toolDone(tool_->press(pointerAt(event->position(), event->modifiers())));
    } else if (event->button() == Qt::RightButton) {
        letGo();
    }
}

void TimelineView::mouseMoveEvent(QMouseEvent* event) {
    toolMoved(event->position(), event->modifiers());
    hover(event->position());
}

void TimelineView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        autoScroll_.stop();
        toolDone(tool_->release(pointerAt(event->position(), event->modifiers())));
    }
}

void TimelineView::mouseDoubleClickEvent(QMouseEvent* event) {
    const auto key = pointerAt(event->position(), event->modifiers()).key;
    if (event->button() != Qt::LeftButton || hasInHand() || !key) {
        return;
    }
    if (std::ranges::find(selection_, *key) == selection_.end()) {
        select({*key});
    }
    pickUpSelected();
}

bool TimelineView::isAtEdge(const QPointF& inViewport) const {
    return !autoScrollStep(plotArea().toRect(), inViewport.toPoint()).isNull();
}

/// What comes in over an edge, or starts at one, is on its way elsewhere: an edge scrolls only
/// after the drag has been away from the edges, or beyond them.
void TimelineView::toolMoved(const QPointF& inViewport, Qt::KeyboardModifiers modifiers) {
    lastPointer_ = inViewport;
    tool_->move(pointerAt(inViewport, modifiers));
    if (!tool_->isDragging() && !dragFromShelf_) {
        return;
    }
    const bool atEdge = isAtEdge(inViewport);
    edgesScroll_ = edgesScroll_ || !atEdge || !viewport()->rect().contains(inViewport.toPoint());
    if (edgesScroll_ && atEdge && !autoScroll_.isActive()) {
        beforeScrolling_ = {horizontalScrollBar()->value(), verticalScrollBar()->value()};
        autoScroll_.start(scrollTick, this);
    }
}

/// A pointer that rests at the edge sends nothing, so a timer goes on scrolling.
void TimelineView::timerEvent(QTimerEvent* event) {
    if (event->timerId() != autoScroll_.timerId()) {
        QAbstractScrollArea::timerEvent(event);
        return;
    }
    const QPoint step = autoScrollStep(plotArea().toRect(), lastPointer_.toPoint());
    const bool onShelf = pointerAt(lastPointer_, {}).onShelf;
    if (onShelf) {
        // The edge was only on the way.
        horizontalScrollBar()->setValue(beforeScrolling_.x());
        verticalScrollBar()->setValue(beforeScrolling_.y());
    }
    if (step.isNull() || onShelf || !(tool_->isDragging() || dragFromShelf_)) {
        autoScroll_.stop();
        return;
    }
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + step.x());
    verticalScrollBar()->setValue(verticalScrollBar()->value() + step.y());
    tool_->move(pointerAt(lastPointer_, {}));
}

/// Short blocks have no room for their names: they say them when the pointer rests on them.
bool TimelineView::viewportEvent(QEvent* event) {
    if (event->type() != QEvent::ToolTip) {
        return QAbstractScrollArea::viewportEvent(event);
    }
    const auto& help = static_cast<QHelpEvent&>(*event);
    const PointerAt pointer = pointerAt(help.pos(), {});
    if (pointer.key && !proposal_) {
        QToolTip::showText(help.globalPos(), describe(scene_.itemOf(*pointer.key)), viewport());
    } else {
        QToolTip::hideText();
    }
    return true;
}

void TimelineView::hover(const QPointF& inViewport) {
    if (plotArea().contains(inViewport)) {
        // A cook reads whole minutes: a pixel's odd seconds would only flicker.
        const Instant at = scene_.layout().scale.timeAt(inViewport.x() + offset().x());
        const std::int64_t over = ((at.inSeconds() % 60) + 60) % 60;
        Q_EMIT timeHovered(at - Duration::seconds(over));
    }
}

// ---- tools ----------------------------------------------------------------------------------

bool TimelineView::hasInHand() const {
    return dynamic_cast<const CarryTool*>(tool_.get()) != nullptr;
}

void TimelineView::setTool(std::unique_ptr<Tool> tool) {
    const bool before = hasInHand();
    tool_ = std::move(tool);
    if (before != hasInHand()) {
        Q_EMIT inHandChanged(hasInHand());
    }
}

void TimelineView::toolDone(bool busy) {
    if (!busy && hasInHand()) {
        setTool(std::make_unique<PointTool>(asAdapter()));
    }
}

void TimelineView::pickUp(const std::vector<StepKey>& steps) {
    letGo();
    const bool known = std::ranges::any_of(
        steps, [&](const StepKey& key) { return document_.expanded().taskOf(key) >= 0; });
    if (known) {
        setTool(std::make_unique<CarryTool>(asAdapter(), Carry::ofSteps(*this, steps)));
    }
}

void TimelineView::pickUpSelected() {
    letGo();
    if (!selection_.empty()) {
        setTool(std::make_unique<CarryTool>(asAdapter(), Carry::ofPlaced(*this, selection_)));
    }
}

void TimelineView::putDown() {
    toolDone(tool_->accept());
}

void TimelineView::letGo() {
    autoScroll_.stop();
    tool_->cancel();
    if (proposal_) {
        withdraw();  // a preview belongs to no tool
    }
    dragFromShelf_ = false;
    toolDone(false);
}

int TimelineView::mainLaneOf(const PlacementKey& key) const {
    const int item = scene_.itemOf(key);
    const int block = item < 0 ? -1 : scene_.mainBlockOf(item);
    return block < 0 ? -1 : scene_.model().blocks[static_cast<std::size_t>(block)].lane;
}

Instant TimelineView::snapped(const SnapRequest& request) const {
    const int lane = request.lane >= 0 ? request.lane : mainLaneOf(request.key);
    const Duration grain = document_.lesson().head.grain;
    Instant best = onGrain(document_.lesson(), request.start);
    auto nearest =
        Duration::seconds(std::llround(snapDistance / scene_.layout().scale.unitsPerMinute() * 60));
    const auto consider = [&](Instant start, bool up) {
        Instant at = onGrain(document_.lesson(), start);
        if (up && at < start) {
            at = at + grain;
        } else if (!up && start < at) {
            at = at - grain;
        }
        const Duration away = std::max(at - request.start, request.start - at);
        if (away < nearest) {
            nearest = away;
            best = at;
        }
    };
    for (const TimelineBlock& block : scene_.model().blocks) {
        if (block.lane == lane && scene_.item(block.item).key != request.key) {
            consider(block.interval.end, true);
            consider(block.interval.begin - request.length, false);
        }
    }
    for (const Instant serving : scene_.model().servings) {
        consider(serving - request.length, false);
    }
    return best;
}

SetPlacements TimelineView::placeInTurn(std::span<const int> tasks, Instant start,
                                        const DropTarget& target) const {
    return rangeline::placeInTurn(document_.state(), tasks, start, target);
}

void TimelineView::propose(const Proposal& proposal) {
    proposal_ = proposal;
    look_ = proposal.removes ? ProposalLook() : lookOf(document_, scene_, proposal, locale());
    overlay_.reset();
    viewport()->update();
    announce(describeProposal(document_, proposal, look_, locale()));
}

void TimelineView::withdraw() {
    proposal_.reset();
    look_ = ProposalLook();
    overlay_.reset();
    viewport()->update();
    announce(QString());
}

void TimelineView::commit(const Proposal& proposal, ActionKind kind) {
    const PlacementKey lead = proposal.lead;
    const QString text = describeAction(document_, proposal, kind, locale());
    document_.apply(proposal.edit, text);
    if (kind == ActionKind::Place) {
        select({lead});
    }
    if (const int item = scene_.itemOf(lead); item >= 0) {
        announce(describe(item));
    }
}

void TimelineView::showPreview(const SetPlacements& edit) {
    letGo();
    if (!edit.changes.empty()) {
        Proposal proposal;
        proposal.edit = edit;
        proposal.lead = edit.changes.front().key;
        propose(proposal);
    }
}

// ---- drags from the shelf -------------------------------------------------------------------

void TimelineView::dragEnterEvent(QDragEnterEvent* event) {
    const std::vector<StepKey> steps = readShelfDrag(*event->mimeData());
    if (steps.empty()) {
        event->ignore();
        return;
    }
    pickUp(steps);
    dragFromShelf_ = hasInHand();
    edgesScroll_ = false;
    event->setAccepted(dragFromShelf_);
    if (dragFromShelf_) {
        event->acceptProposedAction();
        toolMoved(event->position(), event->modifiers());
    }
}

void TimelineView::dragMoveEvent(QDragMoveEvent* event) {
    if (dragFromShelf_) {
        toolMoved(event->position(), event->modifiers());
        hover(event->position());
        event->acceptProposedAction();
    }
}

void TimelineView::dragLeaveEvent(QDragLeaveEvent*) {
    letGo();
}

void TimelineView::dropEvent(QDropEvent* event) {
    if (!dragFromShelf_) {
        return;
    }
    autoScroll_.stop();
    dragFromShelf_ = false;
    tool_->move(pointerAt(event->position(), event->modifiers()));
    event->acceptProposedAction();
    putDown();
    setFocus();
}

}  // namespace rangeline
