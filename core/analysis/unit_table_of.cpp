#include "analysis/unit_table_of.h"

namespace rangeline {

const UnitTable& unitTableOf(const Stations& stations, EquipmentSort sort) {
    switch (sort) {
        case EquipmentSort::Burner:
            return stations.burners;
        case EquipmentSort::Oven:
            return stations.ovens;
        case EquipmentSort::Ware:
            return stations.wares;
        case EquipmentSort::Pool:
            return stations.pools;
        case EquipmentSort::Cook:
        case EquipmentSort::None:
            break;
    }
    return stations.cooks;
}

}  // namespace rangeline
