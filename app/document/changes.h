#pragma once

#include <map>
#include <optional>

#include "analysis/use_index.h"
#include "model/edit.h"

namespace rangeline {

/// The placements that an edit is made of, each changed at most once.
class Changes {
  public:
    explicit Changes(const UseIndex& index) : index_(index) {}

    /// The placement as it will be, to change; null if there is none.
    Placement* of(const PlacementKey& key) {
        if (const auto found = changed_.find(key); found != changed_.end()) {
            return found->second ? &*found->second : nullptr;
        }
        const auto now = index_.lesson().placements.find(key);
        if (now == index_.lesson().placements.end()) {
            return nullptr;
        }
        return &*changed_.emplace(key, now->second).first->second;
    }
    void put(const PlacementKey& key, Placement placement) {
        changed_.insert_or_assign(key, std::move(placement));
    }
    void remove(const PlacementKey& key) {
        if (index_.lesson().placements.contains(key)) {
            changed_.insert_or_assign(key, std::nullopt);
        }
    }
    SetPlacements edit() const {
        SetPlacements edit;
        for (const auto& [key, placement] : changed_) {
            edit.changes.push_back({key, placement});
        }
        return edit;
    }

  private:
    const UseIndex& index_;
    std::map<PlacementKey, std::optional<Placement>> changed_;
};

}  // namespace rangeline
