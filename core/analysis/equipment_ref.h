#pragma once

#include <compare>
#include <cstdint>

namespace rangeline {

enum class EquipmentSort : std::uint8_t { None, Burner, Oven, Ware, Pool, Cook };

/// One physical thing of a lesson: a unit number of the matching table of Stations.
struct EquipmentRef {
    EquipmentSort sort = EquipmentSort::None;
    int unit = -1;

    friend auto operator<=>(const EquipmentRef&, const EquipmentRef&) = default;
};

}  // namespace rangeline
