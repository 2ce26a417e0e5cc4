#include "model/edit.h"

#include <algorithm>
#include <utility>

namespace rangeline {
namespace {

/// Swaps one change into the placements and leaves the old state in it.
void exchangePlacement(Placements& placements, PlacementChange& change) {
    const auto found = placements.find(change.key);
    std::optional<Placement> before;
    if (found != placements.end()) {
        before = std::move(found->second);
    }
    if (change.placement) {
        placements.insert_or_assign(change.key, std::move(*change.placement));
    } else if (found != placements.end()) {
        placements.erase(found);
    }
    change.placement = std::move(before);
}

struct Exchange {
    Lesson& lesson;

    void operator()(SetPlacements& edit) const {
        for (PlacementChange& change : edit.changes) {
            exchangePlacement(lesson.placements, change);
        }
        // A key that is changed twice must be taken back in the opposite order.
        std::ranges::reverse(edit.changes);
    }
    void operator()(SetHead& edit) const { std::swap(lesson.head, edit.head); }
    void operator()(SetKitchen& edit) const { std::swap(lesson.kitchen, edit.kitchen); }
    void operator()(SetServings& edit) const { std::swap(lesson.servings, edit.servings); }
    void operator()(SetChoices& edit) const { std::swap(lesson.choices, edit.choices); }
};

}  // namespace

Edit apply(Lesson& lesson, Edit edit) {
    std::visit(Exchange{lesson}, edit);
    return edit;
}

bool keepsExpansion(const Edit& edit) {
    return std::holds_alternative<SetPlacements>(edit);
}

SetPlacements placementDifference(const Placements& from, const Placements& to) {
    SetPlacements difference;
    for (const auto& [key, placement] : from) {
        if (!to.contains(key)) {
            difference.changes.push_back({key, std::nullopt});
        }
    }
    for (const auto& [key, placement] : to) {
        const auto before = from.find(key);
        if (before == from.end() || before->second != placement) {
            difference.changes.push_back({key, placement});
        }
    }
    return difference;
}

}  // namespace rangeline
