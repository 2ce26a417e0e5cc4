#pragma once
// A view for tools without a window: one lane for each target given, snapping to the grain.

#include "document/free_place.h"
#include "timeline_view/tool.h"

namespace rangeline::test {

class FakeAdapter : public ToolAdapter {
  public:
    FakeAdapter(LessonState& state, std::vector<DropTarget> lanes)
        : state_(state), lanes_(std::move(lanes)) {}

    const UseIndex& index() const override { return state_.index(); }
    const std::vector<PlacementKey>& selection() const override { return selected; }
    void select(const std::vector<PlacementKey>& keys) override { selected = keys; }
    int laneCount() const override { return static_cast<int>(lanes_.size()); }
    DropTarget targetOf(int lane) const override {
        return lane < 0 ? DropTarget() : lanes_[static_cast<std::size_t>(lane)];
    }
    /// The lane of the step's burner or oven slot, as the lesson has it.
    int mainLaneOf(const PlacementKey& key) const override;
    Instant snapped(const SnapRequest& request) const override {
        return onGrain(state_.lesson(), request.start);
    }
    SetPlacements placeInTurn(std::span<const int> tasks, Instant start,
                              const DropTarget& target) const override {
        return rangeline::placeInTurn(state_, tasks, start, target);
    }
    void propose(const Proposal& proposal) override { proposals.push_back(proposal); }
    void withdraw() override { ++withdrawn; }
    void commit(const Proposal& proposal, ActionKind kind) override;

    std::vector<PlacementKey> selected;
    std::vector<Proposal> proposals;
    std::vector<ActionKind> commits;
    int withdrawn = 0;

  private:
    LessonState& state_;
    std::vector<DropTarget> lanes_;
};

}  // namespace rangeline::test
