#pragma once
// What is in the cook's hand, and where it would go.

#include "timeline_view/tool.h"

namespace rangeline {

class Carry {
  public:
    /// Placements that are on the timeline; the first leads. Requires at least one.
    static Carry ofPlaced(const ToolAdapter& adapter, std::vector<PlacementKey> keys);
    /// Steps from the shelf, in the order in which they are placed. Requires at least one that the
    /// lesson knows.
    static Carry ofSteps(const ToolAdapter& adapter, const std::vector<StepKey>& steps);

    Instant start() const { return start_; }
    Duration length() const { return length_; }
    const PlacementKey& lead() const { return lead_; }
    ActionKind kind() const { return tasks_.empty() ? ActionKind::Move : ActionKind::Place; }

    /// Snapped there; `lane` -1 keeps the equipment. Of what has begun only the end moves.
    void moveTo(const ToolAdapter& adapter, Instant start, int lane);
    /// By whole grains, and by `lanes` (-1, 0, 1) to the next lane that accepts it: any, or only
    /// one of the same sort of equipment.
    void step(const ToolAdapter& adapter, int grains, int lanes, bool sameSort = false);
    void setOnShelf(bool onShelf) { onShelf_ = onShelf; }

    Proposal proposal(const ToolAdapter& adapter) const;

  private:
    bool acceptedBy(const ToolAdapter& adapter, int lane) const;

    std::vector<PlacementKey> keys_;
    std::vector<int> tasks_;  ///< from the shelf
    PlacementKey lead_;
    int leadTask_ = -1;
    Instant start_;
    Duration length_;
    int lane_ = -1;
    bool refused_ = false;
    bool begun_ = false;
    Duration endsLater_;  ///< of what has begun
    bool onShelf_ = false;
};

}  // namespace rangeline
