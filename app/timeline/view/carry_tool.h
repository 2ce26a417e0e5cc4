#pragma once

#include "timeline_view/carry.h"

namespace rangeline {

/// Something is in hand without a button held down: picked up by a click or a key, or dragged in
/// from the shelf. It follows the pointer or the arrow keys; a click or Enter puts it down.
class CarryTool : public Tool {
  public:
    CarryTool(ToolAdapter& adapter, Carry carry);

    bool press(const PointerAt& pointer) override;
    bool move(const PointerAt& pointer) override;
    bool release(const PointerAt& pointer) override;
    bool step(int grains, int lanes) override;
    bool accept() override;
    bool cancel() override;
    bool isDragging() const override { return false; }

  private:
    void show(const std::optional<QPointF>& pointer);

    ToolAdapter& adapter_;
    Carry carry_;
    bool pressed_ = false;
};

}  // namespace rangeline
