#pragma once
// What a placed step may use instead of what it uses: one list of options for each thing it needs.

#include <QString>
#include <vector>

#include "analysis/use_index.h"
#include "text/names.h"

namespace rangeline {

/// One way to fill a need; the placement is the step's with just that changed.
struct EquipmentOption {
    QString name;
    Placement placement;
};

struct EquipmentChoice {
    QString need;  ///< "Burner", "Saucepan", "Hands"
    std::vector<EquipmentOption> options;
    int current = -1;  ///< index into options; -1: nothing suitable is chosen
};

/// Empty where the placement is not made, or needs nothing. `text` belongs to the index.
std::vector<EquipmentChoice> equipmentChoices(const UseIndex& index, const TextContext& text,
                                              const PlacementKey& key);

}  // namespace rangeline
