#include "document/edit_command.h"

#include <algorithm>
#include <set>
#include <utility>

namespace rangeline {
namespace {

/// Of changes to one placement, the last one applied is what remains.
void keepLastOfEach(SetPlacements& edit) {
    std::set<PlacementKey> met;
    std::vector<PlacementChange> kept;
    for (auto change = edit.changes.rbegin(); change != edit.changes.rend(); ++change) {
        if (met.insert(change->key).second) {
            kept.push_back(std::move(*change));
        }
    }
    std::ranges::reverse(kept);
    edit.changes = std::move(kept);
}

bool allAsNow(const SetPlacements& edit, const Placements& now) {
    return std::ranges::all_of(edit.changes, [&](const PlacementChange& change) {
        const auto found = now.find(change.key);
        return found == now.end() ? !change.placement : change.placement == found->second;
    });
}

}  // namespace

EditCommand::EditCommand(LessonDocument& document, std::vector<Edit> edits, const QString& text,
                         GestureId gesture)
    : QUndoCommand(text), document_(document), edits_(std::move(edits)), gesture_(gesture) {}

bool EditCommand::mergeWith(const QUndoCommand* other) {
    const auto& later = static_cast<const EditCommand&>(*other);
    if (gesture_ == 0 || later.gesture_ != gesture_) {
        return false;
    }
    // Both are applied: the later one is taken back first.
    edits_.insert(edits_.begin(), later.edits_.begin(), later.edits_.end());
    if (!std::ranges::all_of(edits_, keepsExpansion)) {
        return true;
    }
    SetPlacements all;
    for (const Edit& edit : edits_) {
        const auto& changes = std::get<SetPlacements>(edit).changes;
        all.changes.insert(all.changes.end(), changes.begin(), changes.end());
    }
    keepLastOfEach(all);
    setObsolete(allAsNow(all, document_.lesson().placements));
    edits_ = {std::move(all)};
    return true;
}

}  // namespace rangeline
