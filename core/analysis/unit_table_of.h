#pragma once

#include "analysis/equipment_ref.h"
#include "model/stations.h"

namespace rangeline {

/// The table that units of this sort are numbered in. Requires a sort other than None.
const UnitTable& unitTableOf(const Stations& stations, EquipmentSort sort);

}  // namespace rangeline
