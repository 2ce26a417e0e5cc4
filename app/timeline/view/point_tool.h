#pragma once

#include "timeline_view/carry.h"

namespace rangeline {

/// Selects by a click and moves by a drag. The edit is made on release, so that Escape puts
/// everything back.
class PointTool : public Tool {
  public:
    explicit PointTool(ToolAdapter& adapter) : adapter_(adapter) {}

    bool press(const PointerAt& pointer) override;
    bool move(const PointerAt& pointer) override;
    bool release(const PointerAt& pointer) override;
    bool step(int, int) override { return isDragging(); }
    bool accept() override { return isDragging(); }
    bool cancel() override;
    bool isDragging() const override { return carry_.has_value(); }

  private:
    void selectPressed(const PointerAt& pointer);

    /// A hand that trembles does not drag.
    static constexpr double leastDistance = 5;

    ToolAdapter& adapter_;
    std::optional<PointerAt> pressed_;
    std::optional<Carry> carry_;
    Duration grip_;  ///< from the start of what is held to the pointer
};

}  // namespace rangeline
