#include "timeline_view/carry_tool.h"

namespace rangeline {

CarryTool::CarryTool(ToolAdapter& adapter, Carry carry)
    : adapter_(adapter), carry_(std::move(carry)) {
    show(std::nullopt);
}

void CarryTool::show(const std::optional<QPointF>& pointer) {
    Proposal proposal = carry_.proposal(adapter_);
    proposal.pointer = pointer;
    adapter_.propose(proposal);
}

bool CarryTool::press(const PointerAt& pointer) {
    move(pointer);
    pressed_ = true;
    return true;
}

bool CarryTool::move(const PointerAt& pointer) {
    const bool onOwnLane = pointer.lane >= 0 && pointer.lane == adapter_.mainLaneOf(carry_.lead());
    carry_.setOnShelf(pointer.onShelf);
    carry_.moveTo(adapter_, pointer.at, onOwnLane ? -1 : pointer.lane);
    show(pointer.position);
    return true;
}

/// The release of the click that picked it up does not put it down.
bool CarryTool::release(const PointerAt& pointer) {
    if (!pressed_) {
        return true;
    }
    move(pointer);
    return accept();
}

bool CarryTool::step(int grains, int lanes) {
    carry_.setOnShelf(false);
    carry_.step(adapter_, grains, lanes);
    show(std::nullopt);
    return true;
}

bool CarryTool::accept() {
    const Proposal proposal = carry_.proposal(adapter_);
    adapter_.withdraw();
    adapter_.commit(proposal, proposal.removes ? ActionKind::TakeAway : carry_.kind());
    return false;
}

bool CarryTool::cancel() {
    adapter_.withdraw();
    return false;
}

}  // namespace rangeline
