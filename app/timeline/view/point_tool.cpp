#include "timeline_view/point_tool.h"

#include <algorithm>

namespace rangeline {

bool PointTool::press(const PointerAt& pointer) {
    pressed_ = pointer;
    if (!pointer.key) {
        if (!pointer.modifiers.testFlag(Qt::ControlModifier)) {
            adapter_.select({});
        }
        pressed_.reset();
        return false;
    }
    selectPressed(pointer);
    return false;
}

/// What is pressed leads; with Ctrl it joins the selection or leaves it.
void PointTool::selectPressed(const PointerAt& pointer) {
    std::vector<PlacementKey> keys = adapter_.selection();
    const auto found = std::ranges::find(keys, *pointer.key);
    const bool adding = pointer.modifiers.testFlag(Qt::ControlModifier);
    if (found != keys.end()) {
        std::rotate(keys.begin(), found, found + 1);
        if (adding) {
            keys.erase(keys.begin());
            pressed_.reset();
        }
    } else {
        if (!adding) {
            keys.clear();
        }
        keys.insert(keys.begin(), *pointer.key);
    }
    adapter_.select(keys);
}

bool PointTool::move(const PointerAt& pointer) {
    if (!pressed_) {
        return false;
    }
    if (!carry_) {
        const QPointF way = pointer.position - pressed_->position;
        if (std::max(std::abs(way.x()), std::abs(way.y())) < leastDistance) {
            return false;
        }
        carry_ = Carry::ofPlaced(adapter_, adapter_.selection());
        grip_ = pressed_->at - carry_->start();
    }
    carry_->setOnShelf(pointer.onShelf);
    const bool elsewhere = pointer.lane >= 0 && pointer.lane != pressed_->lane;
    carry_->moveTo(adapter_, pointer.at - grip_, elsewhere ? pointer.lane : -1);
    Proposal proposal = carry_->proposal(adapter_);
    proposal.pointer = pointer.position;
    adapter_.propose(proposal);
    return true;
}

bool PointTool::release(const PointerAt& pointer) {
    if (carry_) {
        move(pointer);
        const Proposal proposal = carry_->proposal(adapter_);
        carry_.reset();
        adapter_.withdraw();
        adapter_.commit(proposal, proposal.removes ? ActionKind::TakeAway : ActionKind::Move);
    } else if (pressed_ && adapter_.selection().size() > 1 &&
               !pointer.modifiers.testFlag(Qt::ControlModifier)) {
        adapter_.select({*pressed_->key});
    }
    pressed_.reset();
    return false;
}

bool PointTool::cancel() {
    if (carry_) {
        adapter_.withdraw();
    }
    carry_.reset();
    pressed_.reset();
    return false;
}

}  // namespace rangeline
