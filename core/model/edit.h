#pragma once
// Changes to a lesson as values. Applying one returns its inverse, so undo, drag previews, repair
// suggestions and crash recovery are all the same mechanism.

#include <optional>
#include <variant>
#include <vector>

#include "model/lesson.h"

namespace rangeline {

/// Puts, replaces or (where empty) takes away placements; all at once.
struct PlacementChange {
    PlacementKey key;
    std::optional<Placement> placement;

    friend bool operator==(const PlacementChange&, const PlacementChange&) = default;
};
struct SetPlacements {
    std::vector<PlacementChange> changes;

    friend bool operator==(const SetPlacements&, const SetPlacements&) = default;
};
struct SetHead {
    Head head;

    friend bool operator==(const SetHead&, const SetHead&) = default;
};
struct SetKitchen {
    Kitchen kitchen;

    friend bool operator==(const SetKitchen&, const SetKitchen&) = default;
};
struct SetServings {
    std::vector<Serving> servings;

    friend bool operator==(const SetServings&, const SetServings&) = default;
};
struct SetChoices {
    Choices choices;

    friend bool operator==(const SetChoices&, const SetChoices&) = default;
};

using Edit = std::variant<SetPlacements, SetHead, SetKitchen, SetServings, SetChoices>;

/// Applies the edit and returns the one that takes it back. Placements of steps that an edit
/// removes are kept: expand ignores them, so undo loses nothing.
Edit apply(Lesson& lesson, Edit edit);

/// Whether only placements change, so that the expanded lesson stays as it is.
bool keepsExpansion(const Edit& edit);

/// The edit that turns the placements of `from` into `to`; empty changes if they are equal.
SetPlacements placementDifference(const Placements& from, const Placements& to);

}  // namespace rangeline
