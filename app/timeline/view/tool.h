#pragma once
// A tool is what the pointer and the keys do at the moment, as a state object. It knows the lesson
// and the lanes, but no widget: all it may ask for is in ToolAdapter, so that it is tested with a
// made-up one.

#include <QPointF>
#include <Qt>
#include <optional>
#include <span>
#include <vector>

#include "document/placing.h"

namespace rangeline {

/// Where the pointer is, in words of the lesson.
struct PointerAt {
    QPointF position;  ///< in the picture's units
    Instant at;
    int lane = -1;                    ///< index of the lane, or -1
    std::optional<PlacementKey> key;  ///< of the block under the pointer
    bool onShelf = false;             ///< outside, over the shelf
    Qt::KeyboardModifiers modifiers;
};

/// What an edit is, for the name of its undo step.
enum class ActionKind : std::uint8_t { Move, Place, TakeAway };

/// What would happen if the cook let go now.
struct Proposal {
    SetPlacements edit;
    PlacementKey lead;     ///< what the cook holds
    bool refused = false;  ///< the lane does not take it: it keeps its own
    bool begun = false;    ///< it has started at the stove: only its end moves
    bool removes = false;  ///< it goes back to the shelf
    std::optional<QPointF> pointer;
};

/// What is snapped: something of that length that would start then, in that lane.
struct SnapRequest {
    PlacementKey key;
    Instant start;
    Duration length;
    int lane = -1;
};

class ToolAdapter {
  public:
    virtual ~ToolAdapter() = default;

    virtual const UseIndex& index() const = 0;
    virtual const std::vector<PlacementKey>& selection() const = 0;
    virtual void select(const std::vector<PlacementKey>& keys) = 0;

    virtual int laneCount() const = 0;
    virtual DropTarget targetOf(int lane) const = 0;
    /// The lane of the placement's main block, or -1.
    virtual int mainLaneOf(const PlacementKey& key) const = 0;
    /// To the grain, or to a neighbour's edge that is near on screen.
    virtual Instant snapped(const SnapRequest& request) const = 0;
    /// See free_place.h.
    virtual SetPlacements placeInTurn(std::span<const int> tasks, Instant start,
                                      const DropTarget& target) const = 0;

    /// Shows the proposal with what it collides with; takes the place of the one before.
    virtual void propose(const Proposal& proposal) = 0;
    virtual void withdraw() = 0;
    /// Makes the edit, as one step of undo.
    virtual void commit(const Proposal& proposal, ActionKind kind) = 0;
};

/// All functions return whether the tool is still busy: it holds something.
class Tool {
  public:
    virtual ~Tool() = default;

    virtual bool press(const PointerAt& pointer) = 0;
    virtual bool move(const PointerAt& pointer) = 0;
    virtual bool release(const PointerAt& pointer) = 0;
    /// Arrow keys while busy: by grains along time (later is positive), by lanes (down).
    virtual bool step(int grains, int lanes) = 0;
    /// Puts down what is held.
    virtual bool accept() = 0;
    /// Lets go; everything is as it was.
    virtual bool cancel() = 0;
    /// Whether moves come with the button held down, so that the edges scroll.
    virtual bool isDragging() const = 0;
};

}  // namespace rangeline
