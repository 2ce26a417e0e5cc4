#pragma once
// The lanes of a lesson: one for each slot, burner, ware, cook and pool at hand.

#include <map>

#include "analysis/use_index.h"
#include "timeline/timeline_model.h"

namespace rangeline {

/// Lanes with the way from equipment to them.
class Lanes {
  public:
    /// Things that all groups share come first; then the lanes of each group, sorted by kind.
    explicit Lanes(const UseIndex& index);

    const std::vector<Lane>& all() const { return lanes_; }
    const std::vector<LaneSection>& sections() const { return sections_; }

    int heatOf(int ovenUnit) const;
    /// Requires 0 <= slot < the oven's slots.
    int slotOf(int ovenUnit, int slot) const;
    /// Requires a burner, ware, pool or cook of the crew.
    int laneOf(const EquipmentRef& ref) const;
    int counterOf(int group) const;

  private:
    struct Kind;

    void addSection(const QString& title, int group, bool shared, const Kind& kind);
    void addUnit(const Kind& kind, int unit);
    void addLane(LaneKind kind, const EquipmentRef& ref, int slot, const QString& name);

    const UseIndex& index_;
    std::vector<Lane> lanes_;
    std::vector<LaneSection> sections_;
    std::map<EquipmentRef, int> first_;  ///< of an oven: its heat lane, its slots follow
    std::vector<int> counters_;
};

}  // namespace rangeline
