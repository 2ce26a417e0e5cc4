// The keyboard and the wheel.

#include <QKeyEvent>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <array>
#include <cmath>

#include "timeline_view/carry.h"
#include "timeline_view/describe.h"
#include "timeline_view/focus_moves.h"
#include "timeline_view/timeline_view.h"

namespace rangeline {
namespace {

/// The menus show these beside their items; here they do what is in hand asks for.
bool isOwnKey(const QKeyEvent& event) {
    constexpr std::array keys = {Qt::Key_Delete, Qt::Key_Return, Qt::Key_Enter, Qt::Key_P,
                                 Qt::Key_Left,   Qt::Key_Right,  Qt::Key_Up,    Qt::Key_Down};
    const bool plain = (event.modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier ||
                       event.modifiers().testFlag(Qt::ControlModifier);
    return plain && std::ranges::find(keys, event.key()) != keys.end() &&
           !(event.key() == Qt::Key_P && event.modifiers().testFlag(Qt::ControlModifier));
}

}  // namespace

void TimelineView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        constexpr double perNotch = 1.2;
        const double notches = event->angleDelta().y() / 120.0;
        zoom(std::pow(perNotch, notches), event->position().x());
        event->accept();
    } else if (event->modifiers().testFlag(Qt::ShiftModifier)) {
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() -
                                        event->angleDelta().y() / 2);
        event->accept();
    } else {
        QAbstractScrollArea::wheelEvent(event);
    }
}

void TimelineView::nudge(int grains, int lanes) {
    if (hasInHand()) {
        tool_->step(grains, lanes);
        return;
    }
    if (selection_.empty()) {
        return;
    }
    Carry carry = Carry::ofPlaced(*this, selection_);
    carry.step(*this, grains, lanes, true);
    const Proposal proposal = carry.proposal(*this);
    constexpr qint64 pause = 1500;  // milliseconds
    if (nudging_ == 0 || sinceNudge_.hasExpired(pause)) {
        nudging_ = document_.newGesture();
    }
    sinceNudge_.start();
    committing_ = true;
    document_.apply(proposal.edit, describeAction(document_, proposal, ActionKind::Move, locale()),
                    nudging_);
    committing_ = false;
    if (const int item = focusItem(); item >= 0) {
        scrollTo(scene_.rectOf(scene_.mainBlockOf(item)));
        announce(describe(item));
    }
}

void TimelineView::removeSelected() {
    if (selection_.empty() || hasInHand()) {
        return;
    }
    Proposal proposal;
    proposal.lead = selection_.front();
    proposal.removes = true;
    proposal.edit = takeAway(document_.index(), selection_);
    commit(proposal, ActionKind::TakeAway);
}

void TimelineView::togglePinOfSelected() {
    const int item = focusItem();
    if (item < 0) {
        return;
    }
    const bool pin = !scene_.item(item).pinned;
    const QString name = nameOf(document_, selection_.front(), locale());
    document_.apply(setPinned(document_.index(), selection_, pin),
                    (pin ? tr("pin %1") : tr("unpin %1")).arg(name));
    announce(describe(focusItem()));
}

void TimelineView::moveFocus(int item) {
    if (item >= 0) {
        reveal(scene_.item(item).key);
    }
}

/// While something is in hand the arrows move it.
bool TimelineView::handKey(int key) {
    if (key == Qt::Key_Escape && (hasInHand() || proposal_)) {
        letGo();
        return true;
    }
    if (!hasInHand()) {
        return false;
    }
    switch (key) {
        case Qt::Key_Left:
        case Qt::Key_Minus:
            nudge(-1, 0);
            return true;
        case Qt::Key_Right:
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            nudge(1, 0);
            return true;
        case Qt::Key_Up:
            nudge(0, -1);
            return true;
        case Qt::Key_Down:
            nudge(0, 1);
            return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Space:
            putDown();
            return true;
        default:
            return false;
    }
}

bool TimelineView::editKey(QKeyEvent* event) {
    const bool ctrl = event->modifiers().testFlag(Qt::ControlModifier);
    switch (event->key()) {
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            ctrl ? zoomIn() : nudge(1, 0);
            return true;
        case Qt::Key_Minus:
            ctrl ? zoomOut() : nudge(-1, 0);
            return true;
        case Qt::Key_0:
            ctrl ? zoomToFit() : void();
            return ctrl;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            pickUpSelected();
            return true;
        case Qt::Key_Delete:
        case Qt::Key_Backspace:
            removeSelected();
            return true;
        case Qt::Key_P:
            togglePinOfSelected();
            return true;
        default:
            return false;
    }
}

/// Arrows move the focus; with Ctrl they move the block.
bool TimelineView::focusKey(QKeyEvent* event) {
    struct Arrow {
        int key;
        Direction direction;
        int grains;
        int lanes;
    };
    constexpr std::array arrows = {Arrow{Qt::Key_Left, Direction::Earlier, -1, 0},
                                   Arrow{Qt::Key_Right, Direction::Later, 1, 0},
                                   Arrow{Qt::Key_Up, Direction::Up, 0, -1},
                                   Arrow{Qt::Key_Down, Direction::Down, 0, 1},
                                   Arrow{Qt::Key_Home, Direction::First, 0, 0},
                                   Arrow{Qt::Key_End, Direction::Last, 0, 0}};
    for (const Arrow& arrow : arrows) {
        if (event->key() != arrow.key) {
            continue;
        }
        if (event->modifiers().testFlag(Qt::ControlModifier)) {
            nudge(arrow.grains, arrow.lanes);
        } else {
            moveFocus(nextFocus(scene_, focusItem(), arrow.direction));
        }
        return true;
    }
    return false;
}

void TimelineView::keyPressEvent(QKeyEvent* event) {
    if (!handKey(event->key()) && !editKey(event) && !focusKey(event)) {
        QAbstractScrollArea::keyPressEvent(event);
    }
}

/// The focus is always on a block, if there is one.
void TimelineView::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    const bool byKey =
        event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    if (byKey && selection_.empty()) {
        moveFocus(nextFocus(scene_, -1, Direction::First));
    }
    viewport()->update();
}

void TimelineView::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    nudging_ = 0;
    viewport()->update();
}

/// Keys that the window's own shortcuts would take.
bool TimelineView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        const bool escape = key->key() == Qt::Key_Escape && (hasInHand() || proposal_);
        if (escape || isOwnKey(*key)) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
}

}  // namespace rangeline
