#include "model/equipment_kinds.h"

#include <algorithm>
#include <array>

namespace rangeline {
namespace {

using enum EquipmentRole;

//                 key           role  burner oven   cuts   cold
constexpr std::array kinds = {
    EquipmentKind{"saute-pan", Ware, true, true, false, false},
    EquipmentKind{"skillet", Ware, true, true, false, false},
    EquipmentKind{"saucepan", Ware, true, false, false, false},
    EquipmentKind{"pot", Ware, true, true, false, false},
    EquipmentKind{"griddle", Ware, true, false, false, false},
    EquipmentKind{"sheet", Ware, false, true, false, false},
    EquipmentKind{"roasting-pan", Ware, true, true, false, false},
    EquipmentKind{"baking-dish", Ware, false, true, false, false},
    EquipmentKind{"bowl", Ware, false, false, false, false},
    EquipmentKind{"rack", Ware, false, true, false, false},
    EquipmentKind{"board", Ware, false, false, true, false},
    EquipmentKind{"tool", Ware, false, false, false, false},
    EquipmentKind{"platter", Ware, false, false, false, false},
    EquipmentKind{"counter", Pool, false, false, false, false},
    EquipmentKind{"sink", Pool, false, false, false, false},
    EquipmentKind{"fridge-shelf", Pool, false, false, false, true},
    EquipmentKind{"freezer", Pool, false, false, false, true},
    EquipmentKind{"socket", Pool, false, false, false, false},
};

}  // namespace

std::span<const EquipmentKind> equipmentKinds() {
    return kinds;
}

const EquipmentKind* findEquipmentKind(std::string_view key) {
    const auto* found = std::ranges::find(kinds, key, &EquipmentKind::key);
    return found == kinds.end() ? nullptr : found;
}

}  // namespace rangeline
